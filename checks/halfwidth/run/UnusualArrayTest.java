package halfwidth.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** An array of an odd number of unevenly spaced elements and one carrier, by inputs only. */
@Tag("long")
class UnusualArrayTest {
    private static final String FILE = Path.of("datasets", "arrays", "nine-uneven.csv").toString();
    private static final ArrayModel ARRAY = ArrayFile.read(Path.of(FILE));
    private static final double CIRCLE = 250;

    @Test
    void isPredicted() {
        Run run =
                run(
                        "array/prediction",
                        Map.of(
                                "arrayFile", FILE,
                                "category", "II",
                                "datumDistance", "2900 m",
                                "nearDistance", CIRCLE + " m",
                                "lookAt", "-7"),
                        "marks",
                        List.of(List.of("A", "5", "250"), List.of("lost", "", "")));
        // Both ways end on the solver's 1e-10 deg; the page shows three decimals.
        assertEquals(2 * halfWidth(), real(run, "width"), 1e-8);
        assertEquals(ddm(-7), real(run, "ddmThere"), 1e-9);
        assertInstanceOf(Shown.Nothing.class, run.finals().get("carrierRatio"));
    }

    /** Readings without any error, so that the page must find the array as it was designed. */
    @Test
    void isJudgedByAGroundCheck() {
        List<List<String>> sweep = new ArrayList<>();
        for (double azimuth = -35; azimuth <= 35; azimuth += 0.5) {
            double reading = ARRAY.nearField(azimuth, CIRCLE).ddm();
            String typed = String.format(Locale.ROOT, "%.5f", reading);
            sweep.add(List.of("" + azimuth, typed, azimuth == 20 ? "" : typed, "", ""));
        }
        Run run =
                run(
                        "sweep/ground-check",
                        Map.of(
                                "arrayFile", FILE,
                                "markDistance", CIRCLE + " m",
                                "datumDistance", "2900 m",
                                "nominalWidth", "4",
                                "category", "III",
                                "rule", "FAA",
                                "readingStep", "0.001",
                                "differenceAllowed", "0.010",
                                "betweenAllowed", "0.010"),
                        "sweep",
                        sweep);
        assertEquals(new Shown.Words("clearance met at every mark"), run.finals().get("verdict1"));
        assertEquals(
                new Shown.Words("clearance met as far as it could be judged"),
                run.finals().get("verdict2"));
        assertEquals(0, real(run, "worstToPrediction"), 6e-6);
        // The slope of a straight line through a curve: the curve is straight to about 1 %.
        assertEquals(2 * halfWidth(), real(run, "farWidth1"), 0.01 * 2 * halfWidth());
    }

    private static Run run(
            String name, Map<String, String> fields, String table, List<List<String>> rows) {
        Page page = new Pages(Path.of("notebooks")).find(name);
        Filled filled = Filled.none(page).withReadings(table, rows);
        for (Map.Entry<String, String> field : fields.entrySet()) {
            filled = filled.with(field.getKey(), field.getValue());
        }
        try (Workshop workshop = Workshop.withoutSpare(Budget.USUAL);
                OpenPage open = workshop.open(Script.of(page))) {
            Run run = open.run(Values.of(filled));
            run.steps()
                    .forEach(
                            ran ->
                                    assertInstanceOf(
                                            Outcome.Done.class, ran.outcome(), ran::toString));
            return run;
        }
    }

    private static double real(Run run, String name) {
        return run.steps().stream()
                .filter(ran -> ran.step().name().equals(name))
                .map(ran -> ((Outcome.Done) ran.outcome()).value())
                .map(shown -> ((Shown.Real) shown).value())
                .findFirst()
                .orElseThrow();
    }

    private static double halfWidth() {
        return new BrentSolver(1e-12).solve(100, azimuth -> ddm(azimuth) - 0.155, 0.5, 4);
    }

    /** Sums of sines and cosines of the file's symmetrical currents: no phasors. */
    private static double ddm(double azimuth) {
        double k = 2 * Math.PI * ARRAY.course().frequency() / 299_792_458;
        double u = k * Math.sin(Math.toRadians(azimuth));
        double csb = 0;
        double sbo = 0;
        for (int n = 0; n < ARRAY.positions().size(); n++) {
            double x = ARRAY.positions().get(n);
            csb += ARRAY.course().csb().get(n).amplitude() * Math.cos(u * x);
            double amplitude = ARRAY.course().sbo().get(n).amplitude();
            sbo += Math.signum(x) * amplitude * Math.sin(u * x);
        }
        return 2 * sbo / csb;
    }
}
