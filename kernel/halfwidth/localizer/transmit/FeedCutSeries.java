package halfwidth.localizer.transmit;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.NextCut;
import halfwidth.localizer.cut.PhaseLength;
import halfwidth.localizer.transmit.CommonSlope.Group;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The offsets found after each cut of a feed, and what they say about the line and the next cut.
 *
 * <p>Each transmitter's offset falls along a straight line of the net cut x (SBO less CSB feed):
 * offsetᵢ = aᵢ − β x, with an intercept of its own and the phase constant β in common. Both feeds
 * are taken to be of one type of line; where they are not, keep a series for each.
 *
 * @param rows the record, in the order of the cuts; the first row is usually the state before any
 * @param dataSheet β as the data sheet has it (deg/m), with the standard uncertainty of it
 * @param resolution the step in which an offset is set or read (deg)
 */
public record FeedCutSeries(List<CutRow> rows, Estimate dataSheet, double resolution) {
    private static final Range NET_CUTS = new Range(-CutRow.CUTS.most(), CutRow.CUTS.most());

    /**
     * @throws IllegalArgumentException if no row has an offset; a total cut shrinks; the data
     *     sheet's β is not above 0 and at most 1000 deg/m; the resolution is not above 0 and at
     *     most 90 deg; or a transmitter's offset moved the wrong way, less than half or more than
     *     twice as far as the data sheet says, by more than five standard uncertainties
     */
    public FeedCutSeries {
        rows = List.copyOf(rows);
        CutHistory.checkTotals(rows);
        PhaseLength.checkedPhaseConstant(dataSheet);
        Require.above("resolution", resolution, 0, "deg");
        Require.within("resolution", resolution, new Range(0, 90), "deg");
        CutHistory.checkMovement(rows, dataSheet, floor(resolution));
    }

    /**
     * Tells how many cuts the record bears out: rows with an offset whose net cut differs from that
     * of the row with an offset before.
     *
     * @return the number of cuts (1)
     */
    public int cutsMade() {
        List<CutRow> read = rows.stream().filter(CutRow::isRead).toList();
        int cuts = 0;
        for (int i = 1; i < read.size(); i++) {
            cuts += read.get(i).netCut() == read.get(i - 1).netCut() ? 0 : 1;
        }
        return cuts;
    }

    /** Whether a feed was cut after the last phasing. */
    private boolean cutSinceRead() {
        int last = rows.size() - 1;
        while (!rows.get(last).isRead()) {
            last--;
        }
        CutRow read = rows.get(last);
        return rows.stream()
                .anyMatch(row -> row.sboCut() > read.sboCut() || row.csbCut() > read.csbCut());
    }

    /**
     * Returns the standard deviation of one offset: of the residuals of the fit, but never below
     * resolution/√12 (JCGM 100:2008, F.2.2.1), which alone counts while nothing is left over.
     *
     * @return the standard deviation (deg)
     */
    public double deviation() {
        return fit().deviation(floor(resolution));
    }

    /**
     * Returns how the offsets scatter about the fit over what their step explains.
     *
     * @return {@link #deviation()} over resolution/√12 (1), at least 1, which it is while nothing
     *     is left over; well above 1 the readings contradict each other
     */
    public double scatter() {
        return deviation() / floor(resolution);
    }

    /**
     * Returns the phase constant that the cuts alone show: β = −Σ(x−x̄ᵢ)(y−ȳᵢ)/Σ(x−x̄ᵢ)², x̄ᵢ and
     * ȳᵢ the means of each transmitter, u(β) = s/√Σ(x−x̄ᵢ)² with s the {@link #deviation()}.
     *
     * @return β (deg/m), empty before the first cut or when no transmitter was read twice
     */
    public Optional<Estimate> measuredPhaseConstant() {
        CommonSlope fit = fit();
        return fit.determined()
                ? Optional.of(new Estimate(-fit.slope(), fit.slopeUncertainty(deviation())))
                : Optional.empty();
    }

    /**
     * Returns the phase constant to cut by.
     *
     * <p>The data sheet's before the first cut. Then the mean of the data sheet's and the measured,
     * weighted by 1/u², as long as there is one cut only or the measured one is the less certain.
     * From then on the measured one alone, because the data sheet may be that of another line.
     *
     * @return β (deg/m)
     */
    public Estimate phaseConstant() {
        Optional<Estimate> measured = measuredPhaseConstant();
        if (measured.isEmpty() || dataSheet.standardUncertainty() == 0) {
            return dataSheet;
        }
        double u = measured.get().standardUncertainty();
        boolean alone = cutsMade() > 1 && u < dataSheet.standardUncertainty();
        return alone ? measured.get() : weightedMean(measured.get(), dataSheet);
    }

    /**
     * Returns how far the measured phase constant is from the data sheet's, in standard
     * uncertainties of the difference; above 2 one of the two is doubtful.
     *
     * @return |β measured − β data sheet| / √(u² + u²) (1), empty while nothing is measured
     */
    public OptionalDouble departureFromDataSheet() {
        Optional<Estimate> measured = measuredPhaseConstant();
        if (measured.isEmpty()) {
            return OptionalDouble.empty();
        }
        double difference = Math.abs(measured.get().value() - dataSheet.value());
        double u = measured.get().standardUncertainty();
        return OptionalDouble.of(difference / Math.hypot(u, dataSheet.standardUncertainty()));
    }

    /**
     * Returns the middle of the offsets as the fit has it after the last cut.
     *
     * @return what is left to take away (deg), positive = by cutting the SBO feed
     */
    public Estimate aim() {
        return middle(lastCut());
    }

    /**
     * Returns the middle of the offsets as the fit has it at a net cut: ȳ − β (x − x̄), with x̄ and
     * ȳ the means over the transmitters of their means; u² = u(ȳ)² + (x − x̄)² u(β)².
     *
     * @param netCut x (m), that of the SBO less that of the CSB feed
     * @return the middle (deg)
     * @throws IllegalArgumentException if the net cut is not -10 to 10 m
     */
    public Estimate middle(double netCut) {
        CommonSlope fit = fit();
        Estimate centre = new Estimate(fit.centreY(), fit.centreUncertainty(deviation()));
        return along(centre, fit.centreX(), netCut);
    }

    /**
     * Returns the offset that one transmitter needs at a net cut by its own line of the fit: ȳ − β
     * (x − x̄), with x̄ and ȳ its means; u² = s²/n + (x − x̄)² u(β)², n its readings.
     *
     * @param transmitter 1 or 2 (1)
     * @param netCut x (m), that of the SBO less that of the CSB feed
     * @return the offset (deg), empty if that transmitter was never read
     * @throws IllegalArgumentException if there is no such transmitter, or the net cut is not -10
     *     to 10 m
     */
    public Optional<Estimate> offset(int transmitter, double netCut) {
        Require.within("transmitter", transmitter, new Range(1, 2), "");
        return CutHistory.group(rows, transmitter)
                .map(
                        group -> {
                            double u = deviation() / Math.sqrt(group.x().length);
                            Estimate mean = new Estimate(group.meanY(), u);
                            return along(mean, group.meanX(), netCut);
                        });
    }

    private Estimate along(Estimate mean, double at, double netCut) {
        Require.within("net cut", netCut, NET_CUTS, "m");
        Estimate beta = phaseConstant();
        double reach = netCut - at;
        return new Estimate(
                mean.value() - beta.value() * reach,
                Math.hypot(mean.standardUncertainty(), reach * beta.standardUncertainty()));
    }

    /**
     * Returns what stays on the transmitters whatever is cut: half the distance of the two lines.
     *
     * @return half the spread (deg), 0 while only one transmitter was read
     */
    public double halfSpread() {
        List<Group> groups = CutHistory.groups(rows);
        if (groups.size() < 2) {
            return 0;
        }
        double beta = phaseConstant().value();
        Group one = groups.get(0);
        Group two = groups.get(1);
        return Math.abs(one.meanY() - two.meanY() + beta * (one.meanX() - two.meanX())) / 2;
    }

    /**
     * Returns all that is left to cut: x̄ + ȳ/β − x, the net cut that brings the middle of the
     * offsets to 0, less what has been cut. u² = (u(ȳ)/β)² + (ȳ u(β)/β²)².
     *
     * @return the length (m), positive on the SBO feed, negative on the CSB feed
     */
    public Estimate remaining() {
        CommonSlope fit = fit();
        Estimate centre = new Estimate(fit.centreY(), fit.centreUncertainty(deviation()));
        Estimate fromCentre = PhaseLength.of(centre, phaseConstant());
        return new Estimate(
                fit.centreX() + fromCentre.value() - lastCut(), fromCentre.standardUncertainty());
    }

    /**
     * Returns the next cut; {@link Feed#of} tells of which feed.
     *
     * @param rule how carefully the line is cut
     * @return the cut, or why there is none; overshot when it is of the other feed than the last,
     *     none before a feed that was cut is phased again
     */
    public NextCut next(CutRule rule) {
        if (cutSinceRead()) {
            return NextCut.readFirst(remaining());
        }
        double left = aim().value();
        for (int i = rows.size() - 1; i > 0; i--) {
            double step = rows.get(i).netCut() - rows.get(i - 1).netCut();
            if (step != 0) {
                return rule.following(remaining(), left, (int) Math.signum(step));
            }
        }
        return rule.first(remaining(), left);
    }

    private CommonSlope fit() {
        return new CommonSlope(CutHistory.groups(rows));
    }

    private double lastCut() {
        return rows.get(rows.size() - 1).netCut();
    }

    private static double floor(double resolution) {
        return Estimate.readInSteps(0, resolution).standardUncertainty();
    }

    private static Estimate weightedMean(Estimate a, Estimate b) {
        double weightA = Math.pow(a.standardUncertainty(), -2);
        double weightB = Math.pow(b.standardUncertainty(), -2);
        double sum = weightA + weightB;
        return new Estimate((weightA * a.value() + weightB * b.value()) / sum, 1 / Math.sqrt(sum));
    }
}
