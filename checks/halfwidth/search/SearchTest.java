package halfwidth.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.search.Hit.Kind;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class SearchTest {
    private static final String TEXT =
            """
            # Course width

            Sets the width.

            ## Études of the *half* width

            ```csv inputs
            name,unit,kind,example,label
            phaseConstant,1,number,2,Slope of the line
            widthNow,°,number,4,Width as found
            ```

            ```csv readings sweep
            azimuth [°],reading [DDM]
            1,0.1
            ```

            ```java
            double after = widthNow;
            ```

            ```csv results
            name,unit,decimals,label
            after,°,1,Width to expect
            ```
            """;

    private final Search search = Search.of(List.of(page("transmit/course-width", TEXT)));

    private static Page page(String name, String text) {
        return Pages.parse(name, Path.of("page.md"), text);
    }

    private List<Hit> find(String words) {
        return search.find(words);
    }

    @Test
    void theMostTellingComesFirst() {
        assertEquals(
                List.of(Kind.PAGE, Kind.HEADING, Kind.RESULT, Kind.FIELD),
                find("width").stream().map(Hit::kind).toList());
    }

    @Test
    void aWholeWordGoesBeforeAPartOfOne() {
        Page other = page("a/first", TEXT.replace("Course width", "Bandwidths"));
        Search both = Search.of(List.of(other, page("b/second", TEXT)));
        assertEquals(
                List.of("b/second", "a/first"),
                both.find("width").stream()
                        .filter(hit -> hit.kind() == Kind.PAGE)
                        .map(Hit::page)
                        .toList());
    }

    @Test
    void aHitTellsWhereItIs() {
        assertEquals(
                new Hit(
                        "transmit/course-width",
                        "Course width",
                        Kind.FIELD,
                        "widthNow",
                        "Width as found",
                        10),
                find("found").get(0));
        assertEquals(5, find("etudes").get(0).line());
        assertEquals("Études of the half width", find("etudes").get(0).text());
        assertEquals(14, find("azimuth").get(0).line());
    }

    @Test
    void neitherCaseNorAccentsMatter() {
        assertEquals(find("etudes"), find("ÉTUDES"));
        assertEquals(find("etudes"), find("E\u0301tudes"));
        assertEquals(1, find("etudes").size());
    }

    @Test
    void everyWordMustBeFound() {
        assertTrue(find("width nowhere").isEmpty());
        assertEquals("Width to expect", find("expect width").get(0).text());
    }

    @Test
    void aWordOfThePagesTitleNarrowsTheSearch() {
        assertEquals(
                List.of("phaseConstant"), find("course slope").stream().map(Hit::name).toList());
    }

    @Test
    void aVariableIsFoundWholeAndByItsParts() {
        assertEquals("phaseConstant", find("phaseconstant").get(0).name());
        assertEquals("phaseConstant", find("constant phase").get(0).name());
    }

    @Test
    void nothingAskedIsNothingFound() {
        assertTrue(find("").isEmpty());
        assertTrue(find(" .,- ").isEmpty());
    }

    @Test
    void theShippedPagesAreSearched() {
        Search shipped = Search.of(new Pages(Path.of("notebooks")).all());
        assertEquals("transmit/feed-trim", shipped.find("feed trim").get(0).page());
        assertFalse(shipped.find("velocity factor").isEmpty());
    }
}
