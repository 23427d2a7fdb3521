package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.method.MethodSources;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Budget;
import halfwidth.run.InputQuantity;
import halfwidth.run.OpenPage;
import halfwidth.run.Propagation;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a reviewer gets to see of the composite page, whose numbers are computed row by row. */
class ReviewSheetTest {
    private static String review;

    @BeforeAll
    static void reviewsThePage() {
        Page page = new Pages(Path.of("notebooks")).find("monitor/composite");
        Filled filled = Filled.example(page);
        try (Workshop workshop = Workshop.withoutSpare(Budget.USUAL);
                OpenPage open = workshop.open(Script.of(page))) {
            Values values = Values.of(filled);
            Run run = open.work(values);
            byte[] text = page.text().getBytes(StandardCharsets.UTF_8);
            Sheet sheet =
                    new Sheet(filled, run, Map.of(), Stamp.of("test", ZonedDateTime.now(), text));
            MethodSources methods =
                    MethodSources.of(page, run.steps().stream().map(Run.Ran::step).toList());
            Propagation moved =
                    open.propagate(values, InputQuantity.of(filled), 0, Duration.ofMinutes(2));
            review = ReviewSheet.of(new Traced(sheet, moved, methods));
        }
    }

    private static Set<String> all(String pattern) {
        return Pattern.compile(pattern)
                .matcher(review)
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toSet());
    }

    @Test
    void everyLinkLeadsToAPlaceOnTheSheet() {
        Set<String> links = all("href=\"#([^\"]+)\"");
        links.removeAll(all("id=\"([^\"]+)\""));

        assertEquals(Set.of(), links);
        assertTrue(review.contains("href=\"#method-"), "methods are linked");
    }

    @Test
    void theFirstTheWorstAndTheLastRowStandWithTheirUnits() {
        // The readings are the example's: 0, -1, 2, -1 and -1 thousandths, one row for each pair.
        assertTrue(review.contains("For each row, of 5 rows"), review);
        assertTrue(review.contains("row 3, farthest from 0"), review);
        assertTrue(review.contains("<strong>0.002 DDM</strong>"), review);
        assertTrue(review.contains("row 5, the last"), review);
    }
}
