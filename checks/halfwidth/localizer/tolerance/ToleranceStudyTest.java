package halfwidth.localizer.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.Range;
import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.array.Current;
import halfwidth.localizer.array.ElementPattern;
import halfwidth.localizer.uncertainty.Draws;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class ToleranceStudyTest {
    private static final double WAVELENGTH = 299_792_458 / 110e6;
    private static final Draws DRAWS = new Draws(20_000, 42);

    /** Standard deviations from 20 000 draws scatter by 1/√(2 · 20 000) = 0.5 %: six of them. */
    private static final double SAMPLING = 0.03;

    private static final ArrayModel FOURTEEN =
            ArrayFile.read(Path.of("datasets", "arrays", "fourteen-two-carrier.csv"));

    /** All CSB in the middle, all SBO in a pair: DDM = 4 b sin(k x sin θ), b = 0.1, x = 0.5 λ. */
    private static final ArrayModel THREE =
            new ArrayModel(
                    "three",
                    List.of(-WAVELENGTH / 2, 0.0, WAVELENGTH / 2),
                    ElementPattern.ISOTROPIC,
                    List.of(
                            new Carrier(
                                    110e6,
                                    0.2,
                                    List.of(Current.NONE, new Current(1, 0), Current.NONE),
                                    List.of(
                                            new Current(0.1, 90),
                                            Current.NONE,
                                            new Current(0.1, -90)))));

    /**
     * To the first order sin(ψ + φ₃ − φ₂) + sin(ψ − φ₁ + φ₂) = 0 at ψ = (φ₁ − φ₃)/2, so that the
     * shift's deviation is σ/√2 in ψ = π sin θ, whatever the amplitudes do.
     */
    @Test
    void shiftsTheCourseAsFirstOrderTheorySays() {
        var result = ToleranceStudy.run(THREE, Tolerances.independent(new Spread(0.2, 2)), DRAWS);
        double expected = Math.toDegrees(Math.toRadians(2) / Math.sqrt(2) / Math.PI);
        FigureDistribution shift = result.courseShift();
        assertEquals(expected, shift.standardDeviation(), SAMPLING * expected);
        assertEquals(0, shift.mean(), 5 * expected / Math.sqrt(20_000));
        // A normal distribution: 1.960 and 0.674 standard deviations.
        assertEquals(1.960 * expected, shift.percentile(97.5), SAMPLING * 2 * expected);
        assertEquals(-1.960 * expected, shift.percentile(2.5), SAMPLING * 2 * expected);
        assertEquals(0.674 * expected, shift.percentile(75), SAMPLING * expected);
        double within = shift.partWithin(new Range(-expected, expected));
        assertEquals(0.6827, within, 0.02);
        assertEquals(0, result.lost());
    }

    /**
     * The deflection goes as (a₁ + a₃)/2 − a₂ in its logarithm, with a deviation of σ √1.5, and the
     * width inversely as it, by W = 2 asin(asin(q)/π) with q = 0.155/0.4.
     */
    @Test
    void spreadsTheWidthAsFirstOrderTheorySays() {
        var result = ToleranceStudy.run(THREE, Tolerances.independent(new Spread(0.1, 0)), DRAWS);
        double q = 0.155 / 0.4;
        double sine = Math.asin(q) / Math.PI;
        double width = Math.toDegrees(2 * Math.asin(sine));
        double perLogarithm =
                Math.toDegrees(2 / Math.sqrt(1 - sine * sine) / Math.PI * q / Math.sqrt(1 - q * q));
        double expected = perLogarithm * 0.1 * Math.log(10) / 20 * Math.sqrt(1.5);
        // A median scatters by 1.25 σ/√n: five of them.
        double ofMedian = 5 * 1.25 * expected / Math.sqrt(20_000);
        assertEquals(width, result.width().percentile(50), ofMedian);
        assertEquals(expected, result.width().standardDeviation(), SAMPLING * expected);
        // Amplitudes alone move no course line.
        assertEquals(0, result.courseShift().standardDeviation(), 2e-3);
    }

    /** Common to a path: CSB and SBO amplitudes part by σ √2, and both sides stay alike. */
    @Test
    void keepsTheCourseWhereAWholePathIsInError() {
        Tolerances paths = new Tolerances(Spread.NONE, Spread.NONE, new Spread(0.1, 3));
        var result = ToleranceStudy.run(THREE, paths, DRAWS);
        Tolerances single = Tolerances.independent(new Spread(0.1, 0));
        double independent = ToleranceStudy.run(THREE, single, DRAWS).width().standardDeviation();
        double ratio = result.width().standardDeviation() / independent;
        assertEquals(Math.sqrt(2 / 1.5), ratio, 2 * SAMPLING);
        assertEquals(0, result.courseShift().percentile(99), result.courseShift().resolution());
        assertEquals(50, result.symmetry90().percentile(1), 0.02);
    }

    /** An element's cable moves its CSB and SBO alike: the pair's phase difference to itself. */
    @Test
    void sharesTheErrorOfAnElementAmongItsCurrents() {
        ArrayModel pair =
                new ArrayModel(
                        "pair",
                        List.of(-WAVELENGTH / 2, WAVELENGTH / 2),
                        ElementPattern.ISOTROPIC,
                        List.of(
                                new Carrier(
                                        110e6,
                                        0.2,
                                        List.of(new Current(1, 0), new Current(1, 0)),
                                        List.of(new Current(0.2, 90), new Current(0.2, -90)))));
        // C·e^{jφ} + jS and C − jS: both turn about the same centre, ψ = (φ₁ − φ₂)/2.
        var common = ToleranceStudy.run(pair, Tolerances.commonToFeed(new Spread(0, 2)), DRAWS);
        double expected = Math.toDegrees(Math.toRadians(2) / Math.sqrt(2) / Math.PI);
        assertEquals(expected, common.courseShift().standardDeviation(), SAMPLING * expected);
        assertEquals(0, common.width().standardDeviation(), 0.01 * expected);
    }

    @Test
    void staysAtTheDesignWithoutErrors() {
        var result =
                ToleranceStudy.run(
                        FOURTEEN, Tolerances.independent(Spread.NONE), new Draws(1000, 1));
        double width = result.nominal().width();
        assertEquals(width, result.width().percentile(0), result.width().resolution() + 1e-4);
        assertEquals(width, result.width().percentile(100), result.width().resolution() + 1e-4);
        assertEquals(0, result.courseShift().percentile(50), result.courseShift().resolution());
    }

    @Test
    void givesTheSameOnAnyNumberOfThreads() throws Exception {
        Tolerances tolerances = Tolerances.independent(Spread.ofFraction(0.05, 3));
        Draws draws = new Draws(3_001, 5);
        var alone = new ForkJoinPool(1);
        var four = new ForkJoinPool(4);
        var first = alone.submit(() -> ToleranceStudy.run(FOURTEEN, tolerances, draws)).get();
        var second = four.submit(() -> ToleranceStudy.run(FOURTEEN, tolerances, draws)).get();
        alone.shutdown();
        four.shutdown();
        assertEquals(3_001, first.draws());
        for (double percent : new double[] {0, 1, 17, 50, 99, 100}) {
            assertEquals(first.width().percentile(percent), second.width().percentile(percent));
            assertEquals(
                    first.outerClearance().percentile(percent),
                    second.outerClearance().percentile(percent));
        }
        assertEquals(first.courseShift().mean(), second.courseShift().mean());
    }

    @Test
    void differsFromSeedToSeed() {
        Tolerances tolerances = Tolerances.independent(Spread.ofFraction(0.05, 3));
        double one = ToleranceStudy.run(FOURTEEN, tolerances, new Draws(1000, 1)).width().mean();
        double two = ToleranceStudy.run(FOURTEEN, tolerances, new Draws(1000, 2)).width().mean();
        assertTrue(one != two);
    }

    @Test
    void countsDrawsThatLoseTheCourseApart() {
        // 4 b = 0.16 barely reaches 0.155: about every third draw does not.
        Carrier weak = THREE.course().withSboScaled(0.4);
        var result =
                ToleranceStudy.run(
                        THREE.withCourse(weak),
                        Tolerances.independent(new Spread(0.5, 0)),
                        new Draws(5_000, 3));
        // ln(0.155/0.16) of a normal with σ = 0.5 dB √1.5: Φ(−0.450) = 0.326.
        assertEquals(0.326, result.lost() / 5000.0, 0.03);
        assertEquals(5_000, result.lost() + result.width().draws());
        assertEquals(5_000, result.outerClearance().draws());
    }

    @Test
    @Timeout(value = 20, unit = TimeUnit.SECONDS)
    void endsSoonWhenInterrupted() throws Exception {
        var outcome = new CompletableFuture<Throwable>();
        Thread study =
                new Thread(
                        () -> {
                            try {
                                ToleranceStudy.run(
                                        FOURTEEN,
                                        Tolerances.independent(new Spread(0.3, 2)),
                                        new Draws(10_000_000, 1));
                                outcome.complete(null);
                            } catch (CancellationException e) {
                                outcome.complete(e);
                            }
                        });
        study.start();
        Thread.sleep(300);
        study.interrupt();
        assertTrue(outcome.get() instanceof CancellationException);
    }

    @Test
    void refusesSpreadsThatAreNone() {
        assertThrows(IllegalArgumentException.class, () -> new Spread(-0.1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Spread(0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Spread.ofFraction(2, 1));
    }
}
