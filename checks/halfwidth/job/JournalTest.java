package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.approval.Role;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a journal's file keeps, and what becomes of it in the hands of others. */
class JournalTest {
    private static final Visit VISIT = new Visit("sweep/width", "pair 3");

    @TempDir Path folder;
    private Path file;

    @BeforeEach
    void writeFourLines() {
        file = folder.resolve("journal.csv");
        try (Job job = Job.create(folder, Map.of())) {
            job.enter(JobPages.WIDTH, "pair 3", List.of(Change.to(Place.input("length"), "300 m")));
            job.enter(
                    JobPages.WIDTH,
                    "pair 3",
                    List.of(
                            Change.to(Place.cell("sweep", 1, "near"), "155 in the 150"),
                            Change.to(Place.cell("sweep", 2, "near"), "-0.155")));
            job.state(
                    new Fact.Noted(VISIT, "a \"lost\" mark,\nback\\slash\r\n\u00fc \u2212 \u00b0"));
        }
    }

    private List<Line> linesNow() {
        return Job.readOnly(folder).lines();
    }

    private void rewrite(String text) throws IOException {
        Files.writeString(file, text);
    }

    @Test
    void keepsEveryKindOfLine() {
        List<Fact> facts =
                List.of(
                        new Fact.Ran(
                                VISIT, new Outcome(Outcome.Word.WAITING, List.of("a", "b")), "f00"),
                        new Fact.Found(
                                VISIT,
                                new Finding("width", "4.0812", "\u00b0", "0.01", "met", "4.08")),
                        new Fact.Choice(VISIT, "taken", "pair 2"),
                        new Fact.Recorded(VISIT, "r.html", "abc", "2-ab"),
                        new Fact.Signed(
                                VISIT, "r.html", "abc", Role.CHECKED, "R. V,\nB.", "well,\nseen"),
                        new Fact.Despite(VISIT, "r.html", "R. V", "a limit,\nnot met", "in flight"),
                        new Fact.SentBack(VISIT, "line 4", "R. V", "2-ab", "which \"mark\"?"),
                        new Fact.Answered(VISIT, 9, "P. R", "mark 3"),
                        new Fact.Acknowledged(VISIT, "R. V", "d1f"),
                        new Fact.Noted(new Visit("", ""), "a note on the whole job"));
        try (Job job = Job.open(folder)) {
            facts.forEach(job::state);
        }
        List<Fact> kept = linesNow().stream().map(Line::fact).toList();
        assertEquals(facts, kept.subList(4, kept.size()));
    }

    /** As lines were written before a signer's name had its own place. */
    @Test
    void readsAnOldSignatureAsByWhomItsLineIs() throws IOException {
        String cells =
                "5,0,2026-06-12T10:31:00Z,\"A. Example, Jr\",checked,sweep/width,pair 3,r.html,"
                        + ",,,abc,,,,seen";
        String text = Files.readString(file).stripTrailing();
        byte[] bytes = cells.getBytes(StandardCharsets.UTF_8);
        rewrite(text + "\n" + cells + new Chain().end(Chain.last(text), bytes) + "\n");
        assertEquals(
                new Fact.Signed(VISIT, "r.html", "abc", Role.CHECKED, "A. Example, Jr", "seen"),
                linesNow().get(4).fact());
        assertEquals(List.of(), Job.readOnly(folder).warnings());
    }

    @Test
    void keepsAnEntryInOneLineOfTheFile() throws IOException {
        assertEquals(5, Files.readAllLines(file).size(), "a header and four lines");
        Fact.Noted note = (Fact.Noted) linesNow().get(3).fact();
        assertEquals("a \"lost\" mark,\nback\\slash\r\n\u00fc \u2212 \u00b0", note.text());
    }

    @Test
    void readsTheSameWithOtherLineEnds() throws IOException {
        List<Line> before = linesNow();
        rewrite(Files.readString(file).replace("\n", "\r\n"));
        assertEquals(before, linesNow());
        assertEquals(List.of(), Job.readOnly(folder).warnings());
        try (Job job = Job.open(folder)) {
            job.state(new Fact.Noted(VISIT, "after"));
        }
        assertEquals(5, linesNow().size());
        assertEquals(List.of(), Job.readOnly(folder).warnings());
    }

    @Test
    void readsTheSameWithAByteOrderMarkAndWithoutTheLastLineEnd() throws IOException {
        List<Line> before = linesNow();
        rewrite("\ufeff" + Files.readString(file).stripTrailing());
        assertEquals(before, linesNow());
        try (Job job = Job.open(folder)) {
            assertEquals(List.of(), job.warnings());
            job.state(new Fact.Noted(VISIT, "after"));
        }
        assertEquals(5, linesNow().size());
        assertEquals(List.of(), Job.readOnly(folder).warnings());
    }

    @Test
    void noticesARemovedLine() throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.remove(1);
        rewrite(String.join("\n", lines) + "\n");
        assertEquals(
                List.of(
                        "line 2 does not follow the line before it: one was removed, added or moved"
                                + " there"),
                Job.readOnly(folder).warnings());
        assertEquals(List.of(2L, 3L, 4L), linesNow().stream().map(Line::number).toList());
    }

    @Test
    void noticesAnAlteredLineAndLeavesItOut() throws IOException {
        rewrite(Files.readString(file).replace("300 m", "301 m"));
        assertEquals(
                List.of("line 2 was altered and is left out"), Job.readOnly(folder).warnings());
        try (Job job = Job.open(folder)) {
            job.state(new Fact.Noted(VISIT, "work goes on"));
        }
        assertEquals(List.of(2L, 3L, 4L, 5L), linesNow().stream().map(Line::number).toList());
        assertEquals(1, Job.readOnly(folder).warnings().size(), "and it is still said");
    }

    @Test
    void noticesLinesThatChangedPlaces() throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        lines.add(lines.remove(1));
        rewrite(String.join("\n", lines) + "\n");
        assertTrue(!Job.readOnly(folder).warnings().isEmpty());
    }

    @Test
    void setsATornEndAsideAndLosesNothingBeforeIt() throws IOException {
        String ends = Files.readString(folder.resolve("journal-end.csv"));
        try (Job job = Job.open(folder)) {
            job.state(new Fact.Noted(VISIT, "never acknowledged"));
        }
        Files.writeString(folder.resolve("journal-end.csv"), ends);
        byte[] whole = Files.readAllBytes(file);
        byte[] torn = Arrays.copyOf(whole, whole.length - 20);
        Files.write(file, torn);
        assertEquals(4, linesNow().size());
        try (Job job = Job.open(folder)) {
            String said = job.warnings().get(0);
            assertTrue(said.contains("torn off") && said.contains("journal-torn-1.txt"), said);
            job.state(new Fact.Noted(VISIT, "after"));
        }
        byte[] aside = Files.readAllBytes(folder.resolve("journal-torn-1.txt"));
        String file5 = new String(whole, StandardCharsets.UTF_8).lines().toList().get(5);
        assertEquals(
                file5.substring(0, file5.length() - 19), new String(aside, StandardCharsets.UTF_8));
        assertEquals(List.of(1L, 2L, 3L, 4L, 5L), linesNow().stream().map(Line::number).toList());
        assertEquals(List.of(), Job.readOnly(folder).warnings(), "said once, when it was found");
    }

    @Test
    void setsAHalfBlockAside() throws IOException {
        List<String> lines = Files.readAllLines(file);
        rewrite(String.join("\n", lines.subList(0, 3)) + "\n");
        assertEquals(1, linesNow().size(), "the first cell of a block of two is no block");
        try (Job job = Job.open(folder)) {
            assertEquals(2, job.warnings().size(), "the block, and that it had been on disk");
            assertEquals(1, job.last());
        }
        assertEquals(lines.get(2) + "\n", Files.readString(folder.resolve("journal-torn-1.txt")));
    }

    /** Whole lines at the end leave nothing in the journal itself to notice them by. */
    @Test
    void noticesThatItsEndWasCutOffUntilItIsPutBack() throws IOException {
        String whole = Files.readString(file);
        List<String> lines = whole.lines().toList();
        rewrite(String.join("\n", lines.subList(0, 4)) + "\n");
        assertEndIsMissing(4, Job.readOnly(folder));
        try (Job job = Job.open(folder)) {
            assertEndIsMissing(4, job);
            assertEquals(3, job.last());
            job.state(new Fact.Noted(VISIT, "work goes on"));
        }
        assertEndIsMissing(4, Job.readOnly(folder));
        try (Job job = Job.open(folder)) {
            job.state(new Fact.Noted(VISIT, "and on"));
        }
        assertEndIsMissing(4, Job.readOnly(folder));
        rewrite(whole);
        assertEndIsMissing(5, Job.readOnly(folder));
        Files.delete(folder.resolve("journal-end.csv"));
        assertEquals(List.of(), Job.readOnly(folder).warnings());
    }

    private static void assertEndIsMissing(int line, Job job) {
        assertEquals(1, job.warnings().size(), job.warnings().toString());
        String said = job.warnings().get(0);
        assertTrue(said.startsWith("line " + line + " was on disk and is not in"), said);
    }

    @Test
    void noticesThatItWasDeletedOrEmptied() throws IOException {
        rewrite("");
        assertEndIsMissing(4, Job.readOnly(folder));
        Files.delete(file);
        assertEndIsMissing(4, Job.readOnly(folder));
    }

    @Test
    void saysThatATornBlockHadBeenOnDisk() throws IOException {
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, whole.length - 20));
        try (Job job = Job.open(folder)) {
            assertEquals(2, job.warnings().size(), job.warnings().toString());
            assertTrue(
                    job.warnings().get(1).startsWith("the end of journal.csv was torn off; its"));
        }
    }

    /** Killed between a line and the note of it, or with the note half written. */
    @Test
    void takesAnEndThatIsBehindOrUnreadableForNoAlarm() throws IOException {
        Path ends = folder.resolve("journal-end.csv");
        String before = Files.readString(ends);
        try (Job job = Job.open(folder)) {
            job.state(new Fact.Noted(VISIT, "after"));
        }
        for (int length = 0; length <= before.length(); length++) {
            Files.writeString(ends, before.substring(0, length));
            assertEquals(List.of(), Job.readOnly(folder).warnings());
        }
        Files.delete(ends);
        Files.createDirectory(ends);
        try (Job job = Job.open(folder)) {
            job.state(new Fact.Noted(VISIT, "is kept all the same"));
        }
        assertEquals(6, linesNow().size());
        assertEquals(List.of(), Job.readOnly(folder).warnings());
    }

    @Test
    void startsAnewWhereTheFirstWriteWasTorn() throws IOException {
        rewrite("number,mo");
        Files.delete(folder.resolve("journal-end.csv"));
        try (Job job = Job.open(folder)) {
            assertEquals(0, job.last());
            job.undo(Optional.empty());
            job.state(new Fact.Noted(VISIT, "first"));
        }
        assertEquals(1, linesNow().size());
    }
}
