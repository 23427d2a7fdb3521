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
 * Sweeps made up from a straight course that levels off, with marks reversed or lost, a sector that
 * sags, sides exchanged, readings pasted twice. Whether "met" may be said follows from the readings
 * as they were typed: ICAO Annex 10 Vol I, 3.1.3.7 (clearance of 0.180 from where the course line
 * reaches it to 10°, 0.155 from there to 35°), read off mark by mark.
 */
@Tag("long")
class GroundCheckUnderFireTest {
    private static final double HALF_WIDTH = 2;
    private static final double INNER = 0.180;
    private static final double OUTER = 0.155;

    /** A slip of a tone that is smaller cannot be told from a reading near the course line. */
    private static final double SLIP = 0.020;

    private static final double[] MARKS = {
        -35, -30, -25, -20, -15, -10, -8, -6, -5, -4, -3, -2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2, 3,
        4, 5, 6, 8, 10, 15, 20, 25, 30, 35
    };

    @Test
    void saysMetOnlyWhereEveryReadingMeetsItsLimit() {
        Fire fire = Fire.at("sweep/ground-check");
        List<String> disagreements =
                fire.rounds(
                        Fire.SETS,
                        random -> {
                            double[][] read = {sweep(random), sweep(random)};
                            slip(read, random);
                            return new Fire.Round(
                                    filled(fire, read), decided -> objection(read, decided));
                        });
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private static String objection(double[][] read, Decided decided) {
        if (decided.refuses()) {
            return "";
        }
        for (int i = 0; i < 2; i++) {
            String headline = decided.words("verdict" + (i + 1));
            String broken = broken(read[i]);
            if (headline.startsWith("clearance met") && !broken.isEmpty()) {
                return "transmitter %d: %s, but %s".formatted(i + 1, headline, broken);
            }
            if (headline.equals("clearance met at every mark") && missing(read[i]) > 0) {
                return "transmitter %d: every mark, but one is missing".formatted(i + 1);
            }
            if (headline.startsWith("clearance not met") && !anyBelow(read[i])) {
                return "transmitter %d: %s, but every reading is above".formatted(i + 1, headline);
            }
        }
        Action next = decided.action("next").orElse(null);
        if (next == null) {
            return "it does not say what is next";
        }
        return next.state() == Action.State.FINISHED
                        && !(broken(read[0]) + broken(read[1])).isEmpty()
                ? "finished, but " + broken(read[0]) + broken(read[1])
                : "";
    }

    /** A reading that breaks its limit, or has the wrong tone by more than a slip; "" if none. */
    private static String broken(double[] read) {
        double[] course = course(read);
        for (int i = 0; i < MARKS.length; i++) {
            double side = Math.signum(MARKS[i]);
            double out = Math.abs(MARKS[i]);
            double clearance = side * read[i];
            double begins =
                    course.length == 0
                            ? Double.POSITIVE_INFINITY
                            : side * course[0] + INNER / course[1];
            boolean low =
                    out > 10 && clearance < OUTER
                            || out <= 10 && out >= begins && clearance < INNER;
            // Within the sector, a tone that the marks on both sides of it contradict.
            boolean turned = out >= 1 && clearance < -SLIP && opposed(read, i);
            if (!Double.isNaN(read[i]) && (low || turned)) {
                return MARKS[i] + "° reads " + read[i];
            }
        }
        return "";
    }

    private static boolean opposed(double[] read, int i) {
        return i > 0
                && i < MARKS.length - 1
                && Math.signum(read[i - 1]) == -Math.signum(read[i])
                && Math.signum(read[i + 1]) == -Math.signum(read[i])
                && Math.abs(read[i - 1] + read[i + 1] - 2 * read[i])
                        > 6 * Math.abs(read[i - 1] + read[i + 1] + 2 * read[i]);
    }

    /** Centre (°) and slope (DDM/°) by least squares over the sector; none if it has no slope. */
    private static double[] course(double[] read) {
        double n = 0;
        double x = 0;
        double y = 0;
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < MARKS.length; i++) {
            if (Math.abs(MARKS[i]) <= HALF_WIDTH && !Double.isNaN(read[i])) {
                n++;
                x += MARKS[i];
                y += read[i];
                xx += MARKS[i] * MARKS[i];
                xy += MARKS[i] * read[i];
            }
        }
        double slope = (n * xy - x * y) / (n * xx - x * x);
        double centre = (x - y / slope) / n;
        return n < 3 || !(slope > 0) ? new double[0] : new double[] {centre, slope};
    }

    private static boolean anyBelow(double[] read) {
        for (int i = 0; i < MARKS.length; i++) {
            if (Math.signum(MARKS[i]) * read[i] < (Math.abs(MARKS[i]) > 10 ? OUTER : INNER)
                    && Math.abs(MARKS[i]) > 0.6 * HALF_WIDTH) {
                return true;
            }
        }
        return false;
    }

    private static long missing(double[] read) {
        return java.util.Arrays.stream(read).filter(Double::isNaN).count();
    }

    private static double[] sweep(Random random) {
        double slope = 0.155 / HALF_WIDTH * (0.85 + 0.3 * random.nextDouble());
        double centre = 0.1 * random.nextGaussian();
        double level = 0.2 + 0.15 * random.nextDouble();
        double[] read = new double[MARKS.length];
        for (int i = 0; i < MARKS.length; i++) {
            double straight = slope * (MARKS[i] - centre);
            double ddm =
                    Math.max(-level, Math.min(level, straight)) + 0.001 * random.nextGaussian();
            read[i] = Math.rint(1000 * ddm) / 1000;
        }
        return read;
    }

    private static void slip(double[][] read, Random random) {
        for (int slips = random.nextInt(4); slips > 0; slips--) {
            double[] one = read[random.nextInt(2)];
            int at = random.nextInt(MARKS.length);
            int to = Math.min(MARKS.length - 1, at + random.nextInt(4));
            switch (random.nextInt(8)) {
                case 0 -> turn(one, at, at);
                case 1 -> turn(one, at, to);
                case 2 -> scale(one, at, to, 0.9 * random.nextDouble());
                case 3 -> scale(one, at, to, Double.NaN);
                case 4 -> turn(one, 0, MARKS.length - 1);
                case 5 -> one[to] = one[at];
                case 6 -> one[at] = Math.rint(300 * random.nextGaussian()) / 1000;
                default -> {
                    double[] kept = read[0];
                    read[0] = read[1];
                    read[1] = random.nextInt(4) == 0 ? new double[MARKS.length] : kept;
                    if (read[1] != kept) {
                        java.util.Arrays.fill(read[1], Double.NaN);
                    }
                }
            }
        }
    }

    private static void turn(double[] read, int from, int to) {
        scale(read, from, to, -1);
    }

    private static void scale(double[] read, int from, int to, double by) {
        for (int i = from; i <= to; i++) {
            read[i] = Math.rint(1000 * by * read[i]) / 1000;
            read[i] = Double.isNaN(by) ? Double.NaN : read[i];
        }
    }

    private static Filled filled(Fire fire, double[][] read) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < MARKS.length; i++) {
            rows.add(List.of(String.valueOf(MARKS[i]), ddm(read[0][i]), ddm(read[1][i]), ""));
        }
        return Filled.none(fire.page())
                .with("arrayFile", "nine-uneven")
                .with("markDistance", "300")
                .with("datumDistance", "3060")
                .with("nominalWidth", "4")
                .with("category", "I")
                .with("rule", "ICAO")
                .with("readingStep", "0.001")
                .with("differenceAllowed", "0.025")
                .with("betweenAllowed", "0.025")
                .withReadings("sweep", rows);
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
}
