package halfwidth.job;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * What the bytes of a journal say.
 *
 * @param lines those that are as they were written, in order
 * @param warnings what is wrong before the end, by line of the file: altered, removed, added
 * @param whole how many bytes, from the start, are whole; what follows was torn off while it was
 *     written, and was never acknowledged
 * @param chain what the next line is tied to
 * @param missing where it ended once, of those places that it does not reach any more
 */
record JournalText(
        List<Line> lines,
        List<String> warnings,
        int whole,
        String chain,
        List<JournalEnd> missing) {
    /** The first line of a journal. */
    static final String HEADER = String.join(",", LineText.COLUMNS) + ",check,chain";

    private static final String MARK = "\ufeff";

    /**
     * Reads a journal, with either line end and with or without a byte order mark.
     *
     * @param ends where it is known to have ended once
     */
    static JournalText read(byte[] bytes, List<JournalEnd> ends) {
        List<RawLine> raw = RawLine.cut(bytes);
        JournalText text = tied(bytes, raw);
        List<JournalEnd> missing =
                ends.stream().filter(end -> !text.reaches(end, bytes, raw)).toList();
        List<String> warnings = new ArrayList<>(text.warnings);
        missing.forEach(end -> warnings.add(end.missing()));
        return new JournalText(text.lines, List.copyOf(warnings), text.whole, text.chain, missing);
    }

    /** From the last line on, since it is mostly that. */
    private boolean reaches(JournalEnd end, byte[] bytes, List<RawLine> raw) {
        for (int i = raw.size() - 1; i > 0; i--) {
            RawLine line = raw.get(i);
            if (line.next() <= whole && line.all(bytes).endsWith(end.tie())) {
                return true;
            }
        }
        return false;
    }

    private static JournalText tied(byte[] bytes, List<RawLine> raw) {
        if (raw.isEmpty() || !raw.get(0).ended() && isTornStart(raw.get(0), bytes)) {
            return new JournalText(List.of(), List.of(), 0, Chain.START, List.of());
        }
        List<String> warnings = new ArrayList<>();
        String first = raw.get(0).all(bytes);
        if (!first.equals(HEADER) && !first.equals(MARK + HEADER)) {
            warnings.add("line 1 is not the heading of a journal any more");
        }
        Ties links = new Ties(bytes, warnings);
        raw.subList(1, raw.size()).forEach(links::add);
        return links.read(raw.get(0).next());
    }

    /** Whether no more than that is on disk of the first write: part of it, or its length alone. */
    private static boolean isTornStart(RawLine first, byte[] bytes) {
        return HEADER.startsWith(first.all(bytes)) || OwnFile.isBlank(bytes);
    }

    /** Ties line to line, and remembers those that are intact. */
    private static final class Ties {
        private final byte[] bytes;
        private final List<String> warnings;
        private final Chain chain = new Chain();
        private final LineReader reader = new LineReader();
        private final List<RawLine> intact = new ArrayList<>();
        private final List<RawLine> broken = new ArrayList<>();

        /** The line before; null at the start, and where it cannot be read. */
        private RawLine before;

        /** What the next line may be tied to as well. */
        private Set<String> others = Set.of(Chain.START);

        Ties(byte[] bytes, List<String> warnings) {
            this.bytes = bytes;
            this.warnings = warnings;
        }

        void add(RawLine line) {
            if (!line.intact(bytes, chain)) {
                broken.add(line);
                before = null;
                others = Set.of();
                return;
            }
            boolean follows = before != null && line.follows(before, bytes, chain);
            others = follows ? Set.of() : compared(line);
            before = line;
            intact.add(line);
        }

        /** What the line's tie would be if it was altered; none if it ties the line. */
        private Set<String> compared(RawLine line) {
            Set<String> ties = new HashSet<>(others);
            if (before != null) {
                ties.add(Chain.last(before.end(bytes)));
            }
            String end = line.end(bytes);
            String own = end.substring(1, end.lastIndexOf(','));
            Set<String> expected =
                    ties.stream().map(tie -> chain.tied(tie, own)).collect(Collectors.toSet());
            if (expected.isEmpty() || expected.contains(Chain.last(end))) {
                return Set.of();
            }
            warnings.add(
                    "line "
                            + line.place()
                            + " does not follow the line before it: one was removed, added or moved"
                            + " there");
            return expected;
        }

        JournalText read(int start) {
            List<Line> lines = lines();
            int last = lines.size();
            while (last > 0 && !isComplete(last, lines.get(last - 1))) {
                last--;
            }
            int whole = last == 0 ? start : intact.get(last - 1).next();
            for (RawLine line : broken) {
                if (line.ended()) {
                    warnings.add("line " + line.place() + " was altered and is left out");
                    whole = Math.max(whole, line.next());
                }
            }
            String end = last == 0 ? Chain.START : intact.get(last - 1).end(bytes);
            return new JournalText(
                    List.copyOf(lines.subList(0, last)),
                    List.copyOf(warnings),
                    whole,
                    Chain.last(end),
                    List.of());
        }

        /** Whether all lines that belong to the one before {@code last} are in the file. */
        private boolean isComplete(int last, Line line) {
            int place = intact.get(last - 1).place();
            long altered = broken.stream().filter(l -> l.ended() && l.place() > place).count();
            return line.more() <= altered;
        }

        private List<Line> lines() {
            ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length);
            intact.forEach(line -> line.write(bytes, out));
            String text = out.toString(StandardCharsets.UTF_8);
            List<Line> lines = new ArrayList<>(intact.size());
            try (CSVParser parser = CSVParser.parse(text, CSVFormat.DEFAULT)) {
                for (CSVRecord cells : parser) {
                    if (lines.size() == intact.size()) {
                        throw notOneByOne();
                    }
                    lines.add(read(cells, intact.get(lines.size())));
                }
            } catch (IOException | UncheckedIOException e) {
                throw new JobRefused("the journal is no CSV that this program wrote: " + e);
            }
            if (lines.size() != intact.size()) {
                throw notOneByOne();
            }
            return lines;
        }

        private static JobRefused notOneByOne() {
            return new JobRefused(
                    "the journal is no CSV that this program wrote: a quotation goes over the end"
                            + " of a line, or a line has another within");
        }

        private Line read(CSVRecord cells, RawLine line) {
            try {
                return reader.read(cells);
            } catch (JobRefused refusal) {
                throw new JobRefused("line " + line.place() + " " + refusal.getMessage());
            }
        }
    }
}
