package halfwidth.localizer.cut;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;

/**
 * How carefully a line is cut.
 *
 * @param smallestCut the smallest cut that the tool makes, and the step of its cuts (m)
 * @param targetPhase the phase at which the crew stops (deg)
 * @param firstFraction how much of the whole length the first cut takes (1), above 0 and at most 1
 */
public record CutRule(double smallestCut, double targetPhase, double firstFraction) {
    /**
     * Fraction that the first cut takes unless the crew says otherwise (1): common practice, no
     * source. It leaves room for a phase constant up to 25 % above the one assumed.
     */
    public static final double USUAL_FIRST_FRACTION = 0.8;

    /** Standard uncertainties kept in hand on the cuts after the first: about 95 % sure. */
    private static final double MARGIN = 2;

    /** A length that is a whole number of steps but for rounding keeps all of them (1). */
    private static final double ROUNDING = 1e-9;

    /**
     * @throws IllegalArgumentException if the smallest cut is not above 0 and at most 1 m, the
     *     target not 0 to 180 deg, or the fraction not above 0 and at most 1
     */
    public CutRule {
        Require.above("smallest cut", smallestCut, 0, "m");
        Require.within("smallest cut", smallestCut, new Range(0, 1), "m");
        Require.within("target phase", targetPhase, new Range(0, 180), "deg");
        Require.above("first fraction", firstFraction, 0, "");
        Require.within("first fraction", firstFraction, new Range(0, 1), "");
    }

    /**
     * Takes the usual first fraction.
     *
     * @param smallestCut the smallest cut that the tool makes (m)
     * @param targetPhase the phase at which the crew stops (deg)
     * @return the rule with {@link #USUAL_FIRST_FRACTION}
     * @throws IllegalArgumentException as the record does
     */
    public static CutRule usual(double smallestCut, double targetPhase) {
        return new CutRule(smallestCut, targetPhase, USUAL_FIRST_FRACTION);
    }

    /**
     * Returns the largest whole number of the tool's steps within a length.
     *
     * @param length (m), at least 0
     * @return the length to cut (m)
     * @throws IllegalArgumentException if the length is negative or not finite
     */
    public double roundDown(double length) {
        Require.within("length", length, new Range(0, Double.MAX_VALUE), "m");
        return smallestCut * Math.floor(length / smallestCut * (1 + ROUNDING));
    }

    /**
     * Returns the first cut: {@code firstFraction} of what remains, in whole steps of the tool.
     *
     * @param remaining all that is to be cut (m), negative on the line that counts as negative
     * @param phase the phase it stands for (deg)
     * @return the cut to make
     */
    public NextCut first(Estimate remaining, double phase) {
        double length = Math.abs(remaining.value());
        return decide(remaining, phase, Math.max(smallestCut, roundDown(firstFraction * length)));
    }

    /**
     * Returns the cut after at least one other: what remains less two standard uncertainties, in
     * whole steps of the tool, and at least one step.
     *
     * @param remaining all that is to be cut (m), negative on the line that counts as negative
     * @param phase the phase it stands for (deg)
     * @param lastDirection +1 or -1 (1), the line last cut
     * @return the cut to make, {@link CutVerdict#OVERSHOT} when it changes lines
     * @throws IllegalArgumentException if the last direction is neither +1 nor -1
     */
    public NextCut following(Estimate remaining, double phase, int lastDirection) {
        if (Math.abs(lastDirection) != 1) {
            throw new IllegalArgumentException(
                    "last direction " + lastDirection + " must be +1 or -1");
        }
        double sure = Math.abs(remaining.value()) - MARGIN * remaining.standardUncertainty();
        double length = Math.max(smallestCut, roundDown(Math.max(0, sure)));
        NextCut next = decide(remaining, phase, length);
        return next.direction() == -lastDirection
                ? new NextCut(
                        CutVerdict.OVERSHOT, next.direction(), next.length(), next.remaining())
                : next;
    }

    private NextCut decide(Estimate remaining, double phase, double length) {
        Require.finite("phase", phase, "deg");
        double whole = Math.abs(remaining.value());
        Estimate left = new Estimate(whole, remaining.standardUncertainty());
        if (Math.abs(phase) <= targetPhase) {
            return new NextCut(CutVerdict.AT_TARGET, 0, 0, left);
        }
        if (whole * (1 + ROUNDING) < smallestCut) {
            return new NextCut(CutVerdict.BELOW_SMALLEST_CUT, 0, 0, left);
        }
        return new NextCut(CutVerdict.CUT, (int) Math.signum(remaining.value()), length, left);
    }
}
