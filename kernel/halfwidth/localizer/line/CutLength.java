package halfwidth.localizer.line;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * A length to cut off, as it is read from a rule: rounded down, never up, since a line cannot be
 * made longer.
 *
 * @param metres the exact length (m), 0 to 1000
 */
public record CutLength(double metres) {
    /** One inch (m), exact: NIST SP 811, appendix B. */
    public static final double INCH = 0.0254;

    private static final Range CUTS = new Range(0, 1000);
    private static final int SIXTEENTHS = 16;

    /** What rounding in the last digits of a double may take from a whole division of the rule. */
    private static final double ROUNDING = 1e-9;

    /**
     * @throws IllegalArgumentException if {@code metres} is not 0 to 1000
     */
    public CutLength {
        Require.within("cut", metres, CUTS, "m");
    }

    /**
     * Returns the cut of a length given in inches.
     *
     * @param inches the length (in), at least 0
     * @return the cut
     * @throws IllegalArgumentException if {@code inches} is negative or not finite
     */
    public static CutLength ofInches(double inches) {
        return new CutLength(inches * INCH);
    }

    /**
     * Returns a stated part of the cut, for a first cut that leaves some to take.
     *
     * @param part the part (1), 0 to 1
     * @return the shorter cut
     * @throws IllegalArgumentException if {@code part} is outside 0 to 1
     */
    public CutLength part(double part) {
        return new CutLength(metres * Require.within("part", part, new Range(0, 1), ""));
    }

    /**
     * Returns the exact length in inches.
     *
     * @return the length (in), not rounded
     */
    public double inches() {
        return metres / INCH;
    }

    /**
     * Returns the whole sixteenths of an inch in the length.
     *
     * @return the number of sixteenths (1), rounded down
     */
    public int sixteenths() {
        return (int) Math.floor(inches() * SIXTEENTHS + ROUNDING);
    }

    /**
     * Returns the whole millimetres in the length.
     *
     * @return the millimetres (mm), rounded down
     */
    public int millimetres() {
        return (int) Math.floor(metres * 1000 + ROUNDING);
    }

    /**
     * Returns the cut as it is made by a rule in sixteenths.
     *
     * @return the length of {@link #sixteenths()}, at most this one
     */
    public CutLength inWholeSixteenths() {
        return new CutLength(Math.min(metres, sixteenths() * INCH / SIXTEENTHS));
    }

    /**
     * Returns the cut as it is made by a rule in millimetres.
     *
     * @return the length of {@link #millimetres()}, at most this one
     */
    public CutLength inWholeMillimetres() {
        return new CutLength(Math.min(metres, millimetres() / 1000.0));
    }

    /**
     * Returns the cut in inches as a rule shows it, in lowest terms.
     *
     * @return for example "3 7/16 in", "1/2 in", "0 in"
     */
    public String inInches() {
        int whole = sixteenths() / SIXTEENTHS;
        int parts = sixteenths() % SIXTEENTHS;
        if (parts == 0) {
            return whole + " in";
        }
        int common = Integer.lowestOneBit(parts);
        String fraction = parts / common + "/" + SIXTEENTHS / common;
        return (whole == 0 ? "" : whole + " ") + fraction + " in";
    }
}
