package halfwidth.laws;

import java.util.Optional;

/**
 * Where the draws of one try come from.
 *
 * @param bits what the generator starts from, 48 of them; where the last four are zero, all draws
 *     are edges of their ranges
 */
record Seed(long bits) {
    private static final long ALL = (1L << 48) - 1;

    static final String PROPERTY = "halfwidth.seed";

    /** The seed of a try, of which every sixteenth draws nothing but edges. */
    static Seed of(long random, int number) {
        return new Seed((random << 4 | number % 16) & ALL);
    }

    /** The only one to try, if somebody asked for one. */
    static Optional<Seed> asked() {
        return Optional.ofNullable(System.getProperty(PROPERTY)).map(Seed::parse);
    }

    static Seed parse(String typed) {
        try {
            return new Seed(Long.parseUnsignedLong(typed, 16));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "-D%s=%s: is no seed; type the hexadecimal number that the failure named"
                            .formatted(PROPERTY, typed),
                    e);
        }
    }

    boolean drawsEdgesOnly() {
        return (bits & 15) == 0;
    }

    @Override
    public String toString() {
        return Long.toHexString(bits);
    }
}
