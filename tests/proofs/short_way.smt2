; The short way of sums and products (rational::are_small, small_sum, halved): whatever passes its test, no sum, product or
; shift that follows leaves 64 bits. Numerators a and c, denominators b and d, as `whole`.
(set-logic QF_BV)
(declare-const a (_ BitVec 64))
(declare-const b (_ BitVec 64))
(declare-const c (_ BitVec 64))
(declare-const d (_ BitVec 64))
(define-fun one () (_ BitVec 64) (_ bv1 64))
(define-fun limit () (_ BitVec 64) (bvshl one (_ bv30 64)))

; What are_small tests, and the invariant of a fraction.
(assert (= (bvlshr (bvor (bvor (bvadd a limit) b) (bvor (bvadd c limit) d)) (_ bv31 64)) (_ bv0 64)))
(assert (bvsgt b (_ bv0 64)))
(assert (bvsgt d (_ bv0 64)))

; There are such fractions.
(push)
(set-info :status sat)
(check-sat)
(pop)

; Numerators lie from -2^30 to 2^30 - 1 and denominators from 1 to 2^31 - 1.
(push)
(assert (not (and (bvsge a (bvneg limit)) (bvslt a limit) (bvsge c (bvneg limit)) (bvslt c limit)
                  (bvslt b (bvshl one (_ bv31 64))) (bvslt d (bvshl one (_ bv31 64))))))
(set-info :status unsat)
(check-sat)
(pop)

; The product of a numerator's magnitude, at most 2^30, and a denominator, below 2^31, is at most 2^61, taken at 128 bits
; where nothing can be lost; that of two denominators is below 2^62. Of two numerators it is at most 2^60, by hand.
(define-fun wide ((x (_ BitVec 64))) (_ BitVec 128) ((_ sign_extend 64) x))
(define-fun wide_count ((x (_ BitVec 64))) (_ BitVec 128) ((_ zero_extend 64) x))
(define-fun two_to_61 () (_ BitVec 128) (bvshl (_ bv1 128) (_ bv61 128)))
(define-fun two_to_62 () (_ BitVec 128) (bvshl (_ bv1 128) (_ bv62 128)))
(declare-const m (_ BitVec 64))
(declare-const e (_ BitVec 64))
(push)
(assert (and (bvule m limit) (bvult e (bvshl one (_ bv31 64)))))
(assert (bvugt (bvmul (wide_count m) (wide_count e)) two_to_61))
(set-info :status unsat)
(check-sat)
(pop)
(push)
(assert (and (bvult m (bvshl one (_ bv31 64))) (bvult e (bvshl one (_ bv31 64)))))
(assert (bvuge (bvmul (wide_count m) (wide_count e)) two_to_62))
(set-info :status unsat)
(check-sat)
(pop)

; So their sum and their difference lie within 2^62: p and q are any two such products, with their signs.
(define-fun within ((x (_ BitVec 128)) (most (_ BitVec 128))) Bool (and (bvsle x most) (bvsge x (bvneg most))))
(declare-const p (_ BitVec 64))
(declare-const q (_ BitVec 64))
(push)
(assert (and (within (wide p) two_to_61) (within (wide q) two_to_61)))
(assert (not (and (within (bvadd (wide p) (wide q)) two_to_62) (within (bvsub (wide p) (wide q)) two_to_62))))
(set-info :status unsat)
(check-sat)
(pop)

; halved(n, below), below a power of two: n | below is not 0, so its trailing zeros can be counted, they are fewer than 64,
; and a shift by as many loses no bit that is set.
(declare-const n (_ BitVec 64))
(declare-const below (_ BitVec 64))
(declare-const zeros (_ BitVec 64))
(define-fun both () (_ BitVec 64) (bvor n below))
(push)
(assert (bvsgt below (_ bv0 64)))
(assert (= both (_ bv0 64)))
(set-info :status unsat)
(check-sat)
(pop)
(push)
(assert (bvsgt below (_ bv0 64)))
(assert (bvult zeros (_ bv64 64)))
(assert (= (bvand both (bvneg both)) (bvshl one zeros)))
(assert (not (and (= (bvshl (bvashr n zeros) zeros) n) (= (bvshl (bvashr below zeros) zeros) below)
                  (bvsgt (bvashr below zeros) (_ bv0 64)))))
(set-info :status unsat)
(check-sat)
(pop)
