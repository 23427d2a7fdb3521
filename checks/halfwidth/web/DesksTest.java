package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Budget;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Workshop;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which pages keep a worker JVM, each of which takes some 250 MB. */
class DesksTest {
    private static Page page(int number) {
        String name = "trial/page-" + number;
        return Pages.parse(
                name,
                Path.of(name + ".md"),
                String.join(
                        "\n",
                        "# Trial",
                        "```java",
                        "double sum = 1 + " + number + "; // 1",
                        "```",
                        "",
                        "```csv results",
                        "name,unit,decimals,label",
                        "sum,1,2,Sum",
                        "```"));
    }

    private static Run run(Desks desks, int number) {
        Page page = page(number);
        return desks.of(page.name()).run(Filled.example(page));
    }

    private static Set<ProcessHandle> workers() {
        return ProcessHandle.current()
                .children()
                .filter(ProcessHandle::isAlive)
                .collect(Collectors.toSet());
    }

    @Test
    void pagesThatRanLastKeepTheirWorkersAndTheOthersRestUntilTheyRun() {
        Set<ProcessHandle> before = new HashSet<>(workers());
        try (Workshop workshop = Workshop.withSpare(Budget.USUAL);
                Desks desks = new Desks(page -> workshop.open(Script.of(page)))) {
            List<Run> runs =
                    IntStream.range(0, desks.awake() + 2).mapToObj(i -> run(desks, i)).toList();
            desks.rest(Duration.ofHours(1));
            Set<ProcessHandle> now = workers();
            now.removeAll(before);
            assertTrue(now.size() <= desks.awake() + 1, now.size() + " workers, one to spare");
            assertSame(runs.get(0), run(desks, 0), "what it ran before needs no worker");
            assertEquals(
                    runs.get(0).steps(),
                    desks.of(page(0).name()).again(Filled.example(page(0))).steps(),
                    "and it runs again with another");
        }
    }

    @Test
    void aPageThatIsIdleForLongRests() {
        try (Workshop workshop = Workshop.withoutSpare(Budget.USUAL);
                Desks desks = new Desks(page -> workshop.open(Script.of(page)))) {
            run(desks, 0);
            desks.rest(Duration.ofHours(1));
            assertTrue(desks.of(page(0).name()).isAwake());
            desks.rest(Duration.ZERO);
            assertTrue(!desks.of(page(0).name()).isAwake());
        }
    }

    @Test
    void callsOfAPageAreLookedUpOnceForEachOfItsTexts() {
        Methods methods = new Methods();
        assertSame(methods.of(page(1), List.of()), methods.of(page(1), List.of()));
        assertTrue(methods.of(page(1), List.of()) != methods.of(page(2), List.of()));
    }
}
