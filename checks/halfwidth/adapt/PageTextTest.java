package halfwidth.adapt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;
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

    @Provide
    Arbitrary<Sample> samples() {
        Arbitrary<String> content =
                Arbitraries.strings().withChars("ab \t`é°\u2028").ofMaxLength(6);
        Arbitrary<String> end = Arbitraries.of("\n", "\r\n", "\r");
        Arbitrary<Tuple2<String, String>> line = Combinators.combine(content, end).as(Tuple::of);
        return Combinators.combine(
                        line.list().ofMinSize(1).ofMaxSize(8),
                        Arbitraries.of(true, false),
                        Arbitraries.integers().between(0, 100),
                        Arbitraries.integers().between(0, 100))
                .as(PageTextTest::sample);
    }

    /** A lone carriage return before an empty line that ends in a line feed would be one end. */
    private static Sample sample(
            List<Tuple2<String, String>> drawn, boolean ended, int from, int length) {
        List<String> lines =
                drawn.stream().map(t -> "x" + t.get1() + t.get2()).collect(Collectors.toList());
        int last = lines.size() - 1;
        lines.set(last, ended ? lines.get(last) : lines.get(last).stripTrailing());
        int first = 1 + from % lines.size();
        return new Sample(lines, first, first + length % (lines.size() - first + 1));
    }

    @Provide
    Arbitrary<String> typed() {
        return Arbitraries.strings().withChars("ab \n`é°").ofMaxLength(12);
    }

    @Property
    void isWrittenAsItWasRead(@ForAll("samples") Sample sample) {
        assertEquals(sample.text(), PageText.of(sample.text()).toString());
        assertEquals(sample.lines().size(), PageText.of(sample.text()).count());
    }

    @Property
    void replacingLinesByThemselvesChangesNothing(@ForAll("samples") Sample sample) {
        PageText text = PageText.of(sample.text());
        assertEquals(text, text.with(sample.place(), text.at(sample.place())));
        assertEquals(sample.text(), text.with(sample.place(), text.at(sample.place())).toString());
    }

    @Property
    void whatWasTypedStandsInThePlaceAndTheRestStays(
            @ForAll("samples") Sample sample, @ForAll("typed") String typed) {
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

    @Property
    void insertedLinesComeOutAgain(
            @ForAll("samples") Sample sample, @ForAll("typed") String typed) {
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
