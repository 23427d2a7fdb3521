package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the list says is next: what holds a sheet goes before what is to be done on it. */
class FindingTest {
    private static Finding action(String words, String verdict) {
        return new Finding("advice", words, "", "", verdict);
    }

    private static final Finding WIDTH = new Finding("width", "4.2", "°", "", "not met");
    private static final Finding SET = action("Set 2 to 2.15.", "to do");
    private static final Finding STOP = action("Set nothing before this is cleared up.", "held");
    private static final Finding KEEP = action("Keep 2.5.", "finished");

    @Test
    void nothingIsNextWhereAllIsFinished() {
        assertEquals(Optional.empty(), Finding.next(List.of(WIDTH, KEEP)));
    }

    @Test
    void theFirstThingToDoIsNext() {
        assertEquals(
                Optional.of("Set 2 to 2.15."),
                Finding.next(List.of(KEEP, SET, action("Set 3 to 4.", "to do"))));
    }

    @Test
    void whatHoldsGoesFirst() {
        assertEquals(
                Optional.of("Set nothing before this is cleared up."),
                Finding.next(List.of(SET, STOP, WIDTH)));
    }
}
