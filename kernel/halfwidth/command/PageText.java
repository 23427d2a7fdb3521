package halfwidth.command;

import halfwidth.adapt.AdaptedPages;
import halfwidth.adapt.Difference;
import halfwidth.approval.PageDifference;
import halfwidth.record.ReadRecord;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which text of its page a record was made with.
 *
 * @param shipped whether it is the page that this version ships
 * @param words whose text it is
 * @param difference what an adapted page has otherwise than the shipped one
 * @param lines the lines that differ from the page that is shipped, a few of them
 */
record PageText(
        boolean shipped, String words, Optional<PageDifference> difference, List<String> lines) {
    /** Somebody else wrote the page: it must not fill the screen. */
    private static final int MOST_LINES = 12;

    private static final int LONGEST_LINE = 100;
    private static final int LONGEST_WORDS = 200;

    /**
     * Compares a record's page with the one that is shipped.
     *
     * @param notebooks the folder of the shipped pages, if it was found
     */
    static PageText of(ReadRecord record, Optional<Path> notebooks) {
        String name = record.visit().page();
        String text = record.filled().page().text();
        Path folder = notebooks.orElse(Path.of("notebooks"));
        Optional<PageDifference> difference = AdaptedPages.difference(folder, name, text);
        if (difference.isEmpty()) {
            return new PageText(
                    true, "the page as shipped with this version", difference, List.of());
        }
        String words =
                notebooks.isPresent()
                        ? cut(difference.get().words(), LONGEST_WORDS)
                        : "no shipped pages were found to compare it with";
        List<String> lines =
                AdaptedPages.compared(folder, name, text)
                        .map(PageText::differing)
                        .orElse(List.of());
        return record.saysShipped()
                ? new PageText(
                        false,
                        "the page as shipped with Halfwidth %s, by what it says, which is not this version's: %s"
                                .formatted(record.about().get("program"), words),
                        Optional.empty(),
                        lines)
                : new PageText(false, "an adapted page: " + words, difference, lines);
    }

    private static List<String> differing(Difference difference) {
        List<String> lines = new ArrayList<>();
        for (Difference.Row row : difference.rows()) {
            if (row.kind() != Difference.Kind.KEPT) {
                put(lines, "- ", row.shipped());
                put(lines, "+ ", row.adapted());
            }
        }
        if (lines.size() <= MOST_LINES) {
            return lines;
        }
        int more = lines.size() - MOST_LINES;
        List<String> few = new ArrayList<>(lines.subList(0, MOST_LINES));
        few.add("and " + more + " lines more; compare the page texts for those");
        return few;
    }

    private static void put(List<String> lines, String mark, Difference.Side side) {
        if (side.line() > 0) {
            lines.add(mark + side.line() + ": " + cut(side.text(), LONGEST_LINE));
        }
    }

    private static String cut(String text, int most) {
        return text.length() > most ? text.substring(0, most) + "\u2026" : text;
    }
}
