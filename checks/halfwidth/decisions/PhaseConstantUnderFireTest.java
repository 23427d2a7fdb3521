package halfwidth.decisions;

import static halfwidth.decisions.Rows.any;
import static halfwidth.decisions.Rows.field;
import static halfwidth.decisions.Rows.number;
import static halfwidth.decisions.Rows.row;
import static halfwidth.decisions.Rows.uniform;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.vocabulary.Action;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A phase constant to cut by is that of a line that can be, and no way that was read denies it. */
@Tag("long")
class PhaseConstantUnderFireTest {
    private static final double LIGHT = 299792458;
    private static final double HERTZ = 110.3e6;
    private static final double IN_VACUUM = 360 * HERTZ * 0.0254 / LIGHT;

    /** No coaxial line is slower than half the speed of light (common practice, no source). */
    private static final double SLOWEST = 0.5;

    private final Fire fire = Fire.at("lines/phase-constant");

    @Test
    void givesNoConstantThatTheReadingsDeny() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        double factor = uniform(random, 0.64, 0.92);
        boolean mishaps = random.nextBoolean();
        Filled filled = drawn(random, factor, mishaps);
        return new Fire.Round(filled, decided -> objection(decided, mishaps ? 0 : factor));
    }

    private Filled drawn(Random random, double factor, boolean mishaps) {
        double offSheet = random.nextInt(6) == 0 ? 0.08 : uniform(random, -0.015, 0.015);
        double noise = any(random, 0.05, 0.2, 0.5);
        Filled filled =
                Filled.none(fire.page())
                        .with("frequency", "110.30 MHz")
                        .with("velocityFactor", number(Math.min(1, factor + offSheet), 3))
                        .with("velocityTolerance", "0.02");
        int ways = 1 + random.nextInt(3);
        if ((ways & 1) > 0) {
            filled = withCuts(filled, random, factor, noise, mishaps);
        }
        return (ways & 2) > 0 ? withSlope(filled, random, factor, noise, mishaps) : filled;
    }

    private static Filled withCuts(
            Filled filled, Random random, double factor, double noise, boolean mishaps) {
        boolean onePort = random.nextBoolean();
        double perInch = IN_VACUUM / factor * (onePort ? 2 : 1);
        double start = uniform(random, -180, 180);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 8 + random.nextInt(4); i++) {
            double phase = start + 1.5 * i * perInch + noise * random.nextGaussian();
            rows.add(row(number(1.5 * i, 1), number(Math.IEEEremainder(phase, 360), 1)));
        }
        boolean mistaken = mishaps && random.nextInt(5) == 0;
        return filled.with("cutMeasurement", onePort != mistaken ? "one port" : "through")
                .with("cutPhaseStep", "0.1")
                .with("ruleStep", "1/32")
                .withReadings("cuts", mishaps ? Rows.withMishaps(rows, random) : rows);
    }

    private static Filled withSlope(
            Filled filled, Random random, double factor, double noise, boolean mishaps) {
        boolean onePort = random.nextBoolean();
        double length = uniform(random, 5, 15);
        double start = uniform(random, -180, 180);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 8 + random.nextInt(5); i++) {
            double hertz = (104 + i) * 1e6;
            double turns = (onePort ? 2 : 1) * hertz * length / (LIGHT * factor);
            double phase = start - 360 * turns + noise * random.nextGaussian();
            rows.add(row(number(hertz / 1e6, 1), number(Math.IEEEremainder(phase, 360), 1)));
        }
        boolean mistaken = mishaps && random.nextInt(5) == 0;
        return filled.with("slopeMeasurement", onePort != mistaken ? "one port" : "through")
                .with("slopePhaseStep", "0.1")
                .with("lineLength", number(length, 2))
                .with("lengthUncertainty", "0.01")
                .withReadings("slope", mishaps ? Rows.withMishaps(rows, random) : rows);
    }

    /**
     * @param factor the velocity factor that the readings were made with; 0 if mishaps hide it
     */
    private static String objection(Decided decided, double factor) {
        Action action = decided.action("advice").orElse(null);
        if (action == null || action.state() != Action.State.FINISHED) {
            return "";
        }
        if (decided.refuses()) {
            return "what was read is refused in part, yet: " + action;
        }
        double best = decided.number("bestPerInch").orElse(Double.NaN);
        double velocity = IN_VACUUM / best;
        if (!(velocity >= SLOWEST && velocity <= 1)) {
            return "a velocity factor of " + velocity + ": " + action;
        }
        double cuts = byCuts(decided);
        double slope = bySlope(decided);
        double used =
                action.words().contains("by trial cuts")
                        ? cuts
                        : action.words().contains("by slope")
                                ? slope
                                : IN_VACUUM / field(decided, "velocityFactor");
        if (!(Math.abs(used - best) < 1e-6)) {
            return "read as " + used + ", shown as " + best + ": " + action;
        }
        OptionalDouble apart = decided.number("trialSlope");
        boolean bothRead = !Double.isNaN(cuts + slope);
        if (bothRead && !(apart.isPresent() && apart.getAsDouble() <= 1)) {
            return "cuts say " + cuts + ", slope " + slope + ": " + action;
        }
        double u = decided.number("bestUncertainty").orElse(Double.NaN);
        boolean sheet = action.words().contains("by data sheet");
        // Of eight readings the scatter tells u with six degrees of freedom only: by Student's
        // distribution one set in 16,000 is beyond 10 u, where the normal one would have none.
        return factor > 0 && !sheet && Math.abs(best - IN_VACUUM / factor) > 10 * u
                ? "the truth is " + IN_VACUUM / factor + ", not " + best + " ± " + u
                : "";
    }

    private static double byCuts(Decided decided) {
        double rise = slopeOf(Rows.of(decided.filled(), "cuts"), "cut so far", decided, "cut");
        return rise;
    }

    private static double bySlope(Decided decided) {
        double fall = -slopeOf(Rows.of(decided.filled(), "slope"), "frequency", decided, "slope");
        if (Double.isNaN(fall)) {
            return fall;
        }
        double delay = fall / 360 / 1e6;
        return IN_VACUUM * delay * LIGHT / field(decided, "lineLength");
    }

    /** Degrees of one way for a unit across, steps joined the shorter way round; NaN if too few. */
    private static double slopeOf(Rows rows, String across, Decided decided, String way) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < rows.rows(); i++) {
            double[] point = {rows.number(i, across), rows.number(i, "phase")};
            if (!Double.isNaN(point[0] + point[1])) {
                points.add(point);
            }
        }
        if (points.size() < 3) {
            return Double.NaN;
        }
        if (way.equals("slope")) {
            points.sort(java.util.Comparator.comparingDouble(point -> point[0]));
        }
        SimpleRegression line = new SimpleRegression();
        double joined = points.get(0)[1];
        line.addData(points.get(0)[0], joined);
        for (int i = 1; i < points.size(); i++) {
            joined += Math.IEEEremainder(points.get(i)[1] - points.get(i - 1)[1], 360);
            line.addData(points.get(i)[0], joined);
        }
        Object passes = decided.filled().entries().get(way + "Measurement").value();
        return line.getSlope() / (passes.equals("one port") ? 2 : 1);
    }
}
