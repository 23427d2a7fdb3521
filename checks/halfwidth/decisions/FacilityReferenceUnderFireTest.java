package halfwidth.decisions;

import static halfwidth.decisions.Rows.any;
import static halfwidth.decisions.Rows.field;
import static halfwidth.decisions.Rows.number;
import static halfwidth.decisions.Rows.tone;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.show.Verdict;
import halfwidth.value.Entry;
import halfwidth.vocabulary.Action;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A reference says that its limits are met only where each value keeps the figure of ICAO Annex 10
 * Vol I, 3.1.3 or of the FAA Orders that the page names, worked out here from what was typed.
 */
@Tag("long")
class FacilityReferenceUnderFireTest {
    private static final Map<String, Double> METRES = Map.of("I", 10.5, "II", 7.5, "III", 3.0);
    private static final Map<String, Double> ALARM_METRES =
            Map.of("I", 10.5, "II", 7.5, "III", 6.0);
    private static final double CATEGORY_I_DDM = 0.015;
    private static final double NOMINAL_SENSITIVITY = 0.00145;
    private static final double ROUNDING = 1e-9;

    private final Fire fire = Fire.at("record/facility-reference");

    @Test
    void saysMetOnlyWhereEveryLimitIs() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        return new Fire.Round(drawn(random), FacilityReferenceUnderFireTest::objection);
    }

    private Filled drawn(Random random) {
        double wide = any(random, 0.3, 0.6, 1.2);
        double sensitivity = NOMINAL_SENSITIVITY * (1 + 0.06 * wide * random.nextGaussian());
        double width = 4 + 0.3 * random.nextGaussian();
        Filled filled =
                new Filled(fire.page(), Filled.example(fire.page()).entries(), Map.of(), false)
                        .with("category", any(random, "I", "II", "III"))
                        .with("courseWidth", number(width, 2))
                        .with("ddmPerMetre", number(sensitivity, 6))
                        .with("composite", tone(0.002 * random.nextGaussian(), 0.001))
                        .with("alarm150", number(6 + 2 * wide * random.nextGaussian(), 1))
                        .with("alarm90", number(6 + 2 * wide * random.nextGaussian(), 1))
                        .with("alarmWide", number(-Math.abs(14 + 2 * random.nextGaussian()), 1))
                        .with("alarmNarrow", number(Math.abs(14 + 2 * random.nextGaussian()), 1));
        double line = 2.5 * wide * random.nextGaussian();
        for (int i = 1; i <= 2; i++) {
            line += 0.8 * wide * random.nextGaussian();
            filled =
                    filled.with("shift" + i, number(line, 2))
                            .with(
                                    "measuredWidth" + i,
                                    number(width * (1 + 0.04 * wide * random.nextGaussian()), 2))
                            .with("part90of" + i, number(50 + 2 * wide * random.nextGaussian(), 1))
                            .with("sum" + i, number(40 + 1.5 * wide * random.nextGaussian(), 1))
                            .with("balance" + i, tone(0.006 * wide * random.nextGaussian(), 0.001));
            for (String side : new String[] {"90", "150"}) {
                double inner = 195 + 6 * wide * random.nextGaussian();
                double outer = 170 + 6 * wide * random.nextGaussian();
                filled =
                        filled.with("inner" + side + "of" + i, number(inner, 0) + " ‰")
                                .with("outer" + side + "of" + i, number(outer, 0) + " ‰");
            }
        }
        if (random.nextBoolean()) {
            return filled;
        }
        // One value left out, pasted from the other transmitter, or of another size or tone.
        String name =
                any(
                        random,
                        "shift",
                        "measuredWidth",
                        "part90of",
                        "sum",
                        "balance",
                        "inner90of",
                        "outer150of");
        String slipped = Mishap.slip(filled.entries().get(name + "1").typed(), random);
        return slipped.isEmpty() ? without(filled, name + "2") : filled.with(name + "2", slipped);
    }

    private static Filled without(Filled filled, String name) {
        Map<String, Entry> left = new HashMap<>(filled.entries());
        left.remove(name);
        return new Filled(filled.page(), left, filled.readings(), false);
    }

    private static String objection(Decided decided) {
        Action state = decided.action("state").orElse(null);
        List<String> notMet =
                decided.answers().stream()
                        .filter(answer -> answer.verdict() == Verdict.NOT_MET)
                        .map(answer -> answer.result().name())
                        .toList();
        long open =
                decided.answers().stream()
                        .filter(Decided::isLimited)
                        .filter(answer -> answer.number().isEmpty())
                        .count();
        if (state == null) {
            return open > 0 || decided.refuses() ? "" : "nothing is missing, yet no state";
        }
        if (open > 0) {
            return "a value is missing, yet: " + state;
        }
        boolean broken = broken(decided);
        if (broken == notMet.isEmpty()) {
            return "broken: " + broken + ", but not met: " + notMet;
        }
        return broken == (state.state() == Action.State.FINISHED)
                ? "broken: " + broken + ", yet: " + state
                : "";
    }

    private static boolean broken(Decided decided) {
        String category = (String) decided.filled().entries().get("category").value();
        double perMetre = field(decided, "ddmPerMetre");
        boolean first = category.equals("I");
        double mostDdm = METRES.get(category) * perMetre;
        double alarm = ALARM_METRES.get(category);
        mostDdm = first ? Math.min(mostDdm, CATEGORY_I_DDM) : mostDdm;
        alarm = first ? Math.min(alarm, CATEGORY_I_DDM / perMetre) : alarm;
        double mostSensitivity = category.equals("III") ? 10 : 17;
        boolean broken =
                beyond(field(decided, "alarm150"), alarm)
                        || beyond(field(decided, "alarm90"), alarm)
                        || beyond(field(decided, "alarmWide"), 17)
                        || beyond(field(decided, "alarmNarrow"), 17);
        double half = Math.tan(Math.toRadians(field(decided, "courseWidth") / 2));
        for (int i = 1; i <= 2; i++) {
            double reads = -field(decided, "shift" + i) * perMetre;
            double sensitivity =
                    perMetre
                            * half
                            / Math.tan(Math.toRadians(field(decided, "measuredWidth" + i) / 2));
            broken |=
                    beyond(reads, mostDdm)
                            || beyond(
                                    100 * (sensitivity / NOMINAL_SENSITIVITY - 1), mostSensitivity)
                            || beyond(field(decided, "part90of" + i) - 50, 5)
                            || beyond(field(decided, "sum" + i) - 40, 4)
                            || beyond(field(decided, "balance" + i), 0.02);
            for (String side : new String[] {"90", "150"}) {
                broken |= field(decided, "inner" + side + "of" + i) < 0.180 - ROUNDING;
                broken |= field(decided, "outer" + side + "of" + i) < 0.155 - ROUNDING;
            }
        }
        double apart = (field(decided, "shift1") - field(decided, "shift2")) * perMetre;
        return broken || beyond(apart * 150 / 0.155, 3);
    }

    private static boolean beyond(double value, double most) {
        return Math.abs(value) > most + ROUNDING;
    }
}
