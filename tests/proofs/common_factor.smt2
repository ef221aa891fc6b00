; The greatest common divisor (binary_gcd, greatest_common_divisor): one step of its loop at 64 bits. Each step keeps
; gcd(a, b), since gcd(a, b) = gcd(|a - b|, min(a, b)) and an odd gcd is not changed by halving |a - b| while it is even;
; what is shown here is that the code takes that step, that no shift or count of zeros is undefined, and that the loop
; ends, because the larger operand grows smaller.
(set-logic QF_BV)
(define-fun nought () (_ BitVec 64) (_ bv0 64))
(define-fun one () (_ BitVec 64) (_ bv1 64))
(define-fun top () (_ BitVec 64) (bvshl one (_ bv63 64)))
(define-fun odd ((x (_ BitVec 64))) Bool (= ((_ extract 0 0) x) #b1))
(define-fun lowest_bit ((x (_ BitVec 64))) (_ BitVec 64) (bvand x (bvneg x)))
(define-fun smaller ((x (_ BitVec 64)) (y (_ BitVec 64))) (_ BitVec 64) (ite (bvult x y) x y))
(define-fun larger ((x (_ BitVec 64)) (y (_ BitVec 64))) (_ BitVec 64) (ite (bvult x y) y x))

; Before the loop. What comes in is at most 2^63 (the magnitude of the lowest whole number), and after the remainder
; 0 < a < b: shifted to be odd, both are below 2^63, which the sign of their difference needs.
(declare-const a (_ BitVec 64))
(declare-const b (_ BitVec 64))
(declare-const zeros_a (_ BitVec 64))
(declare-const zeros_b (_ BitVec 64))
(push)
(assert (and (bvult nought a) (bvult a b) (bvule b top)))
(assert (and (= (lowest_bit a) (bvshl one zeros_a)) (= (lowest_bit b) (bvshl one zeros_b))))
(assert (and (bvult zeros_a (_ bv64 64)) (bvult zeros_b (_ bv64 64))))
(set-info :status sat)
(check-sat)
(assert (not (and (odd (bvlshr a zeros_a)) (bvult (bvlshr a zeros_a) top) (odd (bvlshr b zeros_b))
                  (bvult (bvlshr b zeros_b) top) (not (= (bvor a b) nought)))))
(set-info :status unsat)
(check-sat)
(pop)

; The loop: both odd, below 2^63 and unequal.
(define-fun difference () (_ BitVec 64) (bvsub a b))
(define-fun sign () (_ BitVec 64) (bvashr difference (_ bv63 64)))
(define-fun size () (_ BitVec 64) (bvsub (bvxor difference sign) sign))
(declare-const zeros (_ BitVec 64))
(define-fun next_a () (_ BitVec 64) (bvlshr size zeros))
(define-fun next_b () (_ BitVec 64) (smaller a b))
(assert (and (odd a) (odd b) (bvult a top) (bvult b top) (not (= a b))))

; Zeros are counted of something that is not zero.
(push)
(assert (= difference nought))
(set-info :status unsat)
(check-sat)
(pop)

; size is |a - b|, with the lowest bit of a - b.
(push)
(assert (not (and (= size (bvsub (larger a b) (smaller a b))) (= (lowest_bit size) (lowest_bit difference)))))
(set-info :status unsat)
(check-sat)
(pop)

; The next two are odd and below 2^63 again, no bit is shifted out, and the larger of them is smaller than before.
(push)
(assert (and (bvult zeros (_ bv64 64)) (= (lowest_bit difference) (bvshl one zeros))))
(set-info :status sat)
(check-sat)
(assert (not (and (odd next_a) (odd next_b) (bvult next_a top) (bvult next_b top) (= (bvshl next_a zeros) size)
                  (bvult (larger next_a next_b) (larger a b)))))
(set-info :status unsat)
(check-sat)
(pop)

; At the end b << shared is the gcd of what came in, which divides the larger operand and so is at most 2^63: by hand, since
; it needs no arithmetic, no bit is lost.
