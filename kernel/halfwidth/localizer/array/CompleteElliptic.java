package halfwidth.localizer.array;

/**
 * The complete elliptic integrals of one modulus k, by Gauss's arithmetic-geometric mean (NIST DLMF
 * 19.8.5 and 19.8.6, from memory): with a₀ = 1, g₀ = k′, c₀² = 1 − k′² and cₙ₊₁ = (aₙ − gₙ)/2, K =
 * π/(2 a∞) and E = K (1 − S), S = Σ 2ⁿ⁻¹ cₙ². A pattern asks for thousands of them, and this takes
 * a tenth of the time of the general integrals in the library that the checks hold it against.
 *
 * @param mean a∞ (1)
 * @param sum S (1), 0 to 1
 */
record CompleteElliptic(double mean, double sum) {
    /** Each turn doubles the digits, so that one more than this changes none. */
    private static final double SETTLED = 1e-9;

    /**
     * The integrals of a complementary modulus.
     *
     * @param complement k′ = √(1 − k²) (1), above 0 and at most 1
     */
    static CompleteElliptic ofComplement(double complement) {
        double a = 1;
        double g = complement;
        double sum = (1 - g) * (1 + g) / 2;
        double weight = 1;
        double c;
        do {
            c = (a - g) / 2;
            double next = (a + g) / 2;
            g = Math.sqrt(a * g);
            a = next;
            sum += weight * c * c;
            weight *= 2;
        } while (c > SETTLED * a);
        return new CompleteElliptic(a, sum);
    }

    /** The integral of the first kind, K (1). */
    double first() {
        return Math.PI / (2 * mean);
    }

    /** The integral of the second kind, E (1). */
    double second() {
        return first() * (1 - sum);
    }

    /** By how much the first exceeds the second, (K − E)/E (1). */
    double excess() {
        return sum / (1 - sum);
    }
}
