package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class LineTest {
    @Test
    void countsCellsNotCharacters() {
        assertEquals(4, Line.width("12 °"));
        assertEquals(1, Line.width("e\u0301"));
        assertEquals(4, Line.width("航空"));
        assertEquals("航空 ", Line.padRight("航空", 5));
    }

    @Test
    void spellsOutWhatCouldSteerTheTerminal() {
        assertEquals("\\u001b[2Jgone", Line.safe("\u001b[2Jgone"));
        assertEquals("a b", Line.safe("a\tb"));
    }

    @Test
    void wrapsAtSpacesAndKeepsLongWordsWhole() {
        assertEquals(List.of("one two", "three"), Line.wrap("one two three", 8));
        assertEquals(List.of("a", "notebooks/transmit"), Line.wrap("a notebooks/transmit", 6));
        assertEquals(List.of(), Line.wrap("  ", 6));
    }
}
