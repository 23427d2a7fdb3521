package halfwidth.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.vocabulary.Action.State;
import org.junit.jupiter.api.Test;

/** An action is whole, or there is none: what, on what, how much; or nothing and why. */
class ActionTest {
    @Test
    void saysWhatToDoOnWhatAndHowMuch() {
        Action cut = Action.toDo("Cut the CSB feed by 1/2 in.", "CSB feed", 0.5, "in");
        assertEquals(State.TO_DO, cut.state());
        assertTrue(cut.hasAmount());
        assertEquals("Cut the CSB feed by 1/2 in.", cut.toString());
        assertFalse(Action.toDo("Read again.", "the pair").hasAmount());
    }

    @Test
    void hasNoAmountWhereNothingIsToBeDone() {
        assertFalse(Action.finished("Stop: within the target.").hasAmount());
        assertFalse(Action.held("Cut nothing: sides exchanged?").hasAmount());
        assertThrows(
                IllegalArgumentException.class,
                () -> new Action(State.HELD, "Cut nothing.", "", 3, "mm"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Action(State.FINISHED, "Stop.", "CSB feed", Double.NaN, ""));
    }

    @Test
    void isRefusedWhereAPartIsMissing() {
        assertThrows(IllegalArgumentException.class, () -> Action.toDo("Cut.", "", 1, "mm"));
        assertThrows(IllegalArgumentException.class, () -> Action.toDo("Cut.", "feed", 1, ""));
        assertThrows(
                IllegalArgumentException.class,
                () -> Action.toDo("Cut.", "feed", Double.NaN, "mm"));
        assertThrows(
                IllegalArgumentException.class,
                () -> Action.toDo("Cut.", "feed", Double.POSITIVE_INFINITY, "mm"));
        assertThrows(IllegalArgumentException.class, () -> Action.held(" "));
    }
}
