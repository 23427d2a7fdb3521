package halfwidth.notebooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import halfwidth.page.Field;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.page.Result;
import halfwidth.value.Kind;
import halfwidth.value.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Where a page takes an input from another page's result, that result is there and fits. */
class LinkedPagesTest {
    private static final Map<String, Page> PAGES =
            new Pages(Path.of("notebooks"))
                    .all().stream().collect(Collectors.toMap(Page::name, Function.identity()));

    /**
     * An input and the result that it is taken from.
     *
     * @param page the page of the input
     * @param from as in {@code lines/phase-constant#bestPerInch}
     */
    private record Link(String page, Field field, String from) {
        String source() {
            return from.substring(0, from.indexOf('#'));
        }

        Optional<Result> result() {
            String name = from.substring(from.indexOf('#') + 1);
            return Optional.ofNullable(PAGES.get(source())).stream()
                    .flatMap(page -> page.results().stream())
                    .filter(result -> result.name().equals(name))
                    .findFirst();
        }

        @Override
        public String toString() {
            return page + "#" + field.name() + " from " + from;
        }
    }

    private static Stream<Link> links() {
        return PAGES.values().stream()
                .flatMap(
                        page ->
                                page.fields().stream()
                                        .filter(field -> field.from().isPresent())
                                        .map(f -> new Link(page.name(), f, f.from().get())));
    }

    @TestFactory
    Stream<DynamicTest> everyLinkNamesAResultThatFits() {
        assertFalse(links().findAny().isEmpty(), "there are links to check");
        return links().map(link -> dynamicTest(link.toString(), () -> assertFits(link)));
    }

    private static void assertFits(Link link) {
        assertTrue(link.result().isPresent(), "there is no such result");
        Result result = link.result().get();
        Kind kind = link.field().kind();
        if (kind instanceof Kind.Text || kind instanceof Kind.Choice) {
            assertEquals("", result.unit(), "words come from words");
            return;
        }
        assertFalse(kind instanceof Kind.Date || kind instanceof Kind.Array, "no page finds one");
        Unit found = Unit.of(result.unit());
        Unit wanted = Unit.of(link.field().unit());
        assertTrue(found.sameQuantity(wanted), found + " is not of the quantity of " + wanted);
        found.convert(1, wanted);
    }

    @Test
    void noPageNeedsItsOwnResults() {
        Map<String, TreeSet<String>> sources = new TreeMap<>();
        links().forEach(
                        link ->
                                sources.computeIfAbsent(link.page(), page -> new TreeSet<>())
                                        .add(link.source()));
        sources.keySet().forEach(page -> assertEquals(List.of(), ring(page, sources, List.of())));
    }

    /** The pages from this one back to one already passed; none if all ways end. */
    private static List<String> ring(
            String page, Map<String, TreeSet<String>> sources, List<String> passed) {
        List<String> way = new ArrayList<>(passed);
        way.add(page);
        if (passed.contains(page)) {
            return way.subList(way.indexOf(page), way.size());
        }
        return sources.getOrDefault(page, new TreeSet<>()).stream()
                .map(source -> ring(source, sources, way))
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElse(List.of());
    }
}
