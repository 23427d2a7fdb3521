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
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Each tone is turned to its aim: sum of twice 20 %, balance as typed; or not at all. */
@Tag("long")
class ModulationUnderFireTest {
    /** ICAO Annex 10 Vol I, 3.1.3.5.1: nominal depth of either tone (%). */
    private static final double NOMINAL = 20;

    private static final Pattern TURN = Pattern.compile("(90|150) Hz (up|down) ([0-9.]+) %");

    private final Fire fire = Fire.at("transmit/modulation");

    @Test
    void turnsEachToneTowardsItsAim() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        return new Fire.Round(drawn(random), ModulationUnderFireTest::objection);
    }

    private Filled drawn(Random random) {
        double step = any(random, 0.1, 0.1, 0.01, 0.5);
        List<List<String>> rows = new ArrayList<>();
        for (int transmitter = 1; transmitter <= 1 + random.nextInt(2); transmitter++) {
            for (int carrier = 0; carrier < 1 + random.nextInt(2); carrier++) {
                for (int i = 0; i < 1 + random.nextInt(2); i++) {
                    double spread = any(random, 3.0, 1.0, 0.2);
                    double depth90 = NOMINAL + uniform(random, -spread, spread);
                    double depth150 = NOMINAL + uniform(random, -spread, spread);
                    rows.add(
                            row(
                                    "" + transmitter,
                                    carrier == 0 ? "course" : "clearance",
                                    number(step * Math.rint(depth90 / step), 2),
                                    number(step * Math.rint(depth150 / step), 2),
                                    random.nextInt(4) == 0
                                            ? ""
                                            : tone((depth150 - depth90) / 100, 0.001)));
                }
            }
        }
        double aim = random.nextInt(3) == 0 ? uniform(random, -0.02, 0.02) : 0;
        return Filled.none(fire.page())
                .with("aimBalance", tone(aim, 0.001))
                .with("depthStep", number(step, 2))
                .with("ddmStep", "1 ‰")
                .with("stopDepth", any(random, "0.2", "0.5", "2"))
                .with("stopBalance", any(random, "1 ‰", "5 ‰", "20 ‰"))
                .withReadings("depths", Rows.withMishaps(rows, random));
    }

    private static String objection(Decided decided) {
        for (String carrier : new String[] {"Course", "Clearance"}) {
            for (String transmitter : new String[] {"1", "2"}) {
                String name = carrier + transmitter;
                Optional<Action> action = decided.action("turn" + name);
                boolean decides =
                        action.isPresent()
                                && (action.get().hasAmount()
                                        || action.get().state() == Action.State.FINISHED);
                String wrong = decides ? objection(decided, name, action.get()) : "";
                if (!wrong.isEmpty()) {
                    return name + ": " + wrong + ", yet: " + action.get();
                }
            }
        }
        return "";
    }

    private static String objection(Decided decided, String name, Action action) {
        Rows rows = Rows.of(decided.filled(), "depths");
        int last = -1;
        for (int row = 0; row < rows.rows(); row++) {
            boolean its =
                    name.endsWith(rows.word(row, "transmitter"))
                            && !rows.word(row, "transmitter").isEmpty()
                            && !rows.word(row, "carrier").isEmpty()
                            && name.toLowerCase(java.util.Locale.ROOT)
                                    .startsWith(rows.word(row, "carrier"));
            last = its ? row : last;
        }
        double depth90 = rows.number(last, "90 Hz");
        double depth150 = rows.number(last, "150 Hz");
        double ddm = rows.number(last, "DDM");
        double byDepths = (depth150 - depth90) / 100;
        if (Double.isNaN(byDepths)) {
            return "a depth is blank";
        }
        double rounding = field(decided, "depthStep") / 100 + field(decided, "ddmStep") / 2;
        if (Math.abs(ddm - byDepths) > rounding + 1e-6) {
            return "DDM and depths part";
        }
        double off = 100 * (field(decided, "aimBalance") - (Double.isNaN(ddm) ? byDepths : ddm));
        double offSum = 2 * NOMINAL - depth90 - depth150;
        double up150 = (offSum + off) / 2;
        double up90 = (offSum - off) / 2;
        return action.hasAmount()
                ? turned(action.words(), up90, up150)
                : left(decided, name, Math.max(Math.abs(up90), Math.abs(up150)), off);
    }

    private static String left(Decided decided, String name, double depth, double off) {
        boolean broken =
                decided.answers().stream()
                        .filter(answer -> answer.result().name().endsWith(name))
                        .anyMatch(answer -> answer.verdict() == Verdict.NOT_MET);
        boolean near =
                depth <= field(decided, "stopDepth") + 1e-6
                        && Math.abs(off) <= 100 * field(decided, "stopBalance") + 1e-6;
        return broken ? "a limit is not met" : near ? "" : "depths are off by " + depth;
    }

    private static String turned(String words, double up90, double up150) {
        Matcher turn = TURN.matcher(words);
        double left90 = up90;
        double left150 = up150;
        while (turn.find()) {
            double by = Double.parseDouble(turn.group(3)) * (turn.group(2).equals("up") ? 1 : -1);
            left90 -= turn.group(1).equals("90") ? by : 0;
            left150 -= turn.group(1).equals("150") ? by : 0;
        }
        double most = Math.max(Math.abs(left90), Math.abs(left150));
        return most <= 0.0051 ? "" : "it leaves " + left90 + " and " + left150 + " %";
    }
}
