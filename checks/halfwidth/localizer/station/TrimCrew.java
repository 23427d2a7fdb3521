package halfwidth.localizer.station;

import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.NextCut;
import halfwidth.localizer.station.PhasingCrew.Phased;
import halfwidth.localizer.transmit.CutRow;
import halfwidth.localizer.transmit.Feed;
import halfwidth.localizer.transmit.FeedCutSeries;
import halfwidth.localizer.transmit.FeedTrim;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Trims the feeds of one channel for both transmitters, phasing again after each cut. */
final class TrimCrew {
    static final double TARGET = 0.5;
    static final int MOST_CUTS = 12;

    private final Crew crew;
    private final Channel channel;
    private final PhasingCrew phasing;
    private final CutRule rule;
    private final List<CutRow> rows = new ArrayList<>();
    private final Map<Transmitter, Phased> phased = new EnumMap<>(Transmitter.class);
    private double sboCut;
    private double csbCut;

    TrimCrew(Crew crew, Channel channel) {
        this.crew = crew;
        this.channel = channel;
        phasing = new PhasingCrew(crew, channel);
        rule = CutRule.usual(crew.cutStep(), TARGET);
    }

    /**
     * What a trim ended with.
     *
     * @param series all offsets and cuts
     * @param finished whether the crew came to stop by itself
     * @param phased the last phasing of each transmitter
     */
    record Trimmed(FeedCutSeries series, boolean finished, Map<Transmitter, Phased> phased) {}

    Trimmed trim() {
        phase(0, 0);
        NextCut next =
                FeedTrim.fromOffsets(resolution(), offset(Transmitter.ONE), offset(Transmitter.TWO))
                        .firstCut(crew.dataSheet(channel), rule);
        for (int cuts = 0; !next.finished() && cuts < MOST_CUTS; cuts++) {
            cut(next);
            phase(offset(Transmitter.ONE), offset(Transmitter.TWO));
            next = series().next(rule);
        }
        return new Trimmed(series(), next.finished(), Map.copyOf(phased));
    }

    private void phase(double from1, double from2) {
        phased.put(Transmitter.ONE, phasing.phaseFrom(Transmitter.ONE, from1));
        phased.put(Transmitter.TWO, phasing.phaseFrom(Transmitter.TWO, from2));
        rows.add(CutRow.after(sboCut, csbCut, offset(Transmitter.ONE), offset(Transmitter.TWO)));
    }

    private double offset(Transmitter transmitter) {
        return phased.get(transmitter).offset().value();
    }

    private void cut(NextCut next) {
        if (Feed.of(next) == Feed.SBO) {
            sboCut += crew.station().cutFeed(Crew.sbo(channel), next.length());
        } else {
            csbCut += crew.station().cutFeed(Crew.csb(channel), next.length());
        }
    }

    private FeedCutSeries series() {
        return new FeedCutSeries(rows, crew.dataSheet(channel), resolution());
    }

    private double resolution() {
        double u = phased.values().stream().mapToDouble(Phased::repeatable).max().orElseThrow();
        return Math.sqrt(12) * u;
    }
}
