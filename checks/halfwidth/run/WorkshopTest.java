package halfwidth.run;

import static halfwidth.run.Bench.at;
import static halfwidth.run.Bench.page;
import static halfwidth.run.Bench.realAt;
import static halfwidth.run.Bench.values;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class WorkshopTest {
    private static Set<ProcessHandle> workers() {
        return ProcessHandle.current().children().collect(Collectors.toSet());
    }

    private static Set<ProcessHandle> workersSince(Set<ProcessHandle> before) {
        Set<ProcessHandle> now = workers();
        now.removeAll(before);
        return now;
    }

    @Test
    void keepsAWorkerForEachOpenPageAndOneToSpare() throws Exception {
        Set<ProcessHandle> before = workers();
        try (Workshop workshop = Workshop.withSpare(Budget.USUAL)) {
            try (OpenPage one = workshop.open(page(List.of("n"), "double a = n;"));
                    OpenPage two = workshop.open(page(List.of("n"), "double a = 2 * n;"))) {
                assertEquals(3, realAt(one.run(values("n", 3.0)), 10));
                assertEquals(6, realAt(two.run(values("n", 3.0)), 10));
                assertEquals(4, realAt(one.run(values("n", 4.0)), 10), "each keeps its page");
                assertEquals(3, workersSince(before).size());
            }
        }
        for (ProcessHandle left : workersSince(before)) {
            left.onExit().get(10, TimeUnit.SECONDS); // none stays when the workshop is closed
        }
    }

    @Test
    void pageWhoseWorkerIsKilledFromOutsideRunsAgain() {
        Set<ProcessHandle> before = workers();
        try (Workshop workshop = Workshop.withSpare(Budget.USUAL);
                OpenPage page = workshop.open(page(List.of("n"), "double a = n;"))) {
            assertEquals(3, realAt(page.run(values("n", 3.0)), 10));
            Set<ProcessHandle> killed = workersSince(before);
            killed.forEach(ProcessHandle::destroyForcibly);
            // The spare as well, which is not taken for a sound one once it is gone.
            killed.forEach(worker -> worker.onExit().join());
            assertEquals(4, realAt(page.run(values("n", 4.0)), 10));
        }
    }

    @Test
    void budgetIsTheCallersToSet() {
        Budget slow = new Budget(Duration.ofSeconds(20), 96, 20_000);
        try (Bench bench = new Bench(slow)) {
            Run run = bench.runUnbounded("Thread.sleep(4000);\ndouble a = 1;");
            assertInstanceOf(Outcome.Done.class, at(run, 10));
        }
        assertTrue(
                assertThrows(
                                IllegalArgumentException.class,
                                () -> new Budget(Duration.ofSeconds(1), 8, 20_000))
                        .getMessage()
                        .contains("at least 64 MB"));
    }
}
