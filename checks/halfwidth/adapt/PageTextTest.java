package halfwidth.adapt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Laws of editing lines, for every kind of line end. */
class PageTextTest {
    /** A text as a list of lines with their ends, and a place in it. */
    record Sample(List<String> lines, int first, int last) {
        String text() {
            return String.join("", lines);
        }

        Place place() {
            return new Place(first, last, false);
        }

        String before() {
            return String.join("", lines.subList(0, first - 1));
        }

        String behind() {
            return String.join("", lines.subList(last, lines.size()));
        }
    }

    /** A lone carriage return before an empty line that ends in a line feed would be one end. */
    private static Sample samples(Draw draw) {
        List<String> lines =
                new ArrayList<>(
                        draw.list(
                                1,
                                8,
                                () ->
                                        "x"
                                                + draw.text("ab \t`é°\u2028", 6)
                                                + draw.of("\n", "\r\n", "\r")));
        int last = lines.size() - 1;
        lines.set(last, draw.flag() ? lines.get(last) : lines.get(last).stripTrailing());
        int first = draw.whole(1, lines.size());
        return new Sample(lines, first, draw.whole(first, lines.size()));
    }

    private static String typed(Draw draw) {
        return draw.text("ab \n`é°", 12);
    }

    @Law
    void isWrittenAsItWasRead(Draw draw) {
        Sample sample = samples(draw);
        assertEquals(sample.text(), PageText.of(sample.text()).toString());
        assertEquals(sample.lines().size(), PageText.of(sample.text()).count());
    }

    @Law
    void replacingLinesByThemselvesChangesNothing(Draw draw) {
        Sample sample = samples(draw);
        PageText text = PageText.of(sample.text());
        assertEquals(text, text.with(sample.place(), text.at(sample.place())));
        assertEquals(sample.text(), text.with(sample.place(), text.at(sample.place())).toString());
    }

    @Law
    void whatWasTypedStandsInThePlaceAndTheRestStays(Draw draw) {
        Sample sample = samples(draw);
        String typed = typed(draw);
        PageText edited = PageText.of(sample.text()).with(sample.place(), typed);
        int lines = typed.split("\n", -1).length;
        boolean toTheEnd = sample.last() == sample.lines().size();
        if (!toTheEnd) {
            Place now = new Place(sample.first(), sample.first() + lines - 1, false);
            assertEquals(typed, edited.at(now));
        }
        String text = edited.toString();
        assertEquals(sample.before(), text.substring(0, sample.before().length()));
        assertEquals(sample.behind(), text.substring(text.length() - sample.behind().length()));
    }

    @Law
    void insertedLinesComeOutAgain(Draw draw) {
        Sample sample = samples(draw);
        String typed = typed(draw);
        PageText text = PageText.of(sample.text());
        PageText edited = text.after(sample.last(), "x" + typed + "x");
        int lines = typed.split("\n", -1).length;
        Place inserted = new Place(sample.last() + 1, sample.last() + lines, false);
        assertEquals("x" + typed + "x", edited.at(inserted));
        if (sample.last() < sample.lines().size()) {
            assertEquals(text, edited.without(inserted));
        }
    }

    @Test
    void newLinesEndLikeTheRestOfTheFile() {
        PageText text = PageText.of("a\r\nb\r\nc");
        Place b = new Place(2, 2, false);
        assertEquals("a\r\n1\r\n2\r\nc", text.with(b, "1\n2").toString());
        assertEquals("a\r\n1\r\n2\r\nc", text.with(b, "1\r\n2").toString());
        assertEquals("a\r\nb\r\nc\r\nd", text.after(3, "d").toString());
    }

    @Test
    void aByteOrderMarkStaysAndIsNoPartOfTheFirstLine() {
        PageText text = PageText.of("\ufeffa\nb\n");
        assertEquals("a", text.at(new Place(1, 1, false)));
        assertEquals("\ufeffc\nb\n", text.with(new Place(1, 1, false), "c").toString());
    }

    @Test
    void refusesAPlaceBeyondTheEnd() {
        assertThrows(
                IllegalArgumentException.class,
                () -> PageText.of("a\n").with(new Place(1, 2, false), "b"));
    }
}
