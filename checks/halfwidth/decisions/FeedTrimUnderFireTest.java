package halfwidth.decisions;

import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.vocabulary.Action;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Feeds made up from offset = a − βx for each transmitter, x the net cut, set in steps, cut at
 * random or too far, and typed with what goes wrong.
 */
@Tag("long")
class FeedTrimUnderFireTest {
    private static final double STEP = 0.5;
    private static final double TARGET = 0.5;

    /** Totals in inches, offsets in degrees, NaN for a blank. */
    private record Row(double sbo, double csb, double offset1, double offset2) {
        boolean isRead() {
            return !Double.isNaN(offset1) || !Double.isNaN(offset2);
        }
    }

    @Test
    void ordersNoCutThatTheOffsetsForbid() {
        Fire fire = Fire.at("transmit/feed-trim");
        List<String> disagreements =
                fire.rounds(
                        Fire.SETS,
                        random -> {
                            List<Row> rows = draw(random);
                            int slips = random.nextInt(3);
                            for (int i = 0; i < slips; i++) {
                                slip(rows, random);
                            }
                            return new Fire.Round(
                                    filled(fire, rows),
                                    decided -> objection(rows, slips == 0, decided));
                        });
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private static String objection(List<Row> rows, boolean asRead, Decided decided) {
        Action action = decided.action("advice").orElse(null);
        if (!totalsHold(rows) || !rows.get(0).isRead()) {
            return action == null ? "" : "nothing may be advised: " + action;
        }
        if (action == null) {
            return decided.refuses() ? "" : "neither advice nor refusal";
        }
        if (asRead && action.state() == Action.State.HELD) {
            return "held although nothing is wrong: " + action;
        }
        Row last = rows.get(rows.size() - 1);
        Row read = rows.stream().filter(Row::isRead).reduce((a, b) -> b).orElseThrow();
        if (last.sbo() > read.sbo() || last.csb() > read.csb()) {
            return action.hasAmount() || action.state() == Action.State.FINISHED
                    ? "cut since it was phased: " + action
                    : "";
        }
        double middle = (read.offset1() + read.offset2()) / 2;
        if (Double.isNaN(middle)) {
            return "";
        }
        if (action.words().contains("within the target") && Math.abs(middle) > TARGET + 3 * STEP) {
            return "the middle is " + middle + ": " + action;
        }
        if (!action.hasAmount()) {
            return "";
        }
        // Positive: the SBO path is too long.
        String feed = middle > 0 ? "SBO" : "CSB";
        if (Math.abs(middle) > 3 * STEP && !action.on().equals(feed)) {
            return "the middle is " + middle + ", so the " + feed + " feed is cut: " + action;
        }
        double left = decided.number("whole").orElseThrow();
        double steps = action.amount() * 16;
        if (action.amount() > left * 1.000001 || Math.abs(steps - Math.rint(steps)) > 1e-6) {
            return "cuts " + action.amount() + " of " + left;
        }
        return decided.number("nextCut").orElse(0) == action.amount()
                ? ""
                : "the figure shown is not the action's";
    }

    private static boolean totalsHold(List<Row> rows) {
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            boolean shrinks =
                    i > 0
                            && (row.sbo() < rows.get(i - 1).sbo()
                                    || row.csb() < rows.get(i - 1).csb());
            if (shrinks || Double.isNaN(row.sbo() + row.csb())) {
                return false;
            }
        }
        return true;
    }

    private static Filled filled(Fire fire, List<Row> rows) {
        List<List<String>> typed = new ArrayList<>();
        for (Row row : rows) {
            typed.add(
                    List.of(
                            cell(row.sbo()),
                            cell(row.csb()),
                            cell(row.offset1()),
                            cell(row.offset2())));
        }
        return Filled.none(fire.page())
                .with("frequency", "110.30 MHz")
                .with("velocityFactor", "0.83")
                .with("velocityFactorUncertainty", "0.02")
                .with("resolution", "0.5")
                .with("smallestCut", "1/16")
                .with("target", "0.5")
                .withReadings("phasing", typed);
    }

    private static String cell(double value) {
        return Double.isNaN(value) ? "" : String.format(Locale.ROOT, "%.4f", value);
    }

    private static List<Row> draw(Random random) {
        double perInch = 4.053 * (1 + 0.02 * random.nextGaussian());
        double middle = 40 * (2 * random.nextDouble() - 1);
        double half = 6 * random.nextDouble();
        List<Row> rows = new ArrayList<>();
        double sbo = 0;
        double csb = 0;
        boolean one = random.nextInt(8) == 0;
        for (int cuts = random.nextInt(5); cuts >= 0; cuts--) {
            double now = middle - perInch * (sbo - csb);
            rows.add(new Row(sbo, csb, step(now - half), one ? Double.NaN : step(now + half)));
            double share = random.nextInt(6) == 0 ? 2 : 0.3 + 0.7 * random.nextDouble();
            double cut = Math.round(16 * share * Math.abs(now) / perInch) / 16.0;
            sbo += now > 0 ? cut : 0;
            csb += now > 0 ? 0 : cut;
        }
        return rows;
    }

    private static double step(double offset) {
        return STEP * Math.rint(offset / STEP);
    }

    /** A blank, a sign, an outlier, feeds or transmitters exchanged, a row pasted twice. */
    private static void slip(List<Row> rows, Random random) {
        int at = random.nextInt(rows.size());
        Row row = rows.get(at);
        double none = Double.NaN;
        switch (random.nextInt(9)) {
            case 0 -> rows.set(at, new Row(row.sbo(), row.csb(), none, row.offset2()));
            case 1 -> rows.set(at, new Row(row.sbo(), row.csb(), none, none));
            case 2 -> rows.set(at, new Row(row.sbo(), row.csb(), -row.offset1(), row.offset2()));
            case 3 ->
                    rows.set(
                            at,
                            new Row(
                                    row.sbo(),
                                    row.csb(),
                                    step(60 * random.nextGaussian()),
                                    row.offset2()));
            case 4 -> rows.set(at, new Row(row.csb(), row.sbo(), row.offset1(), row.offset2()));
            case 5 -> rows.set(at, new Row(row.sbo(), row.csb(), row.offset2(), row.offset1()));
            case 6 -> rows.add(at, row);
            case 7 -> rows.set(at, new Row(none, row.csb(), row.offset1(), row.offset2()));
            default -> rows.add(new Row(row.sbo(), row.csb() + 1 + random.nextInt(3), none, none));
        }
    }
}
