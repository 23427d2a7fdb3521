package halfwidth.decisions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.engine.ManyRuns;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.value.EntryRefused;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;

/** Many sets of readings put through one page, each judged. */
final class Fire {
    static final int SETS = 2000;

    /** A failing set is found again by its number, which seeds it. */
    private static final long SEED = 20081;

    private static final int SHOWN = 5;
    private static final int MOST_TRIES = 10;
    private static final Pages NOTEBOOKS = new Pages(Path.of("notebooks"));

    private final Page page;
    private final ManyRuns runs;

    private Fire(Page page) {
        this.page = page;
        this.runs = ManyRuns.of(Script.of(page));
    }

    static Fire at(String name) {
        return new Fire(NOTEBOOKS.find(name));
    }

    Page page() {
        return page;
    }

    Decided decide(Filled filled) {
        return Decided.of(filled, runs.run(Values.of(filled)));
    }

    /** One set of readings with what is known to be true of it. */
    record Round(Filled filled, Function<Decided, String> oracle) {}

    /**
     * Fires.
     *
     * @param sets how many reach the page
     * @param draw makes a set; one whose entries are refused when they are typed is drawn again
     * @return disagreements in words, none if all is well
     */
    List<String> rounds(int sets, Function<Random, Round> draw) {
        List<String> disagreements = new ArrayList<>();
        int refusedWhenTyped = 0;
        int refusedByPage = 0;
        int decidedSets = 0;
        for (int i = 0; decidedSets < sets && i < MOST_TRIES * sets; i++) {
            Round round;
            try {
                round = draw.apply(new Random(SEED + i));
            } catch (EntryRefused refused) {
                refusedWhenTyped++;
                continue;
            }
            decidedSets++;
            Decided decided = decide(round.filled());
            refusedByPage += decided.refuses() ? 1 : 0;
            String wrong = Everywhere.objection(decided);
            if (wrong.isEmpty()) {
                wrong = round.oracle().apply(decided);
            }
            if (!wrong.isEmpty()) {
                disagreements.add("set " + i + ": " + wrong + " " + typed(round.filled()));
            }
        }
        System.out.printf(
                "%-28s %5d sets, %4d of them refused by the page, %4d others when typed,"
                        + " %d disagreements%n",
                page.name(), decidedSets, refusedByPage, refusedWhenTyped, disagreements.size());
        assertEquals(sets, decidedSets, "sets that reach the page");
        return disagreements;
    }

    static String worst(List<String> disagreements) {
        return disagreements.size()
                + " disagreements, as in\n"
                + String.join(
                        "\n", disagreements.subList(0, Math.min(SHOWN, disagreements.size())));
    }

    private static String typed(Filled filled) {
        StringBuilder all = new StringBuilder();
        filled.entries().forEach((name, entry) -> all.append(name + "=" + entry.typed() + " "));
        filled.readings()
                .forEach(
                        (name, rows) -> {
                            all.append("\n  " + name + ":");
                            rows.forEach(
                                    row ->
                                            all.append(
                                                    row.stream()
                                                            .map(
                                                                    cell ->
                                                                            cell.map(e -> e.typed())
                                                                                    .orElse(""))
                                                            .toList()));
                        });
        return all.toString();
    }
}
