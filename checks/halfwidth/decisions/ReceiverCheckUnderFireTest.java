package halfwidth.decisions;

import static halfwidth.decisions.Rows.any;
import static halfwidth.decisions.Rows.field;
import static halfwidth.decisions.Rows.number;
import static halfwidth.decisions.Rows.row;
import static halfwidth.decisions.Rows.tone;
import static halfwidth.decisions.Rows.uniform;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.show.Verdict;
import halfwidth.vocabulary.Action;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A receiver is used only where neither its line nor any reading errs more than is allowed. */
@Tag("long")
class ReceiverCheckUnderFireTest {
    private static final double[] SETTINGS = {-0.2, -0.155, -0.08, 0, 0.08, 0.155, 0.2};

    private final Fire fire = Fire.at("instruments/receiver-check");

    @Test
    void usesNoReceiverThatErrsMoreThanAllowed() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        return new Fire.Round(drawn(random), ReceiverCheckUnderFireTest::objection);
    }

    private Filled drawn(Random random) {
        double zero = 0.002 * random.nextGaussian();
        double gain = 1 + 0.015 * random.nextGaussian();
        double bend = random.nextInt(4) == 0 ? uniform(random, -0.3, 0.3) : 0;
        double noise = any(random, 0.0002, 0.0005, 0.002);
        double step = any(random, 0.001, 0.001, 0.0001);
        List<List<String>> rows = new ArrayList<>();
        for (int time = 0; time < 1 + random.nextInt(3); time++) {
            for (double setting : SETTINGS) {
                double shown =
                        zero
                                + gain * setting
                                + bend * setting * Math.abs(setting)
                                + noise * random.nextGaussian();
                rows.add(row(tone(setting, 0.0001), tone(shown, step)));
            }
        }
        return Filled.none(fire.page())
                .with("displayStep", number(step, 4))
                .with("sourceZero", "0.0002")
                .with("sourceGain", "0.2")
                .with("allowed", any(random, "0.005", "0.003", "0.008"))
                .with("fieldReading", tone(uniform(random, -0.25, 0.25), step))
                .withReadings("readings", Rows.withMishaps(rows, random));
    }

    private static String objection(Decided decided) {
        Action action = decided.action("finding").orElse(null);
        if (action == null) {
            return decided.number("corrected").isPresent() ? "corrected without a finding" : "";
        }
        Rows rows = Rows.of(decided.filled(), "readings");
        SimpleRegression line = new SimpleRegression();
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        double worst = 0;
        for (int i = 0; i < rows.rows(); i++) {
            double setting = rows.number(i, "setting");
            double reading = rows.number(i, "reading");
            if (!Double.isNaN(setting + reading)) {
                line.addData(setting, reading);
                lowest = Math.min(lowest, setting);
                highest = Math.max(highest, setting);
                worst = Math.max(worst, Math.abs(reading - setting));
            }
        }
        double allowed = field(decided, "allowed");
        double byLine =
                Math.max(
                        Math.abs(line.predict(lowest) - lowest),
                        Math.abs(line.predict(highest) - highest));
        // A display that moves in steps may show half a step more than the receiver errs.
        double byReading = worst - field(decided, "displayStep") / 2;
        boolean errs = Math.max(byLine, byReading) > allowed + 1e-9;
        if (errs && action.state() != Action.State.HELD) {
            return "errs by %.4f by its line, %.4f by a reading, yet: %s"
                    .formatted(byLine, worst, action);
        }
        if (!errs && action.state() == Action.State.HELD) {
            return "errs by no more than " + Math.max(byLine, worst) + ", yet: " + action;
        }
        boolean met =
                decided.answers().stream()
                        .filter(Decided::isLimited)
                        .allMatch(answer -> answer.verdict() == Verdict.MET);
        if (errs && met) {
            return "every limit met, yet: " + action;
        }
        OptionalDouble corrected = decided.number("corrected");
        double right = (field(decided, "fieldReading") - line.getIntercept()) / line.getSlope();
        return corrected.isPresent() && Math.abs(corrected.getAsDouble() - right) > 1e-9
                ? "corrected to " + corrected.getAsDouble() + " instead of " + right
                : "";
    }
}
