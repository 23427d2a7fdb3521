package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import halfwidth.job.Visit;
import halfwidth.page.Pages;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
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
        served = Served.scratch(Served::enterExamples);
    }

    @AfterAll
    static void end() {
        served.close();
    }

    /** One page in so many; all views are written by the same code, and all take minutes. */
    private static final int ONE_IN = Integer.getInteger("halfwidth.accessible", 24);

    static List<String> pages() {
        List<String> names = new Pages(Served.NOTEBOOKS).names();
        return IntStream.range(0, names.size())
                .filter(at -> at % ONE_IN == 0)
                .mapToObj(names::get)
                .toList();
    }

    /** What axe-core finds wrong with what the window shows. */
    private static List<String> violations(String where) {
        Results results = new AxeBuilder().withTags(RULES).analyze(Browser.driver());
        assertTrue(results.getPasses().size() > 10, where + " was looked at");
        return results.getViolations().stream().map(rule -> where + ": " + words(rule)).toList();
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
        List<String> found = new ArrayList<>();
        served.fill(page, "");
        found.addAll(violations("fill in"));
        open("/review", page);
        found.addAll(violations("review"));
        open("/adapt", page);
        Browser.until("document.querySelector('.item.java') !== null");
        Browser.run("document.querySelector('.item.java [data-how=replace]').click()");
        found.addAll(violations("adapt"));
        assertEquals(List.of(), found);
    }

    @Test
    void theListOfPagesAndWhatSearchFinds() {
        served.open("/");
        assertEquals(List.of(), violations("the list"));
        served.open("/find?words=cut");
        assertEquals(List.of(), violations("search"));
        open("/text", "transmit/feed-trim");
        assertEquals(List.of(), violations("text"));
    }
}
