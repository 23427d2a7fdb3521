package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Uncertainty and trace of a page's results, as the program prints and writes them. */
class UncertaintyBudgetTest {
    @TempDir Path temporary;
    private Scratch scratch;

    /** A page whose uncertainties are worked by hand: u² = (3 · 0.2)² + (0.5 · 1.6)² = 1. */
    @BeforeEach
    void write() {
        scratch = Scratch.within(temporary);
        scratch.file(
                "notebooks/trial/sum.md",
                "# Sum",
                "",
                "```csv inputs",
                "name,unit,kind,example,label",
                "length,mm,number,10 \u00b1 0.2,Length",
                "still,mm,number,1,Still",
                "wide,,choice yes|no,no,Whether it is wide",
                "```",
                "",
                "```csv readings taken",
                "gap [mm]",
                "4",
                "6",
                "```",
                "",
                "```java",
                "double tripled = 3 * length; // mm",
                "double middle = taken.doubleColumn(\"gap\").mean(); // mm",
                "double gap = halfwidth.localizer.uncertainty.Estimate.exact(middle).value() + 0 *"
                        + " still; // mm",
                "double sum = tripled + gap + (wide.equals(\"yes\") ? 1 : 0); // mm",
                "double ofPage = sum; // mm",
                "double own = 0.5; // mm",
                "```",
                "",
                "```csv results",
                "name,unit,decimals,uncertainty,label",
                "sum,mm,2,,The sum",
                "ofPage,mm,2,own,The same with an uncertainty of the page's",
                "```");
    }

    private Program run(String... more) {
        List<String> all =
                new java.util.ArrayList<>(
                        List.of("run", "trial/sum", "--notebooks", scratch.path("notebooks")));
        all.addAll(List.of(more));
        return Program.here(all.toArray(String[]::new));
    }

    private static String joined(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void namesUncertaintyLargestContributionAndTrace() {
        Program ran = run("--budget", "--uncertainty", "taken.gap=1.131370849898476");
        Expect.status(0, ran);
        String said = joined(ran.out());
        // Two readings of u = 1.6/\u221a2 have a mean of u = 0.8.
        assertTrue(said.contains("The sum 35.00 mm \u00b1 1.0 taken.gap (64 %)"), ran.out());
        assertTrue(said.contains("the page's own: \u00b1 0.50"), ran.out());
        assertTrue(said.contains("length 3 adds 0.60 mm"), ran.out());
        assertTrue(said.contains("also read, without moving it: still, wide"), ran.out());
        assertTrue(said.contains("methods Estimate.exact(double), Estimate.value()"), ran.out());
        assertTrue(said.contains("still no result"), ran.out());
        assertFalse(said.contains("DRAWS"), ran.out());
    }

    @Test
    void checksItByDraws() {
        Program ran = run("--draws", "4000");
        Expect.status(0, ran);
        assertTrue(ran.out().contains("DRAWS - 4000, normal"), ran.out());
        assertTrue(joined(ran.section("DRAWS")).contains("The sum"), ran.out());
        assertTrue(ran.section("DRAWS").contains("agrees"), ran.out());
    }

    @Test
    void refusesSoFewDrawsThatTheyTellNothing() {
        Program ran = run("--draws", "10");
        Expect.status(2, ran);
        assertTrue(
                ran.err().contains("10 draws must be a whole number from 1000 to 100000"),
                ran.err());
    }

    @Test
    void writesItIntoTheReviewersSheetWithLinksThatLead() throws Exception {
        Program ran = run("--out", scratch.path("out"));
        Expect.status(0, ran);
        Document review = parsed(scratch.text("out/review.html"));
        Set<String> ids = new HashSet<>();
        Set<String> links = new HashSet<>();
        NodeList all = review.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            ids.add("#" + element.getAttribute("id"));
            links.add(element.getAttribute("href"));
        }
        links.remove("");
        assertTrue(links.size() >= 5, links.toString());
        links.removeAll(ids);
        assertEquals(Set.of(), links, "links that lead nowhere");
        String text = joined(review.getDocumentElement().getTextContent());
        assertTrue(text.contains("u = 0.60 mm to first order, mostly from length (100 %)"), text);
        assertTrue(
                text.contains("Library methods: Estimate.exact(double), Estimate.value()."), text);
    }

    @Test
    void fillsInTheUncertaintyOfResultsWhereThePageStatesNone() {
        Expect.status(0, run("--out", scratch.path("out")));
        List<String> lines = scratch.text("out/results.csv").lines().toList();
        assertEquals("sum", lines.get(1).split(",")[0]);
        assertEquals(0.6, Double.parseDouble(lines.get(1).split(",")[3]), 1e-9);
        assertEquals("0.5", lines.get(2).split(",")[3], "the page's own");
    }

    @Test
    void realDataDoNotTakeTheUncertaintyOfTheExample() {
        Program ran = run("--budget", "--set", "length=10", "--set", "still=1", "--set", "wide=no");
        assertTrue(ran.out().contains("No input has one."), ran.out());
    }

    @Test
    void saysWhichDecisionFallsOtherwise() {
        scratch.file(
                "notebooks/trial/sum.md",
                "# Sum",
                "",
                "```csv inputs",
                "name,unit,kind,example,label",
                "length,mm,number,10 \u00b1 0.2,Length",
                "```",
                "",
                "```java",
                "double sum = length > 10.1 ? 0 : length; // mm",
                "```",
                "",
                "```csv results",
                "name,unit,decimals,label",
                "sum,mm,2,The sum",
                "```");
        Program ran = run("--budget");
        String said = joined(ran.out());
        assertTrue(said.contains("The sum 10.00 mm not to first order"), ran.out());
        assertTrue(
                said.contains("a decision falls otherwise (line 9 at +0.2 mm), so first order"),
                ran.out());
    }

    private static Document parsed(String html) throws Exception {
        String text = html.replace("<!DOCTYPE html>", "");
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }
}
