package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import halfwidth.job.Visit;
import halfwidth.page.Pages;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every page in the three views, held against WCAG 2.2 AA as far as axe-core can tell. */
@ExtendWith(Browser.class)
@Tag("long")
class AccessibleTest {
    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");
    private static Served served;

    @BeforeAll
    static void serve() {
        served = Served.scratch();
    }

    @AfterAll
    static void end() {
        served.close();
    }

    static List<String> pages() {
        return new Pages(Served.NOTEBOOKS).names();
    }

    private static void holds(String where) {
        Results results = new AxeBuilder().withTags(RULES).analyze(Browser.driver());
        List<String> found = results.getViolations().stream().map(AccessibleTest::words).toList();
        assertEquals(List.of(), found, where);
        assertTrue(results.getPasses().size() > 10, where + " was looked at");
    }

    private static String words(Rule rule) {
        return rule.getId()
                + ": "
                + rule.getHelp()
                + rule.getNodes().stream().limit(3).map(node -> "\n  " + node.getHtml()).toList();
    }

    private static void open(String view, String page) {
        served.open(Address.of(view, new Visit(page, "")));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyViewOfAPage(String page) {
        served.fill(page, "");
        holds("fill " + page);
        open("/review", page);
        holds("review " + page);
        open("/adapt", page);
        Browser.until("document.querySelector('.item.java') !== null");
        Browser.run("document.querySelector('.item.java [data-how=replace]').click()");
        holds("adapt " + page);
    }

    @Test
    void theListOfPagesAndWhatSearchFinds() {
        served.open("/");
        holds("the list");
        served.open("/find?words=cut");
        holds("search");
        open("/text", "transmit/feed-trim");
        holds("text");
    }
}
