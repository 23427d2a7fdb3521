package halfwidth.localizer.monitor;

import halfwidth.localizer.line.TurnCount;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Phases of the lines of one side, laid out from the shortest line without whole turns.
 *
 * @param excess beyond the shortest line (deg), in the order of the lines
 * @param turnsKnown how the whole turns are known
 * @param warnings in words
 */
record Unwrapped(double[] excess, TurnsKnown turnsKnown, List<String> warnings) {
    private static final double TURN = 360;

    /** Standard uncertainties that must fit within half a turn: wrong once in 300. */
    private static final double SURE = 3;

    static Unwrapped of(List<ReturnLine> lines, ReturnLines set) {
        List<String> without =
                lines.stream().filter(l -> l.tapeLength().isEmpty()).map(ReturnLine::name).toList();
        if (without.isEmpty()) {
            return byLength(lines, set);
        }
        return byPhaseAlone(lines, set, without.size() < lines.size() ? without : List.of());
    }

    /** The lines lie on the circle of phase between its widest gap and the shortest after it. */
    private static Unwrapped byPhaseAlone(
            List<ReturnLine> lines, ReturnLines set, List<String> missing) {
        double[] sorted = lines.stream().mapToDouble(ReturnLine::delay).sorted().toArray();
        double shortest = sorted[0];
        double widest = 0;
        for (int i = 0; i < sorted.length; i++) {
            double before = i == 0 ? sorted[sorted.length - 1] - TURN : sorted[i - 1];
            if (sorted[i] - before > widest) {
                widest = sorted[i] - before;
                shortest = sorted[i];
            }
        }
        double from = shortest;
        double[] excess =
                lines.stream()
                        .mapToDouble(l -> l.delay() - from + (l.delay() < from ? TURN : 0))
                        .toArray();
        double spread = Arrays.stream(excess).max().orElseThrow();
        boolean told = spread + SURE * set.phaseUncertainty() < TURN / 2;
        List<String> warnings = new ArrayList<>();
        if (!missing.isEmpty()) {
            warnings.add(
                    "No length by tape for "
                            + String.join(", ", missing)
                            + ": the lengths of the other lines were not used.");
        }
        warnings.add(told ? assumed(set) : untold(spread, set));
        return new Unwrapped(excess, told ? TurnsKnown.ASSUMED : TurnsKnown.NO, warnings);
    }

    private static String assumed(ReturnLines set) {
        return String.format(
                Locale.ROOT,
                "The phases alone cannot show a line that is a whole turn (%.2f m) longer; the"
                        + " lines are taken to be within half of that of each other. Check by tape.",
                TURN / set.phaseConstant().value());
    }

    private static String untold(double spread, ReturnLines set) {
        return String.format(
                Locale.ROOT,
                "The phases spread over %.1f deg, half a turn or more: which line is the shortest"
                        + " cannot be told from phases known to a whole turn (%.2f m). Measure the"
                        + " lengths by tape before any cut.",
                spread,
                TURN / set.phaseConstant().value());
    }

    /** Each line against the first: the turns that bring its phase nearest to its length. */
    private static Unwrapped byLength(List<ReturnLine> lines, ReturnLines set) {
        ReturnLine first = lines.get(0);
        List<String> warnings = new ArrayList<>();
        double[] against = new double[lines.size()];
        for (int i = 1; i < against.length; i++) {
            TurnCount count = count(lines.get(i), first, set);
            against[i] = count.electricalLength();
            if (!count.canBeTold()) {
                warnings.add(doubtful(lines.get(i).name(), first.name(), count));
            }
        }
        double least = Arrays.stream(against).min().orElseThrow();
        double[] excess = Arrays.stream(against).map(a -> a - least).toArray();
        return new Unwrapped(
                excess, warnings.isEmpty() ? TurnsKnown.BY_LENGTH : TurnsKnown.NO, warnings);
    }

    private static TurnCount count(ReturnLine line, ReturnLine first, ReturnLines set) {
        double longer = line.tapeLength().getAsDouble() - first.tapeLength().getAsDouble();
        double fromTape = set.phaseConstant().value() * Math.sqrt(2) * set.tapeUncertainty();
        double fromConstant = longer * set.phaseConstant().standardUncertainty();
        double u = Math.hypot(Math.hypot(fromTape, fromConstant), set.phaseUncertainty());
        double phase = line.delay() - first.delay();
        return new TurnCount(
                phase < 0 ? phase + TURN : phase,
                TURN,
                new Estimate(set.phaseConstant().value() * longer, u),
                SURE);
    }

    private static String doubtful(String line, String first, TurnCount count) {
        return String.format(
                Locale.ROOT,
                "Length and phase of %s against %s disagree by %.0f deg with a standard uncertainty"
                        + " of %.0f deg: a whole turn cannot be told with this tape and phase"
                        + " constant. Measure again before any cut.",
                line,
                first,
                Math.abs(count.difference()),
                count.coarse().standardUncertainty());
    }

    /** The shortest line is what the others are measured against, so it has no uncertainty. */
    Estimate phase(int line, double uncertainty) {
        int shortest = 0;
        for (int i = 1; i < excess.length; i++) {
            shortest = excess[i] < excess[shortest] ? i : shortest;
        }
        return new Estimate(excess[line], line == shortest ? 0 : uncertainty);
    }
}
