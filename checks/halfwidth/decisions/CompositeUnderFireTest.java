package halfwidth.decisions;

import static halfwidth.decisions.Rows.any;
import static halfwidth.decisions.Rows.field;
import static halfwidth.decisions.Rows.number;
import static halfwidth.decisions.Rows.row;
import static halfwidth.decisions.Rows.tone;
import static halfwidth.decisions.Rows.uniform;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.vocabulary.Action;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The monitor is finished only where all pairs are nulled and explain the composite. Element by
 * element: C ∓ jS, S = K C/2, delayed by the common delay and by half the excess either way.
 */
@Tag("long")
class CompositeUnderFireTest {
    private static final double STEP = 0.001;

    private final Fire fire = Fire.at("monitor/composite");

    @Test
    void isFinishedOnlyWhereTheNulledPairsExplainIt() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        return new Fire.Round(drawn(random), CompositeUnderFireTest::objection);
    }

    private Filled drawn(Random random) {
        double carrierDdm = any(random, 0.0, 0.0, 0.002);
        double spread = any(random, 0.2, 1.0, 4.0);
        List<List<String>> rows = new ArrayList<>();
        Complex carriers = Complex.ZERO;
        Complex signals = Complex.ZERO;
        for (int i = 0; i < 2 + random.nextInt(6); i++) {
            double weight = uniform(random, 0.5, 1.2) * (random.nextInt(25) == 0 ? -1 : 1);
            double carrier = 1 - 0.1 * i;
            double sensitivity = 0.09 + 0.15 * i;
            double excess = spread * random.nextGaussian();
            double common = spread * random.nextGaussian();
            Pair pair = new Pair(weight, carrier, sensitivity, excess, common);
            carriers = carriers.add(pair.carriers());
            signals = signals.add(pair.signals());
            double reading = -sensitivity * Math.tan(Math.toRadians(excess) / 2);
            rows.add(
                    row(
                            "pair " + (i + 1),
                            number(weight, 3),
                            number(carrier, 3),
                            number(sensitivity, 3),
                            tone(reading + carrierDdm, STEP),
                            number(common, 1),
                            "0",
                            "0"));
        }
        double hidden = random.nextInt(3) == 0 ? 0.01 * random.nextGaussian() : 0;
        double composite = 2 * signals.divide(carriers).getReal() + carrierDdm + hidden;
        return Filled.none(fire.page())
                .with("resolution", "1 ‰")
                .with("target", any(random, "1 ‰", "2 ‰"))
                .with("linePerInch", "157.1 °/m")
                .with("commonUncertainty", "1")
                .with("measured", tone(Math.max(-0.9, Math.min(0.9, composite)), STEP))
                .with("carrierDdm", tone(carrierDdm, STEP))
                .withReadings("pairs", Rows.withMishaps(rows, random));
    }

    private record Pair(
            double weight, double carrier, double sensitivity, double excess, double common) {
        private Complex delayed(double direction) {
            double delay = Math.toRadians(common + direction * excess / 2);
            return new Complex(Math.cos(delay), -Math.sin(delay)).multiply(weight * carrier);
        }

        Complex carriers() {
            return delayed(1).add(delayed(-1));
        }

        /**
         * What stands in the sidebands beyond the carrier: −jS on one side and +jS on the other.
         */
        Complex signals() {
            Complex turned = new Complex(0, -sensitivity / 2);
            return delayed(1).subtract(delayed(-1)).multiply(turned);
        }

        /** As the page's prose states it: of a reading in steps, at an excess δ = −2 atan(d/K). */
        double excessUncertainty(double reading) {
            double ratio = reading / sensitivity;
            double perDdm = 2 / (Math.abs(sensitivity) * (1 + ratio * ratio));
            return Math.toDegrees(perDdm * STEP / Math.sqrt(12));
        }

        Pair with(double moreExcess, double moreCommon) {
            return new Pair(weight, carrier, sensitivity, excess + moreExcess, common + moreCommon);
        }
    }

    private static String objection(Decided decided) {
        Optional<Action> said = decided.action("advice");
        if (said.isEmpty()) {
            return "";
        }
        Action action = said.get();
        Rows rows = Rows.of(decided.filled(), "pairs");
        double zero = field(decided, "carrierDdm");
        List<Pair> pairs = new ArrayList<>();
        List<Double> readings = new ArrayList<>();
        boolean nulled = true;
        for (int row = 0; row < rows.rows(); row++) {
            double reading = rows.number(row, "reading") - zero;
            double k = rows.number(row, "K");
            double weighted = rows.number(row, "weight") * rows.number(row, "carrier");
            double common = rows.number(row, "common");
            if (Double.isNaN(reading + k + weighted + common) || rows.word(row, "pair").isEmpty()) {
                return action.state() != Action.State.FINISHED
                                && action.state() != Action.State.HELD
                                && decided.number("predicted").isEmpty()
                        ? ""
                        : "a figure is missing, yet: " + action;
            }
            double excess = -2 * Math.toDegrees(Math.atan(reading / k));
            pairs.add(new Pair(weighted, 1, k, excess, common));
            readings.add(reading);
            nulled &= Math.abs(reading) <= field(decided, "target") + 1e-9;
        }
        double apart = field(decided, "measured") - zero - reading(pairs);
        double bound = 2 * Math.hypot(uncertainty(pairs, readings), STEP / Math.sqrt(12));
        boolean explained = Math.abs(apart) <= bound;
        // First order by differences here: too near to the bound to tell.
        if (Math.abs(Math.abs(apart) / bound - 1) < 0.001) {
            return "";
        }
        Action.State right =
                !explained
                        ? Action.State.HELD
                        : nulled ? Action.State.FINISHED : Action.State.TO_DO;
        return action.state() == right
                ? ""
                : "differs by %.5f, may by %.5f, nulled: %s, yet: %s"
                        .formatted(apart, bound, nulled, action);
    }

    private static double reading(List<Pair> pairs) {
        Complex carriers = pairs.stream().map(Pair::carriers).reduce(Complex.ZERO, Complex::add);
        Complex signals = pairs.stream().map(Pair::signals).reduce(Complex.ZERO, Complex::add);
        return 2 * signals.divide(carriers).getReal();
    }

    /**
     * JCGM 100:2008, equation (10), with differences for derivatives; common delays known to 1°.
     */
    private static double uncertainty(List<Pair> pairs, List<Double> readings) {
        double squares = 0;
        for (int i = 0; i < pairs.size(); i++) {
            double u = pairs.get(i).excessUncertainty(readings.get(i));
            squares += Math.pow(u * slope(pairs, i, 1, 0), 2) + Math.pow(slope(pairs, i, 0, 1), 2);
        }
        return Math.sqrt(squares);
    }

    private static double slope(List<Pair> pairs, int i, double excess, double common) {
        double step = 1e-4;
        List<Pair> up = new ArrayList<>(pairs);
        List<Pair> down = new ArrayList<>(pairs);
        up.set(i, pairs.get(i).with(step * excess, step * common));
        down.set(i, pairs.get(i).with(-step * excess, -step * common));
        return (reading(up) - reading(down)) / (2 * step);
    }
}
