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
 * Pairs made up from d = −K tan((δ − βx)/2), read in steps, cut at random or far too much, and
 * typed with what goes wrong. The readings alone say what must not be cut.
 */
@Tag("long")
class PairNullUnderFireTest {
    private static final double STEP = 0.001;
    private static final double TARGET = 0.001;
    private static final double SIXTEENTH = 25.4 / 16;

    /** What was typed: totals in inches, readings as ratios, NaN for a blank. */
    private record Row(double on150, double on90, double reading) {}

    private record Typed(int side, double carrier, double with, List<Row> rows, boolean asRead) {
        /** The last row that was read, less what the carrier alone reads. */
        double lastRead() {
            double last = Double.NaN;
            for (Row row : rows) {
                last = Double.isNaN(row.reading()) ? last : row.reading();
            }
            return last - carrier;
        }

        boolean cutSinceRead() {
            Row read = null;
            for (Row row : rows) {
                read = Double.isNaN(row.reading()) ? read : row;
            }
            Row last = rows.get(rows.size() - 1);
            return read != null && (last.on150() > read.on150() || last.on90() > read.on90());
        }

        boolean totalsHold() {
            for (int i = 0; i < rows.size(); i++) {
                Row row = rows.get(i);
                boolean blank = Double.isNaN(row.on150() + row.on90());
                boolean shrinks =
                        i > 0
                                && (row.on150() < rows.get(i - 1).on150()
                                        || row.on90() < rows.get(i - 1).on90());
                if (blank || shrinks) {
                    return false;
                }
            }
            return rows.get(0).on150() == 0 && rows.get(0).on90() == 0;
        }
    }

    @Test
    void ordersNoCutThatTheReadingsForbid() {
        Fire fire = Fire.at("monitor/pair-null");
        List<String> disagreements =
                fire.rounds(
                        Fire.SETS,
                        random -> {
                            Typed typed = draw(random);
                            return new Fire.Round(
                                    filled(fire, typed), decided -> objection(typed, decided));
                        });
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private static String objection(Typed typed, Decided decided) {
        Action action = decided.action("advice").orElse(null);
        double moved = typed.with() - typed.rows().get(0).reading();
        if (!(Math.abs(moved) > STEP * 1.0001) || !typed.totalsHold()) {
            return action == null ? "" : "nothing may be advised: " + action;
        }
        if (moved * typed.side() > 0) {
            return action == null || action.state() == Action.State.HELD
                    ? ""
                    : "the adapter moved the reading the wrong way: " + action;
        }
        if (action == null) {
            return decided.refuses() ? "" : "neither advice nor refusal";
        }
        if (typed.asRead() && action.state() == Action.State.HELD) {
            return "held although nothing is wrong: " + action;
        }
        if (typed.cutSinceRead()) {
            return action.hasAmount() || action.state() == Action.State.FINISHED
                    ? "cut since it was read: " + action
                    : "";
        }
        double off = typed.lastRead();
        if (action.words().contains("within the target") && Math.abs(off) > TARGET + 5 * STEP) {
            return "reads " + off + " off its null: " + action;
        }
        if (!action.hasAmount()) {
            return "";
        }
        // A pair reads the tone of the side that is not too long.
        String side = off < 0 ? "150 Hz side" : "90 Hz side";
        if (Math.abs(off) > 5 * STEP && !action.on().equals(side)) {
            return "reads " + off + " off its null, so the " + side + " is cut: " + action;
        }
        double left = decided.number("whole").orElseThrow();
        double steps = action.amount() / SIXTEENTH;
        if (action.amount() > left * 1.000001 || Math.abs(steps - Math.rint(steps)) > 1e-6) {
            return "cuts " + action.amount() + " of " + left;
        }
        return decided.number("nextCutMillimetres").orElse(0) == action.amount()
                ? ""
                : "the figure shown is not the action's";
    }

    private static Filled filled(Fire fire, Typed typed) {
        List<List<String>> rows = new ArrayList<>();
        for (Row row : typed.rows()) {
            rows.add(List.of(inches(row.on150()), inches(row.on90()), ddm(row.reading())));
        }
        return Filled.none(fire.page())
                .with("pair", "elements 3 and 8")
                .with("linePerInch", "157.1 °/m")
                .with("linePerInchUncertainty", "3 °/m")
                .with("resolution", "1 ‰")
                .with("smallestCut", "1/16")
                .with("carrierDdm", ddm(typed.carrier()))
                .with("target", "1 ‰")
                .with("firstFraction", "0.8")
                .with("adapterSide", typed.side() > 0 ? "150" : "90")
                .with("adapterLength", "20")
                .with("adapterUncertainty", "0.5")
                .with("withAdapter", ddm(typed.with()))
                .withReadings("cuts", rows);
    }

    private static String inches(double length) {
        return Double.isNaN(length) ? "" : String.format(Locale.ROOT, "%.4f", length);
    }

    private static String ddm(double reading) {
        return Double.isNaN(reading)
                ? ""
                : String.format(
                        Locale.ROOT,
                        "%d in the %s",
                        Math.round(Math.abs(1000 * reading)),
                        reading < 0 ? "90" : "150");
    }

    private static Typed draw(Random random) {
        double sensitivity =
                (0.15 + 0.3 * random.nextDouble()) * (random.nextInt(12) == 0 ? -1 : 1);
        double excess = 45 * (2 * random.nextDouble() - 1);
        double perInch = (157.1 + 3 * random.nextGaussian()) * 0.0254;
        double carrier = Math.round(3 * random.nextGaussian()) * STEP;
        int side = random.nextBoolean() ? 1 : -1;
        double adapter = random.nextInt(15) == 0 ? 0 : side * (20 + 0.5 * random.nextGaussian());
        double with = read(carrier, sensitivity, excess + adapter);
        List<Row> rows = new ArrayList<>();
        double on150 = 0;
        double on90 = 0;
        int cuts = random.nextInt(5);
        for (int i = 0; i <= cuts; i++) {
            double now = excess - perInch * (on150 - on90);
            rows.add(new Row(on150, on90, read(carrier, sensitivity, now)));
            // Now and then past the null by as much as there was.
            double share = random.nextInt(6) == 0 ? 2 : 0.3 + 0.7 * random.nextDouble();
            double cut = Math.round(16 * share * Math.abs(now) / perInch) / 16.0;
            on150 += now > 0 ? cut : 0;
            on90 += now > 0 ? 0 : cut;
        }
        int slips = random.nextInt(3);
        for (int i = 0; i < slips; i++) {
            slip(rows, random);
        }
        boolean turned = random.nextInt(15) == 0;
        return new Typed(side, carrier, turned ? -with : with, rows, slips == 0 && !turned);
    }

    private static double read(double carrier, double sensitivity, double excess) {
        double ddm = carrier - sensitivity * Math.tan(Math.toRadians(excess) / 2);
        return Math.max(-0.999, Math.min(0.999, STEP * Math.rint(ddm / STEP)));
    }

    /** A blank, the other tone, an outlier, sides exchanged, a row pasted twice, a blank total. */
    private static void slip(List<Row> rows, Random random) {
        int at = random.nextInt(rows.size());
        Row row = rows.get(at);
        switch (random.nextInt(7)) {
            case 0 -> rows.set(at, new Row(row.on150(), row.on90(), Double.NaN));
            case 1 -> rows.set(at, new Row(row.on150(), row.on90(), -row.reading()));
            case 2 ->
                    rows.set(
                            at,
                            new Row(
                                    row.on150(),
                                    row.on90(),
                                    STEP * Math.rint(200 * random.nextGaussian())));
            case 3 -> rows.set(at, new Row(row.on90(), row.on150(), row.reading()));
            case 4 -> rows.add(at, row);
            case 5 -> rows.set(at, new Row(Double.NaN, row.on90(), row.reading()));
            default ->
                    rows.add(new Row(row.on150() + 1 + random.nextInt(3), row.on90(), Double.NaN));
        }
    }
}
