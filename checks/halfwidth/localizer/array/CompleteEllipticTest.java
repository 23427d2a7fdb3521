package halfwidth.localizer.array;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.hipparchus.special.Gamma;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;

class CompleteEllipticTest {
    /** A general library, by Carlson's duplication: another way altogether. */
    @Law
    void bothIntegralsAreThoseOfALibrary(Draw draw) {
        double exponent = draw.between(-9, -0.01);
        double complement = Math.exp(exponent);
        double m = (1 - complement) * (1 + complement);
        double e = LegendreEllipticIntegral.bigE(m);
        double k = LegendreEllipticIntegral.bigK(m);
        CompleteElliptic found = CompleteElliptic.ofComplement(complement);
        assertEquals(e, found.second(), 1e-12);
        assertEquals(k, found.first(), 1e-9 * k); // m has lost digits of 1 − m
        assertEquals((k - e) / e, found.excess(), 1e-8 * (1 + found.excess()));
    }

    /** Where m itself rounds to 1: the first terms of NIST DLMF 19.12.1 and 19.12.2. */
    @Law
    void towardsEqualCarriersTheyGoAsTheirExpansionsDo(Draw draw) {
        double exponent = draw.between(-600, -9);
        double complement = Math.exp(exponent);
        double k = Math.log(4) - exponent;
        double e = 1 + (k - 0.5) / 2 * complement * complement;
        CompleteElliptic found = CompleteElliptic.ofComplement(complement);
        assertEquals(k, found.first(), 1e-7 * k);
        assertEquals(e, found.second(), 1e-12);
    }

    /** Legendre's relation between the integrals of k and of k′ (NIST DLMF 19.7.1). */
    @Law
    void legendresRelationHolds(Draw draw) {
        double k = draw.between(0.01, 0.99);
        CompleteElliptic one = CompleteElliptic.ofComplement(k);
        CompleteElliptic other = CompleteElliptic.ofComplement(Math.sqrt((1 - k) * (1 + k)));
        assertEquals(
                Math.PI / 2,
                one.second() * other.first()
                        + other.second() * one.first()
                        - one.first() * other.first(),
                1e-13);
    }

    /** K of modulus 1/√2 is Γ(1/4)²/(4 √π) (from memory). */
    @Test
    void theLemniscatesIntegralIsThatOfTheGammaFunction() {
        double quarter = Gamma.gamma(0.25);
        assertEquals(
                quarter * quarter / (4 * Math.sqrt(Math.PI)),
                CompleteElliptic.ofComplement(Math.sqrt(0.5)).first(),
                1e-14);
    }

    @Test
    void withoutModulusBothAreAQuarterTurn() {
        CompleteElliptic none = CompleteElliptic.ofComplement(1);
        assertEquals(Math.PI / 2, none.first());
        assertEquals(Math.PI / 2, none.second());
        assertEquals(0, none.excess());
    }
}
