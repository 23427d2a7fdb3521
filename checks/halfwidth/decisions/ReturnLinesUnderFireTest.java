package halfwidth.decisions;

import static halfwidth.decisions.Rows.any;
import static halfwidth.decisions.Rows.number;
import static halfwidth.decisions.Rows.row;
import static halfwidth.decisions.Rows.uniform;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.vocabulary.Action;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * After the cuts every return of a side delays as much as its shortest, but for whole turns and one
 * step of the tool; and no turn is cut that neither half a turn nor the lengths allow.
 */
@Tag("long")
class ReturnLinesUnderFireTest {
    private static final double PER_METRE = 157.1;
    private static final double TURN = 360;
    private static final double TOOL = 0.0254 / 16;

    /** The words give a tenth of a millimetre. */
    private static final double ROUNDING = 0.00006 * PER_METRE;

    private static final Pattern CUT = Pattern.compile("(.*): [^:]*\\(([0-9.]+) mm\\)");

    private final Fire fire = Fire.at("monitor/return-lines");

    @Test
    void cutsEverySideToItsShortest() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        double sense = random.nextBoolean() ? 1 : -1;
        Filled filled = drawn(random, sense);
        return new Fire.Round(filled, decided -> objection(decided, sense));
    }

    private Filled drawn(Random random, double sense) {
        double perMetre = PER_METRE * (1 + 0.005 * random.nextGaussian());
        double spread = any(random, 0.3, 0.6, 1.0, 3.0);
        int taped = random.nextInt(3);
        double first = uniform(random, 0, spread);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 1; i <= 2 + random.nextInt(8); i++) {
            double length = i == 1 ? first : uniform(random, 0, spread);
            double phase = sense * perMetre * (length - first);
            boolean hasLength = taped == 0 || taped == 1 && random.nextInt(4) > 0;
            rows.add(
                    row(
                            "R" + i,
                            any(random, "150", "90"),
                            number(phase - TURN * Math.floor(phase / TURN), 1),
                            hasLength
                                    ? number(40 + length + 0.03 * random.nextGaussian(), 2)
                                    : ""));
        }
        return Filled.none(fire.page())
                .with("linePerInch", PER_METRE + " °/m")
                .with("linePerInchUncertainty", "1.5 °/m")
                .with("longerLineReads", sense > 0 ? "larger" : "smaller")
                .with("resolution", "0.1")
                .with("tapeUncertainty", any(random, "0.05", "0.05", "0.5"))
                .with("smallestCut", "1/16")
                .withReadings("returns", Rows.withMishaps(rows, random));
    }

    private static String objection(Decided decided, double sense) {
        for (String side : new String[] {"150", "90"}) {
            Optional<Action> action = decided.action("cuts" + side);
            boolean decides =
                    action.isPresent()
                            && (action.get().hasAmount()
                                    || action.get().state() == Action.State.FINISHED);
            String wrong = decides ? objection(decided, sense, side, action.get()) : "";
            if (!wrong.isEmpty()) {
                return side + " side: " + wrong + ", yet: " + action.get();
            }
        }
        return "";
    }

    private static String objection(Decided decided, double sense, String side, Action action) {
        Typed of = typed(decided, sense, side);
        if (!of.all() && action.state() == Action.State.FINISHED) {
            return "a return of this side has no phase";
        }
        Map<String, Double> cuts = new HashMap<>();
        double most = 0;
        for (String part : action.words().split("; ")) {
            Matcher cut = CUT.matcher(part);
            if (cut.find()) {
                double metres = Double.parseDouble(cut.group(2)) / 1000;
                cuts.put(cut.group(1), metres);
                most = Math.max(most, metres);
            }
        }
        if (action.hasAmount() && Math.abs(most - action.amount() / 1000) > 0.0001) {
            return "the amount is not the longest cut";
        }
        String wrong = "every return is cut";
        for (int shortest = 0; shortest < of.names().size(); shortest++) {
            if (!cuts.containsKey(of.names().get(shortest))) {
                wrong = against(of, shortest, cuts);
                if (wrong.isEmpty()) {
                    return "";
                }
            }
        }
        return wrong;
    }

    private static String against(Typed of, int shortest, Map<String, Double> cuts) {
        boolean taped = of.lengths().stream().noneMatch(length -> length.isNaN());
        for (int i = 0; i < of.names().size(); i++) {
            double cut = PER_METRE * cuts.getOrDefault(of.names().get(i), 0.0);
            double left = of.delays().get(i) - of.delays().get(shortest) - cut;
            left -= TURN * Math.floor((left + ROUNDING) / TURN);
            if (left > PER_METRE * TOOL + 2 * ROUNDING) {
                return of.names().get(i) + " is left longer by " + left + "°";
            }
            double longer = left + cut;
            double byTape = PER_METRE * (of.lengths().get(i) - of.lengths().get(shortest));
            if (taped ? Math.abs(byTape - longer) > TURN / 2 : longer >= TURN / 2) {
                return of.names().get(i) + " is cut by a turn that nothing tells: " + longer;
            }
        }
        return "";
    }

    /** The returns of a side that can be compared, and whether these are all of it. */
    private record Typed(
            List<String> names, List<Double> delays, List<Double> lengths, boolean all) {}

    private static Typed typed(Decided decided, double sense, String side) {
        Rows rows = Rows.of(decided.filled(), "returns");
        List<Integer> of =
                IntStream.range(0, rows.rows())
                        .filter(row -> rows.word(row, "side").equals(side))
                        .boxed()
                        .toList();
        List<Integer> measured =
                of.stream()
                        .filter(row -> !Double.isNaN(rows.number(row, "phase")))
                        .filter(row -> !rows.word(row, "return").isEmpty())
                        .toList();
        return new Typed(
                measured.stream().map(row -> rows.word(row, "return")).toList(),
                measured.stream().map(row -> sense * rows.number(row, "phase")).toList(),
                measured.stream().map(row -> rows.number(row, "length")).toList(),
                measured.size() == of.size());
    }
}
