package halfwidth.localizer.transmit;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.NextCut;
import halfwidth.localizer.cut.PhaseLength;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The one cut that brings the sidebands of every transmitter as nearly in phase as one cut can.
 *
 * <p>Each transmitter needed its own sideband phase offset. One line serves them all, so the cut
 * aims at the middle of the offsets, and half their spread stays on the transmitters. What all
 * offsets are wrong by alike, as by the piece that they were found with, is no part of the
 * uncertainties here: it comes on top.
 *
 * @param offsets the sideband phase offset set on each transmitter (deg), positive = the SBO signal
 *     is advanced; at least one
 * @param resolution the step in which an offset is set or read (deg)
 */
public record FeedTrim(List<Double> offsets, double resolution) {
    private static final double HALF_TURN = 180;

    /**
     * @throws IllegalArgumentException if there is no offset, one is NaN or beyond ±180 deg, two
     *     differ by more than 180 deg, or the resolution is not above 0 and at most 90 deg
     */
    public FeedTrim {
        offsets = List.copyOf(offsets);
        if (offsets.isEmpty()) {
            throw new IllegalArgumentException(
                    "a trim needs the offset of at least one transmitter");
        }
        offsets.forEach(o -> Require.within("offset", o, CutRow.OFFSETS, "deg"));
        Require.above("resolution", resolution, 0, "deg");
        Require.within("resolution", resolution, new Range(0, 90), "deg");
        DoubleSummaryStatistics all = summary(offsets);
        checkSpread(all.getMin(), all.getMax());
    }

    /** Refuses two offsets (deg) whose middle is not known, since a phase is so to a whole turn. */
    static void checkSpread(double one, double other) {
        if (Math.abs(one - other) > HALF_TURN) {
            throw new IllegalArgumentException(
                    String.format(
                            "offsets %s and %s deg differ by more than 180 deg: a phase is known"
                                    + " only to a whole turn, so their middle is not; bring the"
                                    + " transmitters closer first",
                            Math.min(one, other), Math.max(one, other)));
        }
    }

    /**
     * Takes the offsets of one transmitter, or of each of several.
     *
     * @param resolution the step in which an offset is set or read (deg)
     * @param offsets the offset of each transmitter (deg), positive = SBO advanced
     * @return the trim
     * @throws IllegalArgumentException as the record does
     */
    public static FeedTrim fromOffsets(double resolution, double... offsets) {
        return new FeedTrim(DoubleStream.of(offsets).boxed().toList(), resolution);
    }

    /**
     * Returns the phase that the cut is to take away: aim = (least + greatest offset)/2.
     *
     * @return the aim (deg), positive = cut the SBO feed; each extreme offset is taken to be
     *     uncertain by resolution/√12
     */
    public Estimate aim() {
        DoubleSummaryStatistics all = summary(offsets);
        int ends = Math.min(2, offsets.size());
        return new Estimate((all.getMin() + all.getMax()) / 2, rounding() / Math.sqrt(ends));
    }

    /**
     * Returns what stays on the transmitters whatever is cut: (greatest − least offset)/2.
     *
     * @return half the spread (deg), 0 for one transmitter
     */
    public double halfSpread() {
        DoubleSummaryStatistics all = summary(offsets);
        return (all.getMax() - all.getMin()) / 2;
    }

    /**
     * Returns the feed to cut: SBO for a positive aim, CSB for a negative one.
     *
     * @return the feed, NEITHER when the aim is no larger than the resolution
     */
    public Feed feed() {
        double aim = aim().value();
        return Math.abs(aim) <= resolution ? Feed.NEITHER : Feed.takingAway(aim);
    }

    /**
     * Returns the whole length to cut from {@link #feed()}: |aim|/β.
     *
     * @param phaseConstant β of that feed (deg/m), above 0
     * @return the length (m), 0 when neither feed is cut
     * @throws IllegalArgumentException if the phase constant is not above 0 and at most 1000 deg/m
     */
    public Estimate length(Estimate phaseConstant) {
        double left = feed() == Feed.NEITHER ? 0 : Math.abs(aim().value());
        return PhaseLength.of(new Estimate(left, aim().standardUncertainty()), phaseConstant);
    }

    /**
     * Returns the first cut: the rule's fraction of the whole, in whole steps of the tool.
     *
     * @param phaseConstant β of the feed (deg/m), above 0
     * @param rule how carefully the line is cut
     * @return the cut, or why there is none; {@link Feed#of} tells of which feed
     * @throws IllegalArgumentException if the phase constant is not above 0 and at most 1000 deg/m
     */
    public NextCut firstCut(Estimate phaseConstant, CutRule rule) {
        double left = feed() == Feed.NEITHER ? 0 : aim().value();
        Estimate phase = new Estimate(left, aim().standardUncertainty());
        return rule.first(PhaseLength.of(phase, phaseConstant), left);
    }

    /**
     * Predicts the offset that each transmitter needs after a cut of {@link #feed()}: offset −
     * direction β cut, direction +1 for SBO and -1 for CSB.
     *
     * @param cut the length cut (m), at least 0
     * @param phaseConstant β of the feed (deg/m), above 0
     * @return the offsets (deg) in the order given, each with standard uncertainty
     * @throws IllegalArgumentException if the cut is negative or above 10 m, or the phase constant
     *     not above 0 and at most 1000 deg/m
     */
    public List<Estimate> offsetsAfter(double cut, Estimate phaseConstant) {
        Require.within("cut", cut, CutRow.CUTS, "m");
        double taken =
                feed().direction() * PhaseLength.checkedPhaseConstant(phaseConstant).value() * cut;
        double uncertainty = Math.hypot(rounding(), cut * phaseConstant.standardUncertainty());
        return offsets.stream().map(o -> new Estimate(o - taken, uncertainty)).toList();
    }

    private double rounding() {
        return Estimate.readInSteps(0, resolution).standardUncertainty();
    }

    private static DoubleSummaryStatistics summary(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).summaryStatistics();
    }
}
