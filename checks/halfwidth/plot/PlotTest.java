package halfwidth.plot;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;

class PlotTest {
    private static final double MISSING = Double.NaN;

    private static Plot offsets() {
        return Plot.of("Offset against cut").across("Total cut", "in").up("SBO offset", "°");
    }

    private static void assertSays(Plot plot, String words) {
        String description = plot.description();
        assertTrue(description.contains(words), () -> words + " not in: " + description);
    }

    @Test
    void saysWhatTheAxesCarryAndTheirUnits() {
        assertSays(offsets(), "Offset against cut. Across: Total cut (in). Up: SBO offset (°).");
    }

    @Test
    void leavesOutTheUnitOfAPlainNumber() {
        assertSays(Plot.of("Sweep").up("DDM", "1"), "Up: DDM.");
    }

    @Test
    void spellsOutFewPointsAndCountsTheMissing() {
        Plot plot =
                offsets()
                        .points(
                                "Transmitter 1",
                                new double[] {0, 0.5, 1},
                                new double[] {12, MISSING, 8.25});
        assertSays(plot, "Points Transmitter 1: 3 points, 1 missing. 12° at 0 in; 8.25° at 1 in.");
    }

    @Test
    void givesTheExtremesOfManyPoints() {
        double[] xs = new double[40];
        double[] ys = new double[40];
        for (int i = 0; i < 40; i++) {
            xs[i] = i;
            ys[i] = (i - 10) * (i - 10);
        }
        assertSays(
                Plot.of("Parabola").points("p", xs, ys),
                "40 points. Lowest 0 at 10, highest 841 at 39.");
    }

    @Test
    void saysWhereALineRunsAndWhatALimitIs() {
        Plot plot =
                Plot.of("Sweep")
                        .across("Azimuth", "°")
                        .up("DDM", "1")
                        .line("Predicted", new double[] {-1, 0, 1}, new double[] {-0.1, 0, 0.1})
                        .atLeast("least clearance", 10, 35, 0.15)
                        .level("Centre", 0)
                        .mark("Sector edge", 2);
        assertSays(plot, "Line Predicted: from -0.1 at -1° to 0.1 at 1°.");
        assertSays(plot, "Limit least clearance: at least 0.15 from 10° to 35°.");
        assertSays(plot, "Level line Centre at 0.");
        assertSays(plot, "Upright line Sector edge at 2°.");
    }

    @Test
    void takesColumnsOfATableWithTheirMissingValues() {
        IntColumn xs = IntColumn.create("x", new int[] {1, 2, 3});
        DoubleColumn ys = DoubleColumn.create("y", new double[] {5, 6, 7});
        ys.setMissing(1);
        xs.setMissing(2);
        assertSays(Plot.of("Readings").points("p", xs, ys), "3 points, 2 missing. 5 at 1.");
    }

    @Test
    void saysWhenThereIsNothingToSee() {
        Plot plot = offsets().points("Transmitter 1", new double[] {1}, new double[] {MISSING});
        assertSays(plot, "Points Transmitter 1: no readings, 1 point, 1 missing.");
        assertEquals(false, plot.hasReadings());
        assertSays(Plot.of("Empty"), "Nothing to show.");
    }

    @Test
    void keepsItsOwnCopyOfTheValues() {
        double[] ys = {1, 2};
        Plot plot = Plot.of("Copy").points("p", new double[] {0, 1}, ys);
        ys[0] = 99;
        assertSays(plot, "1 at 0; 2 at 1.");
    }

    @Test
    void refusesInfinityByTheSeriesName() {
        IllegalArgumentException refusal =
                assertThrows(
                        IllegalArgumentException.class,
                        () ->
                                offsets()
                                        .line(
                                                "Fit",
                                                new double[] {0, 1},
                                                new double[] {0, Double.POSITIVE_INFINITY}));
        assertTrue(refusal.getMessage().startsWith("Fit, up: value 2 is Infinity"));
    }

    @Test
    void refusesEmptyAndUnevenSeriesAndBackwardLimits() {
        double[] none = {};
        double[] one = {1};
        double[] two = {1, 2};
        assertAll(
                () -> refuses("must have at least one", () -> offsets().points("p", none, none)),
                () -> refuses("2 and 1", () -> offsets().line("p", one, two)),
                () -> refuses("2 and 1", () -> offsets().band("p", one, one, two)),
                () -> refuses("must start before", () -> offsets().atMost("limit", 3, 2, 1)),
                () -> refuses("must be a finite", () -> offsets().level("aim", MISSING)));
    }

    private static void refuses(String why, org.junit.jupiter.api.function.Executable what) {
        String message = assertThrows(IllegalArgumentException.class, what).getMessage();
        assertTrue(message.contains(why), message);
    }

    /** A missing mark at a height would pass for a reading of that height. */
    @Test
    void aMissingReadingHasAPlaceAcrossAndNoHeight() {
        Plot plot =
                Plot.of("Sweep")
                        .across("Azimuth", "°")
                        .points("Tx 1", new double[] {-5, 5}, new double[] {0.2, 0.3})
                        .missing("Missing, Tx 1", new double[] {-15, MISSING, 8});
        Layer missing = plot.layers().get(1);
        assertArrayEquals(new double[] {-15, 8}, missing.across().toArray());
        assertEquals(0, missing.up().count());
        assertTrue(
                plot.description().endsWith("Missing, Tx 1: no reading at -15°; 8°."),
                plot.description());
        assertEquals(plot.digest(), plot.missing("Missing, Tx 2", new double[0]).digest());
        refuses(
                "must be a finite",
                () -> plot.missing("m", new double[] {Double.POSITIVE_INFINITY}));
    }

    @Test
    void missingReadingsOfOneSeriesStandApartFromThoseOfTheNext() {
        Rectangle2D grid = new Rectangle2D.Double(10, 20, 300, 200);
        Line2D lower = new Ticks(0).at(50, grid);
        Line2D upper = new Ticks(1).at(50, grid);
        Line2D further = new Ticks(2).at(50, grid);
        assertEquals(grid.getMaxY(), lower.getY1());
        assertEquals(grid.getMinY(), upper.getY1());
        assertTrue(further.getY1() < lower.getY2(), "a row of its own");
        for (Line2D tick : List.of(lower, upper)) {
            assertTrue(Math.abs(tick.getY1() - tick.getY2()) < 0.1 * grid.getHeight());
        }
    }

    @Test
    void plotsThatLookTheSameHaveOneDigestAndOthersNot() {
        double[] xs = {0, 1, 2};
        List<Plot> different =
                List.of(
                        Plot.of("A"),
                        Plot.of("B"),
                        Plot.of("A").across("x", "m"),
                        Plot.of("A").up("x", "m"),
                        Plot.of("A").points("p", xs, xs),
                        Plot.of("A").line("p", xs, xs),
                        Plot.of("A").line("q", xs, xs),
                        Plot.of("A").line("p", xs, new double[] {0, 1, 2.0000001}),
                        Plot.of("A").line("p", xs, new double[] {0, 1, Double.NaN}),
                        Plot.of("A").missing("p", xs),
                        Plot.of("A").missing("p", new double[] {0, 1}),
                        Plot.of("A").level("l", 1),
                        Plot.of("A").mark("l", 1),
                        Plot.of("A").atLeast("l", 0, 1, 2),
                        Plot.of("A").atMost("l", 0, 1, 2));
        assertEquals(different.size(), different.stream().map(Plot::digest).distinct().count());
        assertEquals(
                Plot.of("A").line("p", xs, xs).digest(),
                Plot.of("A").line("p", xs.clone(), xs.clone()).digest());
    }
}
