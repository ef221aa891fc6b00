; Signs (magnitude_of, made, large_sum): no negation is undefined, and the gate lets through exactly what fits.
(set-logic QF_BV)
(define-fun nought () (_ BitVec 64) (_ bv0 64))
(define-fun highest () (_ BitVec 64) (bvlshr (bvnot nought) (_ bv1 64)))
(define-fun wide ((x (_ BitVec 64))) (_ BitVec 128) ((_ sign_extend 64) x))
(define-fun wide_count ((x (_ BitVec 64))) (_ BitVec 128) ((_ zero_extend 64) x))

; magnitude_of(n) is |n|, for -2^63 too: as counts wrap, 0 - n is right where -n would not fit.
(declare-const n (_ BitVec 64))
(define-fun magnitude () (_ BitVec 64) (ite (bvslt n nought) (bvsub nought n) n))
(push)
(assert (not (= (wide_count magnitude) (ite (bvslt n nought) (bvneg (wide n)) (wide n)))))
(set-info :status unsat)
(check-sat)
(pop)
(push)
(assert (bvugt magnitude (bvshl (_ bv1 64) (_ bv63 64))))
(set-info :status unsat)
(check-sat)
(pop)

; made(below_zero, above, below), above and below any counts of 128 bits.
(declare-const below_zero Bool)
(declare-const above (_ BitVec 128))
(declare-const below (_ BitVec 128))
(define-fun passes () Bool
    (not (or (bvugt above (bvadd (wide_count highest) (ite below_zero (_ bv1 128) (_ bv0 128))))
             (bvugt below (wide_count highest)))))
(define-fun size () (_ BitVec 64) ((_ extract 63 0) above))
(define-fun over () (_ BitVec 64) (ite below_zero (bvsub nought size) size))
(define-fun under () (_ BitVec 64) ((_ extract 63 0) below))

; What passes is kept whole, with its sign.
(push)
(assert passes)
(set-info :status sat)
(check-sat)
(assert (not (and (= (wide over) (ite below_zero (bvneg above) above)) (= (wide under) below))))
(set-info :status unsat)
(check-sat)
(pop)

; What does not pass does not fit: no 64-bit integer is that number (where the 128 bits of above are less than 2^127, as
; products of magnitudes are).
(declare-const m (_ BitVec 64))
(push)
(assert (and (bvslt above (bvshl (_ bv1 128) (_ bv126 128))) (bvsge above (_ bv0 128))))
(assert (bvule below (wide_count highest)))
(assert (and (not passes) (= (wide m) (ite below_zero (bvneg above) above))))
(set-info :status unsat)
(check-sat)
(pop)
