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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A check is closed only where course line and width of both transmitters were read on its day and
 * keep their tolerances: FAA Order 8200.1, ch. 15 (from memory) and the station's initial ones.
 */
@Tag("long")
class PeriodicCheckUnderFireTest {
    private static final Map<String, Double> MOST_MICROAMPS =
            Map.of("I", 15.0, "II", 11.0, "III", 9.0);
    private static final double MOST_WIDTH = 17;
    private static final double ROUNDING = 1e-7;

    private final Fire fire = Fire.at("record/periodic-check");

    @Test
    void closesNoCheckThatIsOpenOrBeyond() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        return new Fire.Round(drawn(random), PeriodicCheckUnderFireTest::objection);
    }

    private Filled drawn(Random random) {
        double[] line = {0.003 * random.nextGaussian(), 0.003 * random.nextGaussian()};
        double[] width = {uniform(random, 3.5, 5), uniform(random, 3.5, 5)};
        double drift = any(random, 0.0, 0.0, 0.0005, 0.002);
        double widening = any(random, 0.0, 0.0, 0.02, 0.06);
        double step = random.nextInt(4) == 0 ? 0.008 : 0;
        int transmitters = random.nextInt(10) == 0 ? 1 : 2;
        int checks = 1 + random.nextInt(9);
        List<List<String>> rows = new ArrayList<>();
        for (int check = 0; check < checks; check++) {
            for (int i = 0; i < transmitters; i++) {
                LocalDate day = LocalDate.of(2022, 5, 10).plusDays(182L * check + 2L * i);
                double reads =
                        line[i]
                                + drift * check
                                + (2 * check > checks ? step : 0)
                                + 0.0005 * random.nextGaussian();
                double wide = width[i] + widening * check + 0.01 * random.nextGaussian();
                rows.add(row(day.toString(), "" + (i + 1), tone(reads, 0.001), number(wide, 2)));
            }
        }
        Filled filled =
                Filled.none(fire.page())
                        .with("category", any(random, "I", "II", "III"))
                        .with("referenceAlignment1", tone(line[0], 0.001))
                        .with("referenceAlignment2", tone(line[1], 0.001))
                        .with("referenceWidth1", number(width[0], 2))
                        .with("referenceWidth2", number(width[1], 2))
                        .with("initialAlignment", "4 ‰")
                        .with("initialWidth", "5")
                        .with("alignmentUncertainty", "0.5 ‰")
                        .with("widthUncertainty", "0.02");
        if (random.nextBoolean()) {
            filled = filled.with("changeDate", "2024-01-01");
        }
        return filled.withReadings("history", Rows.withMishaps(rows, random));
    }

    private static String objection(Decided decided) {
        Action action = decided.action("advice").orElse(null);
        if (action == null) {
            return decided.refuses() ? "" : "neither advice nor refusal";
        }
        Rows rows = Rows.of(decided.filled(), "history");
        String category = (String) decided.filled().entries().get("category").value();
        boolean open = false;
        boolean beyondInitial = false;
        boolean beyond = false;
        for (String transmitter : new String[] {"1", "2"}) {
            double reads = today(rows, transmitter, "course line");
            double wide = today(rows, transmitter, "width");
            open |= Double.isNaN(reads) || Double.isNaN(wide);
            double change = Math.abs(reads - field(decided, "referenceAlignment" + transmitter));
            double off = Math.abs(wide / field(decided, "referenceWidth" + transmitter) - 1) * 100;
            beyondInitial |= change > field(decided, "initialAlignment") + ROUNDING;
            beyondInitial |= off > field(decided, "initialWidth") + ROUNDING;
            double microamps = Math.abs(reads) * 150 / 0.155;
            beyond |= microamps > MOST_MICROAMPS.get(category) + ROUNDING;
            beyond |= off > MOST_WIDTH + ROUNDING;
        }
        Action.State right =
                beyond
                        ? Action.State.HELD
                        : open || beyondInitial || nameless(rows)
                                ? Action.State.TO_DO
                                : Action.State.FINISHED;
        return action.state() == right
                ? ""
                : "beyond %s, open %s, beyond initial %s, yet: %s"
                        .formatted(beyond, open, beyondInitial, action);
    }

    /** A value that cannot be put down to a day or a transmitter may be the one that matters. */
    private static boolean nameless(Rows rows) {
        for (int i = 0; i < rows.rows(); i++) {
            boolean named =
                    !rows.word(i, "date").isEmpty() && !rows.word(i, "transmitter").isEmpty();
            boolean blank =
                    Double.isNaN(rows.number(i, "course line"))
                            && Double.isNaN(rows.number(i, "width"));
            if (!named && !blank) {
                return true;
            }
        }
        return false;
    }

    /** The latest value of up to a week before the last date; the lower row of one day. */
    private static double today(Rows rows, String transmitter, String column) {
        LocalDate last = LocalDate.MIN;
        for (int i = 0; i < rows.rows(); i++) {
            LocalDate day = day(rows, i);
            last = day.isAfter(last) ? day : last;
        }
        LocalDate of = LocalDate.MIN;
        double value = Double.NaN;
        for (int i = 0; i < rows.rows(); i++) {
            boolean its = rows.word(i, "transmitter").equals(transmitter);
            double read = rows.number(i, column);
            LocalDate day = day(rows, i);
            if (its && !Double.isNaN(read) && !day.isBefore(of) && !day.equals(LocalDate.MIN)) {
                of = day;
                value = read;
            }
        }
        return of.equals(LocalDate.MIN) || of.isBefore(last.minusDays(7)) ? Double.NaN : value;
    }

    private static LocalDate day(Rows rows, int row) {
        String typed = rows.word(row, "date");
        return typed.isEmpty() ? LocalDate.MIN : LocalDate.parse(typed);
    }
}
