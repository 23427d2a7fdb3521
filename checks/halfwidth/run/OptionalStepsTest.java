package halfwidth.run;

import static halfwidth.run.Bench.at;
import static halfwidth.run.Bench.page;
import static halfwidth.run.Bench.realAt;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What becomes of steps that need an optional input that is left blank. */
class OptionalStepsTest {
    private static final Script SCRIPT =
            page(
                    List.of("spacing", "inUse"),
                    """
                    double twice = 2 * spacing;
                    double off = inUse - spacing;
                    double worse = 2 * off;
                    List<Double> all = new ArrayList<>(List.of(twice));
                    all.add(off);
                    double chosen = spacing;
                    chosen = inUse;
                    double sum = chosen + all.size();
                    """);

    private static Bench bench;

    @BeforeAll
    static void open() {
        bench = new Bench(Budget.USUAL);
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    private static Run run(Map<String, java.io.Serializable> given) {
        return bench.run(SCRIPT, new Values(given, true, Set.of("inUse")));
    }

    @Test
    void theyAreLeftOutAndSayForWhat() {
        Run run = run(Map.of("spacing", 3.0));
        Outcome skipped = new Outcome.Skipped(List.of("inUse"));
        assertEquals(6, realAt(run, 10));
        assertEquals(skipped, at(run, 11));
        assertEquals(skipped, at(run, 12));
        assertEquals(skipped, at(run, 14));
    }

    @Test
    void whatTheyWouldHaveChangedStaysAsItWas() {
        assertEquals(3 + 1, realAt(run(Map.of("spacing", 3.0)), 17));
        assertEquals(4 + 2, realAt(run(Map.of("spacing", 3.0, "inUse", 4.0)), 17));
    }

    @Test
    void whereSomethingElseIsMissingTheyWaitForThatAlone() {
        Run run = run(Map.of());
        assertEquals(new Outcome.Waiting(List.of("spacing")), at(run, 11));
        assertEquals(new Outcome.Waiting(List.of("spacing")), at(run, 17));
    }
}
