package halfwidth.adapt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.adapt.Difference.Kind;
import halfwidth.adapt.Difference.Piece;
import halfwidth.adapt.Difference.Row;
import halfwidth.adapt.Difference.Side;
import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.io.StringReader;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class DifferenceTest {
    private static String texts(Draw draw) {
        List<String> lines =
                List.of("a b c", "a b d", "x", "", "<&\"'>", "\u0001", "a  c", "\ud83d\ude00");
        return draw.list(0, 9, () -> draw.of(lines)).stream()
                .map(line -> line + "\n")
                .collect(Collectors.joining());
    }

    /** The lines of one side in order, which must be that side's text. */
    private static String side(Difference difference, Function<Row, Side> side) {
        StringBuilder text = new StringBuilder();
        int line = 0;
        for (Row row : difference.rows()) {
            if (side.apply(row).line() > 0) {
                assertEquals(++line, side.apply(row).line());
                text.append(side.apply(row).text()).append('\n');
            }
        }
        return text.toString();
    }

    @Law
    void eachSideIsItsText(Draw draw) {
        String shipped = texts(draw);
        String adapted = texts(draw);
        Difference difference = Difference.of(shipped, adapted);
        assertEquals(shipped, side(difference, Row::shipped));
        assertEquals(adapted, side(difference, Row::adapted));
        assertEquals(shipped.equals(adapted), difference.isNone());
    }

    @Law
    void whatIsNotChangedInALineIsTheSameOnBothSides(Draw draw) {
        String shipped = texts(draw);
        String adapted = texts(draw);
        for (Row row : Difference.of(shipped, adapted).rows()) {
            if (row.kind() == Kind.KEPT || row.kind() == Kind.CHANGED) {
                assertEquals(kept(row.shipped()), kept(row.adapted()));
            }
            boolean both = row.shipped().line() > 0 && row.adapted().line() > 0;
            boolean same = both && row.shipped().text().equals(row.adapted().text());
            assertEquals(row.kind() == Kind.KEPT, same);
        }
    }

    private static String kept(Side side) {
        return side.pieces().stream()
                .filter(piece -> !piece.changed())
                .map(Piece::text)
                .collect(Collectors.joining());
    }

    @Law
    void theTableIsWellFormed(Draw draw) throws Exception {
        String shipped = texts(draw);
        String adapted = texts(draw);
        parsed(DifferenceTable.of(Difference.of(shipped, adapted), 1));
    }

    private static Document parsed(String html) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader("<div>" + html + "</div>")));
    }

    @Test
    void aChangedWordIsMarkedWithinItsLine() {
        Row row =
                Difference.of("double a = 2 * b; // m\n", "double a = 3 * b; // m\n").rows().get(0);
        assertEquals(Kind.CHANGED, row.kind());
        assertEquals(
                List.of(
                        new Piece("double a = ", false),
                        new Piece("2", true),
                        new Piece(" * b; // m", false)),
                row.shipped().pieces());
        assertEquals("3", row.adapted().pieces().get(1).text());
    }

    @Test
    void aLineIsSetBesideTheOneItCameFrom() {
        Difference difference =
                Difference.of(
                        "keep\ndouble width = 2 * half;\nend\n",
                        "keep\nString title = \"new\";\ndouble width = 3 * half;\nend\n");
        assertEquals(
                List.of(Kind.KEPT, Kind.ADDED, Kind.CHANGED, Kind.KEPT),
                difference.rows().stream().map(Row::kind).toList());
    }

    @Test
    void linesWithNothingInCommonAreRemovedAndAdded() {
        Difference difference = Difference.of("alpha beta\n", "1 2 3\n");
        assertEquals(
                List.of(Kind.REMOVED, Kind.ADDED),
                difference.rows().stream().map(Row::kind).toList());
    }

    @Test
    void lineEndsDoNotCount() {
        assertTrue(Difference.of("a\r\nb\r\n", "a\nb\n").isNone());
        assertFalse(Difference.of("a\nb\n", "a\n").isNone());
    }

    @Test
    void theTableSaysInWordsWhatWasDone() throws Exception {
        String html =
                DifferenceTable.of(Difference.of("1\n2\n3\n4\na b c\n", "1\n2\n3\n4\na b d\n"), 1);
        Document table = parsed(html);
        assertEquals(
                "1 changed, 0 removed, 0 added",
                table.getElementsByTagName("caption").item(0).getTextContent());
        assertEquals("c", table.getElementsByTagName("del").item(0).getTextContent());
        assertEquals("d", table.getElementsByTagName("ins").item(0).getTextContent());
        assertTrue(html.contains("Lines 1 to 3 kept"), html);
        assertTrue(html.contains(">changed</td>"), html);
    }

    @Test
    void nothingToCompareIsSaid() {
        assertEquals(
                "<p>Nothing: this page says the same as the shipped one.</p>",
                DifferenceTable.of(Difference.of("a\n", "a\n"), 3));
    }

    @Test
    void aPageRewrittenFromTopToBottomIsStillCompared() {
        String shipped = "word %s\n".repeat(2000).replace("%s", "one");
        String adapted = "word %s\n".repeat(2000).replace("%s", "two");
        assertEquals(4000, Difference.of(shipped, adapted).rows().size());
    }
}
