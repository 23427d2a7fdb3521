package halfwidth.localizer.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.util.Arrays;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class LineFitTest {
    /** NIST Statistical Reference Datasets, Norris: y then x of 36 points. */
    private static final double[][] NORRIS = {
        {0.1, 0.2}, {338.8, 337.4}, {118.1, 118.2}, {888.0, 884.6}, {9.2, 10.1}, {228.1, 226.5},
        {668.5, 666.3}, {998.5, 996.3}, {449.1, 448.6}, {778.9, 777.0}, {559.2, 558.2}, {0.3, 0.4},
        {0.1, 0.6}, {778.1, 775.5}, {668.8, 666.9}, {339.3, 338.0}, {448.9, 447.5}, {10.8, 11.6},
        {557.7, 556.0}, {228.3, 228.1}, {998.0, 995.8}, {888.8, 887.6}, {119.6, 120.2}, {0.3, 0.3},
        {0.6, 0.3}, {557.6, 556.8}, {339.3, 339.1}, {888.0, 887.2}, {998.5, 999.0}, {778.9, 779.0},
        {10.2, 11.1}, {117.6, 118.3}, {228.9, 229.2}, {668.4, 669.1}, {449.2, 448.9}, {0.2, 0.5}
    };

    private static double[] norris(int column) {
        return Arrays.stream(NORRIS).mapToDouble(row -> row[column]).toArray();
    }

    @Test
    void givesTheCertifiedValuesOfNorris() {
        LineFit fit = LineFit.of(norris(1), norris(0));

        // Certified to 15 digits; double arithmetic should keep 12 on this easy set.
        assertEquals(-0.262323073774029, fit.intercept().value(), 1e-12);
        assertEquals(0.232818234301152, fit.intercept().standardUncertainty(), 1e-12);
        assertEquals(1.00211681802045, fit.slope().value(), 1e-13);
        assertEquals(0.429796848199937e-3, fit.slope().standardUncertainty(), 1e-15);
        assertEquals(0.884796396144373, fit.residualDeviation(), 1e-12);
        assertEquals(0.999993745883712, fit.rSquared(), 1e-14);
        assertEquals(34, fit.degreesOfFreedom());
    }

    @Test
    void givesTheCalibrationCurveOfTheGuide() {
        // JCGM 100:2008, table H.6 and H.3.3 (from memory): thermometer corrections b_k (°C) at
        // t_k − 20 °C; y₁ = −0.1712 (0.0029), y₂ = 0.00218 (0.00067), r = −0.930, s = 0.0035, and
        // at 30 °C −0.1494 (0.0041). Tolerances: the last digit printed.
        double[] t = {1.521, 2.012, 2.512, 3.003, 3.507, 3.999, 4.513, 5.002, 5.503, 6.010, 6.511};
        double[] b = {
            -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
        };

        LineFit fit = LineFit.of(t, b);

        assertEquals(-0.1712, fit.intercept().value(), 5e-5);
        assertEquals(0.0029, fit.intercept().standardUncertainty(), 5e-5);
        assertEquals(0.00218, fit.slope().value(), 5e-6);
        assertEquals(0.00067, fit.slope().standardUncertainty(), 5e-6);
        assertEquals(0.0035, fit.residualDeviation(), 5e-5);
        assertEquals(
                -0.930,
                fit.covariance()
                        / (fit.slope().standardUncertainty()
                                * fit.intercept().standardUncertainty()),
                5e-4);
        assertEquals(-0.1494, fit.at(10).value(), 5e-5);
        assertEquals(0.0041, fit.at(10).standardUncertainty(), 5e-5);
    }

    @Test
    void countsAReadingOfHalfTheUncertaintyAsFour() {
        double[] x = {0, 1, 2, 3};
        double[] y = {0.1, 0.8, 2.3, 2.9};
        LineFit weighted = LineFit.weighted(x, y, new double[] {1, 1, 0.5, 1});

        // The same point entered four times at the larger uncertainty.
        LineFit repeated =
                LineFit.weighted(
                        new double[] {0, 1, 2, 2, 2, 2, 3},
                        new double[] {0.1, 0.8, 2.3, 2.3, 2.3, 2.3, 2.9},
                        new double[] {1, 1, 1, 1, 1, 1, 1});

        assertEquals(repeated.slope().value(), weighted.slope().value(), 1e-14);
        assertEquals(
                repeated.slope().standardUncertainty(),
                weighted.slope().standardUncertainty(),
                1e-14);
        assertEquals(
                repeated.intercept().standardUncertainty(),
                weighted.intercept().standardUncertainty(),
                1e-14);
    }

    @Test
    void fitsThroughTheOrigin() {
        double[] x = {1, 2, 3};
        double[] y = {2.1, 3.9, 6.2};
        LineFit fit = LineFit.throughOrigin(x, y);

        // b = Σxy/Σx², s² = Σ(y − bx)²/(n − 1), u(b) = s/√Σx².
        double b = (2.1 + 7.8 + 18.6) / 14;
        double s = Math.sqrt((sq(2.1 - b) + sq(3.9 - 2 * b) + sq(6.2 - 3 * b)) / 2);
        assertEquals(b, fit.slope().value(), 1e-14);
        assertEquals(s / Math.sqrt(14), fit.slope().standardUncertainty(), 1e-14);
        assertEquals(0, fit.intercept().standardUncertainty());
        // SimpleRegression without intercept counts the degrees of freedom likewise.
        SimpleRegression other = new SimpleRegression(false);
        for (int i = 0; i < x.length; i++) {
            other.addData(x[i], y[i]);
        }
        assertEquals(other.getSlope(), fit.slope().value(), 1e-14);
    }

    private static double sq(double value) {
        return value * value;
    }

    @Law
    void agreesWithAnotherImplementation(Draw draw) {
        double a = draw.between(-1e3, 1e3);
        double b = draw.between(-1e3, 1e3);
        double c = draw.between(-1e3, 1e3);
        double[] x = {1, 2, 4, 7};
        double[] y = {a, b, c, a - b};
        SimpleRegression other = new SimpleRegression();
        for (int i = 0; i < x.length; i++) {
            other.addData(x[i], y[i]);
        }

        LineFit fit = LineFit.of(x, y);

        double scale = 1e-10 * (1 + Math.abs(a) + Math.abs(b) + Math.abs(c));
        assertEquals(other.getSlope(), fit.slope().value(), scale);
        assertEquals(other.getIntercept(), fit.intercept().value(), scale);
        assertEquals(other.getSlopeStdErr(), fit.slope().standardUncertainty(), 1e3 * scale);
    }

    @Law
    void isLeastUncertainAtTheMeanOfX(Draw draw) {
        double place = draw.between(-100, 100);
        LineFit fit = LineFit.of(new double[] {1, 2, 4, 5}, new double[] {1, 3, 2, 5});

        double atMean = fit.at(3).standardUncertainty();
        assertEquals(fit.residualDeviation() / 2, atMean, 1e-12);
        assertEquals(
                Math.max(atMean, fit.at(place).standardUncertainty()),
                fit.at(place).standardUncertainty());
    }

    @Test
    void saysWhereTheLineReachesAValue() {
        LineFit fit = LineFit.of(new double[] {0, 1, 2, 3}, new double[] {1, 3.1, 4.9, 7});

        Estimate place = fit.reaches(4);
        assertEquals(4, fit.at(place.value()).value(), 1e-12);
        assertEquals(
                fit.at(place.value()).standardUncertainty() / fit.slope().value(),
                place.standardUncertainty(),
                1e-12);
    }

    @Test
    void addsTheScatterOfOneMoreReading() {
        LineFit fit = LineFit.of(new double[] {0, 1, 2, 3}, new double[] {1, 3.1, 4.9, 7});

        assertEquals(
                Math.hypot(fit.at(5).standardUncertainty(), 0.2),
                fit.newReadingAt(5, 0.2).standardUncertainty(),
                1e-15);
    }

    @Test
    void refusesWhatMakesNoLine() {
        double[] two = {1, 2};
        double[] same = {4, 4, 4};
        double[] three = {1, 2, 3};

        assertThrows(IllegalArgumentException.class, () -> LineFit.of(two, two));
        assertThrows(IllegalArgumentException.class, () -> LineFit.of(same, three));
        assertThrows(IllegalArgumentException.class, () -> LineFit.of(three, two));
        assertThrows(
                IllegalArgumentException.class,
                () -> LineFit.of(three, new double[] {1, Double.NaN, 3}));
        assertThrows(
                IllegalArgumentException.class,
                () -> LineFit.weighted(three, three, new double[] {1, 0, 1}));
        assertThrows(
                IllegalArgumentException.class, () -> LineFit.throughOrigin(new double[3], three));
        assertThrows(IllegalArgumentException.class, () -> LineFit.of(three, same).reaches(5));
    }
}
