; The long way of sums, and comparisons (large_sum, is_below): cross products at 128 bits and their sum stay inside 128 bits,
; and a total has a negative.
(set-logic QF_BV)
(define-fun two_to_63 () (_ BitVec 64) (bvshl (_ bv1 64) (_ bv63 64)))
(define-fun two_to_126 () (_ BitVec 128) (bvshl (_ bv1 128) (_ bv126 128)))
(define-fun wide_count ((x (_ BitVec 64))) (_ BitVec 128) ((_ zero_extend 64) x))

; The magnitude m of a numerator is at most 2^63 and a denominator d below that: their product is below 2^126. 128
; bits hold any product of two words, so nothing is lost (by hand). The lowest numerator stands by itself, as a shift. The
; first query is the one that takes a while: 8 s of an idle machine.
(declare-const m (_ BitVec 64))
(declare-const d (_ BitVec 64))
(push)
(assert (and (bvult m two_to_63) (bvult d two_to_63)))
(assert (not (= ((_ extract 127 126) (bvmul (wide_count m) (wide_count d))) #b00)))
(set-info :status unsat)
(check-sat)
(pop)
(push)
(assert (bvult d two_to_63))
(assert (bvuge (bvshl (wide_count d) (_ bv63 128)) two_to_126))
(set-info :status unsat)
(check-sat)
(pop)

; With p and q such products and their signs: neither p + q nor p - q leaves 128 bits, taken at 129.
(declare-const p (_ BitVec 128))
(declare-const q (_ BitVec 128))
(define-fun inside ((x (_ BitVec 128))) Bool (and (bvslt x two_to_126) (bvsgt x (bvneg two_to_126))))
(define-fun wider ((x (_ BitVec 128))) (_ BitVec 129) ((_ sign_extend 1) x))
(assert (and (inside p) (inside q)))
(push)
(set-info :status sat)
(check-sat)
(assert (not (and (= (wider (bvadd p q)) (bvadd (wider p) (wider q)))
                  (= (wider (bvsub p q)) (bvsub (wider p) (wider q))))))
(set-info :status unsat)
(check-sat)
(pop)

; Totals lie strictly between -2^127 and 2^127, so that each has a negative.
(push)
(assert (or (= (bvadd p q) (bvshl (_ bv1 128) (_ bv127 128))) (= (bvsub p q) (bvshl (_ bv1 128) (_ bv127 128)))))
(set-info :status unsat)
(check-sat)
(pop)
