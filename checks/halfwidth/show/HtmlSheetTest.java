package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class HtmlSheetTest {
    private static final String PAGE = HtmlSheet.of(DemoSheet.of(true));
    private static final Document TREE = tree(PAGE);

    /** The sheet is well-formed XML as well, so whatever is not escaped stops it here. */
    static Document tree(String html) {
        try {
            String xml = html.substring(html.indexOf("<html"));
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(xml)));
        } catch (Exception e) {
            throw new AssertionError(e.getMessage() + " in\n" + html, e);
        }
    }

    static List<String> texts(Document tree, String path) {
        try {
            NodeList nodes =
                    (NodeList)
                            XPathFactory.newInstance()
                                    .newXPath()
                                    .evaluate(path, tree, XPathConstants.NODESET);
            return IntStream.range(0, nodes.getLength())
                    .mapToObj(i -> nodes.item(i).getTextContent())
                    .toList();
        } catch (javax.xml.xpath.XPathExpressionException e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> texts(String path) {
        return texts(TREE, path);
    }

    @Test
    void standsAlone() {
        assertEquals(0, texts("//script | //link | //iframe | //object").size());
        assertEquals(3, texts("//img[starts-with(@src, 'data:image/png;base64,')]").size());
        assertEquals(3, texts("//img").size());
        assertFalse(PAGE.contains("url("));
    }

    @Test
    void hasTheHeadingOfACalculationSheetWithRulesToWriteOn() {
        assertEquals(
                List.of("Station", "Runway", "Prepared by", "Checked by", "Date", "Page"),
                texts("//dl[@class='heading']/div/dt"));
        assertEquals(List.of("Demo (invented)"), texts("//div[dt='Station']/dd"));
        assertEquals(3, texts("//dl[@class='heading']//dd[@class='blank']").size());
        assertEquals(List.of("Trim of the sideband feed"), texts("//h1"));
    }

    @Test
    void findsTheBoxOfANameHoweverItsLettersAreWritten() {
        Sheet demo = DemoSheet.of(false);
        Map<String, String> heading = Map.of("station", "North Field", "Channel", "40X");
        String page = HtmlSheet.of(new Sheet(demo.filled(), demo.run(), heading, demo.stamp()));
        assertEquals(List.of("North Field"), texts(tree(page), "//div[dt='Station']/dd"));
        assertEquals(0, texts(tree(page), "//dt[.='station']").size());
        assertEquals(List.of("40X"), texts(tree(page), "//div[dt='Channel']/dd"));
    }

    @Test
    void saysThatValuesAreInventedOnlyWhereTheyAre() {
        assertEquals(1, texts("//p[@class='example']").size());
        String job = HtmlSheet.of(DemoSheet.of(false));
        assertEquals(0, texts(tree(job), "//p[@class='example']").size());
        assertFalse(job.contains("WORKED EXAMPLE"));
    }

    @Test
    void setsTheCautionsOffOnceAtTheTopAndLaterOnesInTheirPlaceToo() {
        assertEquals(3, texts("//section[@class='cautions']/p").size());
        assertEquals(1, texts("//main//blockquote[@class='caution']").size());
    }

    @Test
    void putsTheResultsFirstWithLimitSourceAndVerdict() {
        List<String> row = texts("//section[@class='results']//tbody/tr[2]/*");
        assertTrue(row.get(0).startsWith("First cut"));
        assertEquals("56.6 mm± 0.9", row.get(1));
        assertEquals("2 to 57.5 mmapproved handbook, longest trim", row.get(2));
        assertEquals("metbut the limit is within the uncertainty", row.get(3));
        assertTrue(PAGE.indexOf("id=\"results\"") < PAGE.indexOf("Inputs</caption>"));
    }

    @Test
    void showsInputsAsTypedAndAsUnderstood() {
        assertEquals(List.of("8.1 deg", "8.1°"), texts("//tr[th//code='offset2']/td"));
        assertEquals("not filled in", texts("//tr[th//code='power']/td").get(0));
    }

    @Test
    void showsMissingReadingsAsMissingAndCountsThem() {
        assertEquals(3, texts("//table[@class='readings']//td[@title='missing']").size());
        assertTrue(
                texts("//caption").contains("Readings course: 5 rows, 2 of 20 readings missing"));
    }

    @Test
    void givesEachStepItsLineItsNumbersAndItsValue() {
        String step = "//section[@id='line-52']";
        assertEquals(List.of("line 52"), texts(step + "/span[@class='line']"));
        assertEquals(
                List.of("with offset1 = 14.2°, offset2 = 8.1°"),
                texts(step + "//p[@class='used']"));
        assertEquals(List.of("aim = 11.15°"), texts(step + "/p[@class='value']"));
        assertEquals(List.of("middle of the two"), texts(step + "//p[@class='source']"));
    }

    @Test
    void showsWhatAStepPrintedAsText() {
        assertEquals(List.of("aim 11.15 <deg>"), texts("//pre[@class='printed']"));
    }

    @Test
    void saysWhatWaitsWhatIsHeldAndWhatFailed() {
        assertEquals(
                List.of("waiting for Carrier power (power)"),
                texts("//section[@id='line-86']/p[@class='waits']"));
        assertEquals(
                List.of("not run, since line 58 failed"),
                texts("//section[@id='line-60']/p[@class='waits']"));
        assertEquals(
                "Look at the rows of the table course with the same azimuth and correct one.",
                texts("//section[@id='line-58']/div[@class='failure']/p").get(1));
    }

    @Test
    void describesEveryPicture() {
        assertTrue(
                texts("//img/@alt").get(0).contains("Points Transmitter 1: 3 points, 1 missing."));
    }

    @Test
    void putsThePlotsWithTheAnswerAndLinksThemFromTheirSteps() {
        assertEquals(texts("//figure/@id"), texts("//div[starts-with(@class,'plots')]/figure/@id"));
        assertTrue(texts("//section[@id='line-56']//a/@href").contains("#plot-56"));
    }

    @Test
    void headsEachGroupOfResultsOnce() {
        assertEquals(
                List.of("Left after the cut", "Other"),
                texts("//section[@class='results']//tr[@class='group']/th"));
    }

    @Test
    void showsTablesWithTheirMissingCellsAndWhatIsLeftOut() {
        assertEquals(1, texts("//table[@class='grid']//td[@title='missing']").size());
        assertTrue(texts("//p").contains("and 2 rows more"));
    }

    @Test
    void givesEachCheckItsSourceAndVerdict() {
        assertEquals(
                List.of("110", "near(beta, 0.157682, 1e-6)", "computed by hand", "holds"),
                texts("//tr[@id='check-110']/*"));
        assertTrue(texts("//tr[@id='check-112']/td").get(2).startsWith("does not hold"));
        assertTrue(texts("//caption").contains("Checks: 2 of 3 hold"));
    }

    @Test
    void showsUnrunChecksAsCode() {
        Document job = tree(HtmlSheet.of(DemoSheet.of(false)));
        assertEquals(0, texts(job, "//table[@class='checks']").size());
        assertEquals(
                List.of("Checked with the worked example's values only:"),
                texts(job, "//p[@class='small']").stream()
                        .filter(text -> text.startsWith("Checked"))
                        .toList());
    }

    @Test
    void tellsWhatItWasMadeByAndFrom() {
        // SHA-256 of the six bytes "# Demo", by: printf '# Demo' | sha256sum
        String digest = "311bf7b773261f50f85145f553ac0ea393044607e83e7c91485f9fa28c0f69ae";
        List<String> facts = texts("//footer//dd");
        assertEquals("transmit/demo-trim.md", facts.get(0));
        assertEquals("2026-03-04 09:15:30 UTC+01:00", facts.get(1));
        assertEquals("Halfwidth 0.1.0", facts.get(2));
        assertEquals(Runtime.version().toString(), facts.get(3));
        assertEquals(digest, facts.get(4));
    }

    @Test
    void carriesPageTimeAndExampleOnEachPrintedPage() {
        assertTrue(PAGE.contains("@top-center { content: \"WORKED EXAMPLE"));
        assertTrue(PAGE.contains("@bottom-left { content: \"transmit\\00002f demo\\00002d trim"));
    }

    @Test
    void linksOnlyToWhatIsThere() {
        List<String> ids = texts("//@id");
        List<String> links = texts("//a/@href").stream().filter(to -> to.startsWith("#")).toList();
        assertEquals(3 + texts("//figure").size(), links.size());
        assertTrue(links.stream().allMatch(to -> ids.contains(to.substring(1))), links::toString);
    }

    @Test
    void isReadableByMachinesForPeopleWhoCannotSee() {
        assertEquals(List.of("en"), texts("/html/@lang"));
        assertEquals(texts("//table//th").size(), texts("//table//th[@scope]").size());
        List<String> ids = texts("//@id");
        assertEquals(ids.size(), ids.stream().distinct().count());
        assertEquals(texts("//table").size(), texts("//table//thead").size());
    }
}
