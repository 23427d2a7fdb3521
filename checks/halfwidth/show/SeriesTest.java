package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.run.Shown;
import java.io.Serializable;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SeriesTest {
    private static Shown.Grid grid(int numbers, int left) {
        List<List<Serializable>> rows =
                IntStream.range(0, numbers).mapToObj(i -> List.<Serializable>of(i / 2.0)).toList();
        return new Shown.Grid(List.of("value"), rows, left, false);
    }

    @Test
    void fewNumbersAreWrittenOut() {
        assertEquals("0, 0.5, 1 in", Values.series(grid(3, 0), "in"));
    }

    @Test
    void ofManyTheFirstAndTheLastAre() {
        assertEquals(
                "0, 0.5, 1, 1.5, 2, 2.5, … 20 in (41 values)", Values.series(grid(41, 0), "in"));
    }

    @Test
    void aLastThatIsNotThereIsNotMadeUp() {
        assertEquals("0, 0.5, 1, 1.5, 2, 2.5, … (300 values)", Values.series(grid(200, 100), "1"));
    }

    @Test
    void tableWithTextsIsNoSeries() {
        assertTrue(Values.isSeries(grid(3, 0)));
        assertFalse(
                Values.isSeries(new Shown.Grid(List.of("value"), List.of(List.of("a")), 0, false)));
    }

    @Test
    void missingNumberKeepsItsPlace() {
        Shown.Grid grid =
                new Shown.Grid(
                        List.of("value"),
                        List.of(List.of(0.5), Collections.singletonList(null), List.of(1.5)),
                        0,
                        false);
        assertTrue(Values.isSeries(grid));
        assertEquals("0.5, –, 1.5", Values.series(grid, "1"));
    }
}
