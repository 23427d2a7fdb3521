package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Laws of the journal, for blocks of values that are entered, undone, torn and altered at will. */
class JournalLawsTest {
    private static final Visit VISIT = new Visit("sweep/width", "");

    private static final List<Place> PLACES =
            Stream.of("azimuth", "near", "mark")
                    .flatMap(
                            column ->
                                    IntStream.rangeClosed(1, 4)
                                            .mapToObj(row -> Place.cell("sweep", row, column)))
                    .toList();

    private static List<List<Change>> blocks(Draw draw) {
        return draw.list(1, 6, () -> block(draw));
    }

    private static List<Change> block(Draw draw) {
        return draw.some(1, 5, PLACES).stream()
                .map(place -> Change.to(place, draw.of("", "0", "0.25", "0.5")))
                .toList();
    }

    private static Path written(List<List<Change>> blocks) throws IOException {
        Path folder = Files.createTempDirectory("journal");
        try (Job job = Job.create(folder, Map.of())) {
            blocks.forEach(block -> job.enter(JobPages.WIDTH, "", block));
            // Not an entry of a block, so that there is a last line even if nothing changed.
            job.state(new Fact.Noted(VISIT, "end, \"quoted\""));
        }
        return folder;
    }

    private static void delete(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    @Law(tries = 60)
    void aStateIsTheFoldOfItsLines(Draw draw) throws IOException {
        List<List<Change>> blocks = blocks(draw);
        Path folder = written(blocks);
        Map<Place, String> expected = new java.util.HashMap<>();
        blocks.forEach(block -> block.forEach(c -> expected.put(c.place(), c.typed())));
        Job job = Job.readOnly(folder);
        for (Map.Entry<Place, String> cell : expected.entrySet()) {
            Line line = job.values(VISIT).get(cell.getKey());
            String typed = line == null ? "" : ((Fact.Value) line.fact()).typed();
            assertEquals(cell.getValue(), typed, cell.getKey().toString());
        }
        delete(folder);
    }

    @Law(tries = 60)
    void undoingIsAsIfItHadNotBeenEntered(Draw draw) throws IOException {
        List<List<Change>> blocks = blocks(draw);
        Path folder = Files.createTempDirectory("journal");
        try (Job job = Job.create(folder, Map.of())) {
            List<Object> states = new ArrayList<>(List.of(job.filled(JobPages.WIDTH, "").filled()));
            for (List<Change> block : blocks) {
                if (!job.enter(JobPages.WIDTH, "", block).isEmpty()) {
                    states.add(job.filled(JobPages.WIDTH, "").filled());
                }
            }
            for (int i = states.size() - 2; i >= 0; i--) {
                job.undo(Optional.empty());
                assertEquals(states.get(i), job.filled(JobPages.WIDTH, "").filled());
                Job again = Job.readOnly(folder);
                assertEquals(states.get(i), again.filled(JobPages.WIDTH, "").filled());
            }
        }
        delete(folder);
    }

    /** A write is torn at a byte, wherever that is: then whole blocks are there, or nothing. */
    @Law(tries = 12)
    void aTornJournalHoldsTheBlocksBeforeTheTear(Draw draw) throws IOException {
        List<List<Change>> blocks = blocks(draw);
        Path folder = written(blocks);
        byte[] whole = Files.readAllBytes(folder.resolve("journal.csv"));
        List<Line> lines = JournalText.read(whole, List.of()).lines();
        List<JournalEnd> end = EndFile.read(folder.resolve("journal.csv"));
        assertEquals(lines.size(), end.get(0).number());
        for (int length = 0; length <= whole.length; length++) {
            JournalText torn = JournalText.read(Arrays.copyOf(whole, length), List.of());
            int count = torn.lines().size();
            assertEquals(lines.subList(0, count), torn.lines());
            assertTrue(count == 0 || torn.lines().get(count - 1).more() == 0, "at " + length);
            assertEquals(List.of(), torn.warnings(), "a tear is no alteration, at " + length);
            assertTrue(torn.whole() <= length);
            assertEquals(wholeBlocks(whole, lines, length), count, "at " + length);
            JournalText after = JournalText.read(Arrays.copyOf(whole, length), end);
            assertEquals(count < lines.size(), !after.missing().isEmpty(), "at " + length);
        }
        delete(folder);
    }

    /**
     * How many lines belong to blocks that end before a tear. A block whose line end alone is torn
     * off is whole.
     */
    private static int wholeBlocks(byte[] whole, List<Line> lines, int length) {
        List<RawLine> raw = RawLine.cut(whole);
        int count = 0;
        for (int i = 0; i < lines.size(); i++) {
            boolean there = raw.get(i + 1).to() <= length;
            count = there && lines.get(i).more() == 0 ? i + 1 : count;
        }
        return count;
    }

    @Law(tries = 6)
    void anyChangedByteIsNoticed(Draw draw) throws IOException {
        List<List<Change>> blocks = blocks(draw);
        byte mask = (byte) draw.whole(Byte.MIN_VALUE, Byte.MAX_VALUE);
        Path folder = written(blocks);
        byte[] whole = Files.readAllBytes(folder.resolve("journal.csv"));
        JournalText before = JournalText.read(whole, List.of());
        for (int i = 0; i < whole.length; i++) {
            byte[] changed = whole.clone();
            changed[i] ^= mask == 0 ? 1 : mask;
            JournalText after = JournalText.read(changed, List.of());
            boolean noticed = !after.warnings().isEmpty() || after.whole() < changed.length;
            assertTrue(noticed, "byte " + i);
            assertTrue(before.lines().containsAll(after.lines()), "and never believed, byte " + i);
        }
        delete(folder);
    }
}
