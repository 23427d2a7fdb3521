package halfwidth.localizer.station;

import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.monitor.ArraySide;
import halfwidth.localizer.monitor.CutList;
import halfwidth.localizer.monitor.LineCut;
import halfwidth.localizer.monitor.ReturnLine;
import halfwidth.localizer.monitor.ReturnLines;
import halfwidth.localizer.signal.Tone;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;
import java.util.OptionalDouble;

/** Measures the monitor returns with the phase meter and makes those of a side alike. */
final class ReturnCrew {
    static final double TARGET = 1;

    /** A pair that is farther off is brought nearer by the meter before its adapter trial (deg). */
    private static final double FAR_OFF = 60;

    private final Crew crew;
    private final SimulatedMonitor monitor;
    private final CutRule rule;
    private final double[] cuts;

    ReturnCrew(Crew crew) {
        this.crew = crew;
        monitor = crew.station().monitor();
        rule = CutRule.usual(crew.cutStep(), TARGET);
        cuts = new double[crew.station().array().positions().size()];
    }

    /** All that was cut from a return so far (m). */
    double cutOff(int element) {
        return cuts[element - 1];
    }

    double cut(int element, double metres) {
        double cut = monitor.cut(element, metres);
        cuts[element - 1] += cut;
        return cut;
    }

    /** First a stated part of each cut, then, measured again, what is left of it. */
    CutList makeAlike(ArraySide side) {
        cutBy(list(side), rule.firstFraction());
        cutBy(list(side), 1);
        return list(side);
    }

    private void cutBy(CutList list, double part) {
        for (LineCut cut : list.cuts()) {
            cut(Integer.parseInt(cut.name()), rule.roundDown(part * cut.cut()));
        }
    }

    /** The cut list of one side, from the meter. */
    private CutList list(ArraySide side) {
        List<Integer> elements = monitor.pairs().stream().map(p -> p.element(tone(side))).toList();
        List<ReturnLine> lines =
                elements.stream().map(e -> line(side, e, elements.get(0))).toList();
        double resolution = Math.sqrt(12) * crew.phaseUncertainty();
        return new ReturnLines(lines, crew.dataSheet(Channel.COURSE), resolution, 0)
                .cutList(side, rule);
    }

    private ReturnLine line(ArraySide side, int element, int reference) {
        double delay = element == reference ? 0 : monitor.delayReading(element, reference);
        return new ReturnLine(Integer.toString(element), side, delay, OptionalDouble.empty());
    }

    /** A pair that reads far off by the meter is cut by a stated part of that. */
    void bringNearer(AntennaPair pair) {
        Estimate excess = excess(pair);
        if (Math.abs(excess.value()) > FAR_OFF) {
            double beta = crew.dataSheet(Channel.COURSE).value();
            double whole = Math.abs(excess.value()) / beta;
            int element = pair.element(tone(ArraySide.tooLong(excess.value())));
            cut(element, rule.roundDown(rule.firstFraction() * whole));
        }
    }

    /** Delay of the 150 Hz side's return less that of the 90 Hz side's, by the meter. */
    Estimate excess(AntennaPair pair) {
        double reading = monitor.delayReading(pair.element150(), pair.element90());
        return new Estimate(Math.IEEEremainder(reading, 360), crew.phaseUncertainty());
    }

    /** Mean delay of both returns of a pair against one return for all, by the meter. */
    Estimate common(AntennaPair pair, int reference) {
        double sum = near(pair.element90(), reference) + near(pair.element150(), reference);
        return new Estimate(sum / 2, crew.phaseUncertainty() / Math.sqrt(2));
    }

    private double near(int element, int reference) {
        return Math.IEEEremainder(monitor.delayReading(element, reference), 360);
    }

    static Tone tone(ArraySide side) {
        return side == ArraySide.ON_150 ? Tone.HZ_150 : Tone.HZ_90;
    }
}
