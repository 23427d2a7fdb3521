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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeSet;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Two sweeps compared row by row. The clearances are those of ICAO Annex 10 Vol I, 3.1.3.7 (0.180
 * from where the course line reaches it to 10°, 0.155 from there to 35°), each side on its own.
 */
@Tag("long")
class ComparisonUnderFireTest {
    private static final double INNER = 0.180;
    private static final double OUTER = 0.155;
    private static final double ROUNDING = 1e-9;
    private static final Map<String, Double> LINE_METRES = Map.of("I", 10.5, "II", 7.5, "III", 3.0);
    private static final double[] MARKS = {
        0, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 15, 20, 25, 30, 35
    };

    /** DDM at the marks of one side, in half-width points of 2°. */
    private static final PolynomialSplineFunction CURVE =
            new LinearInterpolator()
                    .interpolate(
                            new double[] {0, 4, 5, 6, 8, 10, 15, 20, 25, 30, 40},
                            new double[] {
                                0, 0.31, 0.374, 0.32, 0.235, 0.24, 0.225, 0.21, 0.205, 0.207, 0.3
                            });

    private final Fire fire = Fire.at("sweep/comparison");

    @Test
    void passesNoDifferenceAndNoClearanceThatBreaksItsLimit() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        return new Fire.Round(drawn(random), ComparisonUnderFireTest::objection);
    }

    private Filled drawn(Random random) {
        double size = any(random, 0.3, 1.0, 3.0);
        double[] centre = {
            0.06 * size * random.nextGaussian(), 0.06 * size * random.nextGaussian()
        };
        double[] scale = {
            1 + 0.03 * size * random.nextGaussian(), 1 + 0.03 * size * random.nextGaussian()
        };
        double sag = random.nextInt(4) == 0 ? uniform(random, 0.6, 0.9) : 1;
        boolean predicted = random.nextInt(8) == 0;
        double lostTo = any(random, 0.0, 0.0, 0.0, 0.0, 0.0, 10.0, 40.0);
        List<List<String>> rows = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            for (double mark : MARKS) {
                boolean lost = side > 0 && mark > 2 && mark <= lostTo;
                if ((mark > 0 || side > 0) && !lost) {
                    double at = side * mark;
                    double before = ddm(at, centre[0], scale[0], random);
                    double after = ddm(at, centre[1], scale[1], random);
                    after *= mark > 4 && side < 0 ? sag : 1;
                    rows.add(
                            row(
                                    number(at, 1),
                                    predicted ? "" : tone(before, 0.001),
                                    tone(after, 0.001)));
                }
            }
        }
        Filled filled =
                Filled.none(fire.page())
                        .with("arrayFile", predicted ? "ten-one-carrier" : "none")
                        .with("markDistance", "300")
                        .with("datumDistance", "3060")
                        .with("nominalWidth", "4")
                        .with("category", any(random, "I", "II", "III"))
                        .with("readingUncertainty", "0.001")
                        .with("azimuthTolerance", "0.2")
                        .with("differenceAllowed", any(random, "0.012", "0.005"));
        if (random.nextInt(4) > 0) {
            filled =
                    filled.with("earlierDate", any(random, "2023-05-10", "2025-06-03"))
                            .with("laterDate", any(random, "2025-06-03", "2023-05-11"));
        }
        return filled.withReadings("sweeps", Rows.withMishaps(rows, random));
    }

    private static double ddm(double azimuth, double centre, double scale, Random random) {
        double from = azimuth - centre;
        return Math.signum(from) * CURVE.value(Math.min(39, Math.abs(from) * scale))
                + 0.0007 * random.nextGaussian();
    }

    private static String objection(Decided decided) {
        Rows rows = Rows.of(decided.filled(), "sweeps");
        boolean predicted = !decided.filled().entries().get("arrayFile").typed().equals("none");
        TreeSet<Double> azimuths = new TreeSet<>();
        double worst = 0;
        for (int i = 0; i < rows.rows(); i++) {
            double azimuth = rows.number(i, "azimuth");
            double difference = rows.number(i, "later") - rows.number(i, "earlier");
            if (!Double.isNaN(azimuth) && !azimuths.add(azimuth)) {
                // Which of two readings at one mark counts is not for this rule to say.
                return "";
            }
            if (!Double.isNaN(azimuth + difference)) {
                worst = Math.max(worst, Math.abs(difference));
            }
        }
        OptionalDouble shown = decided.number("worst");
        if (!predicted && shown.isPresent() && Math.abs(shown.getAsDouble()) < worst - ROUNDING) {
            return "rows differ by " + worst + ", shown as " + shown;
        }
        boolean beyond = worst > field(decided, "differenceAllowed") + ROUNDING;
        if (!predicted && beyond && decided.words("beyond").equals("none")) {
            return "rows differ by " + worst + ", none is named";
        }
        SimpleRegression later = course(decided, rows, "later");
        if (later.getN() < 3 || !(later.getSlope() > 0)) {
            return decided.number("shift").isPresent() ? "a shift without a course line" : "";
        }
        String low = clearance(decided, rows, later);
        return low.isEmpty() ? line(decided, rows, later, predicted) : low;
    }

    private static String clearance(Decided decided, Rows rows, SimpleRegression course) {
        double centre = -course.getIntercept() / course.getSlope();
        double reached = INNER / course.getSlope();
        for (int side : new int[] {-1, 1}) {
            int inner = 0;
            int outer = 0;
            for (int i = 0; i < rows.rows(); i++) {
                double out = side * rows.number(i, "azimuth");
                double ddm = side * rows.number(i, "later");
                boolean isInner = out <= 10 && out >= side * centre + reached;
                boolean isOuter = out > 10 && out <= 35;
                inner += isInner && !Double.isNaN(ddm) ? 1 : 0;
                outer += isOuter && !Double.isNaN(ddm) ? 1 : 0;
                if (isInner && ddm < INNER && met(decided, "innerLater")
                        || isOuter && ddm < OUTER && met(decided, "outerLater")) {
                    return side * out + "° reads " + side * ddm + ", met";
                }
            }
            if (inner == 0 && met(decided, "innerLater")
                    || outer == 0 && met(decided, "outerLater")) {
                return "a side without any reading, met";
            }
        }
        return "";
    }

    private static boolean met(Decided decided, String result) {
        return decided.answer(result).verdict() == Verdict.MET;
    }

    private static String line(
            Decided decided, Rows rows, SimpleRegression later, boolean predicted) {
        String outlook = decided.words("shiftOutlook");
        double centre = -later.getIntercept() / later.getSlope();
        double metres = field(decided, "datumDistance") * Math.tan(Math.toRadians(centre));
        String category = (String) decided.filled().entries().get("category").value();
        if (outlook.startsWith("limit after") && Math.abs(metres) > LINE_METRES.get(category)) {
            return "the course line is " + metres + " m off now, yet: " + outlook;
        }
        double width = 100 * (2 * 0.155 / later.getSlope() / field(decided, "nominalWidth") - 1);
        String wide = decided.words("widthOutlook");
        if (wide.startsWith("limit after") && Math.abs(width) > 17) {
            return "the width is " + width + " % off now, yet: " + wide;
        }
        OptionalDouble shift = decided.number("shift");
        if (predicted || shift.isEmpty()) {
            return "";
        }
        SimpleRegression earlier = course(decided, rows, "earlier");
        double before = -earlier.getIntercept() / earlier.getSlope();
        double moved = metres - field(decided, "datumDistance") * Math.tan(Math.toRadians(before));
        return Math.abs(moved - shift.getAsDouble()) < 1e-6
                ? ""
                : "moved " + moved + " m, shown " + shift.getAsDouble();
    }

    private static SimpleRegression course(Decided decided, Rows rows, String column) {
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < rows.rows(); i++) {
            double azimuth = rows.number(i, "azimuth");
            double ddm = rows.number(i, column);
            if (Math.abs(azimuth) <= field(decided, "nominalWidth") / 2 && !Double.isNaN(ddm)) {
                line.addData(azimuth, ddm);
            }
        }
        return line;
    }
}
