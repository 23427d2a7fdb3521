package halfwidth.notebooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.notebooks.MistakenPages.Finding;
import halfwidth.page.Pages;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Puts the mistakes of mistakes.csv one at a time into the pages, and counts what catches them.
 * Each is a page to compile and takes seconds, so every fortieth is made; with {@code
 * -Dhalfwidth.mistakes=1} all of them are, in several minutes.
 */
@Tag("long")
class SeededMistakesTest {
    private static final int ONE_IN = Integer.getInteger("halfwidth.mistakes", 40);

    private static List<Mistake> all;
    private static List<Finding> findings;

    @BeforeAll
    static void makesEveryMistake() throws IOException {
        all = Mistake.all();
        TreeMap<String, List<Mistake>> byPage =
                IntStream.iterate(0, i -> i < all.size(), i -> i + ONE_IN)
                        .mapToObj(all::get)
                        .collect(
                                Collectors.groupingBy(
                                        Mistake::page, TreeMap::new, Collectors.toList()));
        List<Map.Entry<String, List<Mistake>>> pages = List.copyOf(byPage.entrySet());
        findings =
                IntStream.range(0, 2)
                        .parallel()
                        .mapToObj(
                                half ->
                                        IntStream.range(0, pages.size())
                                                .filter(i -> i % 2 == half)
                                                .mapToObj(pages::get)
                                                .toList())
                        .flatMap(half -> run(half).stream())
                        .toList();
        print();
    }

    private static List<Finding> run(List<Map.Entry<String, List<Mistake>>> pages) {
        try (MistakenPages mistaken = new MistakenPages()) {
            return pages.stream()
                    .map(
                            page -> {
                                try {
                                    return mistaken.run(page.getKey(), page.getValue());
                                } catch (IOException unreadable) {
                                    throw new UncheckedIOException(unreadable);
                                }
                            })
                    .flatMap(Collection::stream)
                    .toList();
        }
    }

    private static void print() {
        Map<String, Map<Caught, Long>> table = new TreeMap<>();
        for (Finding finding : findings) {
            for (String row : List.of(finding.mistake().kind(), "~ all")) {
                table.computeIfAbsent(row, kind -> new EnumMap<>(Caught.class))
                        .merge(finding.caught(), 1L, Long::sum);
            }
            System.out.printf(
                    Locale.ROOT,
                    "%-5s %-8s %-28s %5.1f s  %s%n",
                    finding.mistake().id(),
                    finding.caught(),
                    finding.mistake().page(),
                    finding.seconds(),
                    finding.mistake().remark());
        }
        System.out.printf("%n%-10s", "mistakes");
        for (Caught caught : Caught.values()) {
            System.out.printf("%8s", caught);
        }
        table.forEach(
                (kind, counts) -> {
                    System.out.printf("%n%-10s", kind);
                    for (Caught caught : Caught.values()) {
                        System.out.printf("%8s", counts.getOrDefault(caught, 0L));
                    }
                });
        System.out.println();
    }

    @Test
    void areAHundredOverAllPages() {
        assertTrue(all.size() >= 100, "only " + all.size() + " mistakes");
        Set<String> ids = new HashSet<>();
        all.forEach(mistake -> assertTrue(ids.add(mistake.id()), "id twice"));
        Set<String> pages = new HashSet<>(new Pages(Path.of("notebooks")).names());
        all.forEach(mistake -> pages.remove(mistake.page()));
        assertEquals(Set.of(), pages, "pages without a mistake");
    }

    @Test
    void eachChangesAValueOrAUnit() {
        assertEquals("", listed(finding -> !finding.changed()));
    }

    @Test
    void moreThanNineInTenAreCaught() {
        long missed = findings.stream().filter(found -> found.caught() == Caught.NONE).count();

        assertTrue(missed < 0.1 * findings.size(), listed(found -> found.caught() == Caught.NONE));
    }

    @Test
    void everyMistakeInAUnitIsCaught() {
        assertEquals(
                "",
                listed(
                        found ->
                                found.mistake().kind().equals("unit")
                                        && found.caught() == Caught.NONE));
    }

    private static String listed(Predicate<Finding> wanted) {
        return findings.stream()
                .filter(wanted)
                .map(Finding::mistake)
                .map(mistake -> mistake.id() + " " + mistake.page() + ": " + mistake.remark())
                .collect(Collectors.joining("\n"));
    }
}
