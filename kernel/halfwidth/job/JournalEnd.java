package halfwidth.job;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where a journal ended once.
 *
 * @param number the number of its last line then
 * @param tie the check at the end of that line
 */
record JournalEnd(long number, String tie) {
    static final String HEADER = "number,chain,check\n";

    /** Stands in the place of a number; older programs pass over such a line. */
    private static final String HEADING = "heading";

    /** The ends that a text tells of; a line of it that is not as it was written tells of none. */
    static List<JournalEnd> read(String text) {
        return text.lines()
                .map(line -> line.split(","))
                .filter(cells -> cells.length == 3 && isIntact(cells))
                .map(cells -> new JournalEnd(Long.parseLong(cells[0]), cells[1]))
                .toList();
    }

    private static boolean isIntact(String[] cells) {
        return cells[0].matches("\\d{1,18}") && cells[2].equals(check(cells[0] + "," + cells[1]));
    }

    /**
     * The digest of the heading that a text tells of; a line of it that is not as it was written
     * tells of none.
     */
    static Optional<String> heading(String text) {
        return text.lines()
                .map(line -> line.split(","))
                .filter(cells -> cells.length == 3 && cells[0].equals(HEADING))
                .filter(cells -> cells[2].equals(check(cells[0] + "," + cells[1])))
                .map(cells -> cells[1])
                .findFirst();
    }

    /** A text that tells of these ends, and of the digest of the heading. */
    static String write(List<JournalEnd> ends, String heading) {
        Stream<String> lines = ends.stream().map(end -> end.number + "," + end.tie);
        return Stream.concat(lines, Stream.of(HEADING + "," + heading))
                .map(cells -> cells + "," + check(cells) + "\n")
                .collect(Collectors.joining("", HEADER, ""));
    }

    private static String check(String cells) {
        byte[] bytes = cells.getBytes(StandardCharsets.UTF_8);
        return new Chain().own(bytes, 0, bytes.length);
    }

    /** What is to be said where the journal has no such line any more. */
    String missing() {
        return "line "
                + number
                + " was on disk and is not in journal.csv any more: its end was cut off, or an"
                + " older copy took its place. Put the newer one back; or, once you know why,"
                + " delete journal-end.csv";
    }
}
