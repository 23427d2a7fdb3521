package halfwidth.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.approval.Evidence;
import halfwidth.approval.Role;
import halfwidth.job.Change;
import halfwidth.job.Fingerprint;
import halfwidth.job.Job;
import halfwidth.job.Place;
import halfwidth.job.Visit;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Budget;
import halfwidth.run.OpenPage;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.Sheet;
import halfwidth.show.Stamp;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordTest {
    private static final Page PAGE =
            Pages.parse(
                    "trial/sine",
                    Path.of("trial/sine.md"),
                    """
                    # Sine & "more" <of it>

                    ```csv inputs
                    name,unit,kind,example,default,from,least,most,label
                    angle,\u00b0,number,30,,,0,90,Angle
                    taken,m,number,2,,a/b#c,0,10,Taken
                    ```

                    ```csv readings marks
                    at [m],what
                    1,"a, b"
                    ```

                    ```java
                    double sine = sin(toRadians(angle)); // 1
                    double scaled = taken * sine; // m
                    String first = marks.getString(0, "what");
                    ```

                    ```csv results
                    name,unit,decimals,most,source,label
                    sine,1,4,0.6,invented for this test,Sine
                    scaled,m,3,,,Scaled
                    first,,,,,First mark
                    ```
                    """);
    private static final Page ARRAY =
            Pages.parse(
                    "trial/array",
                    Path.of("trial/array.md"),
                    """
                    # Array

                    ```csv inputs
                    name,unit,kind,example,label
                    feeds,,array,fourteen-two-carrier,Array
                    ```

                    ```java
                    int elements = feeds.model().positions().size();
                    ```

                    ```csv results
                    name,unit,decimals,label
                    elements,1,0,Elements
                    ```
                    """);
    private static Workshop workshop;
    @TempDir private static Path folder;
    private static Path record;
    private static Job job;

    @BeforeAll
    static void writeARecord() {
        workshop =
                Workshop.withoutSpare(
                        new Budget(Duration.ofMinutes(2), 256, Budget.USUAL.outputBytes()));
        job = Job.create(folder.resolve("job"), Map.of("Station", "North Field"));
        job.enter(
                PAGE,
                "pair 3",
                List.of(
                        Change.to(Place.input("angle"), "30"),
                        Change.to(Place.input("taken"), "2.5"),
                        Change.to(Place.cell("marks", 1, "what"), "<x> & \"y\", z"),
                        Change.to(Place.cell("marks", 3, "at"), "2")));
        record = RecordFile.write(job, sheet(), "pair 3");
    }

    @AfterAll
    static void close() {
        workshop.close();
        job.close();
    }

    private static Sheet sheet() {
        return sheet(PAGE, "pair 3");
    }

    private static Sheet sheet(Page page, String visit) {
        Filled filled = job.filled(page, visit).filled();
        try (OpenPage open = workshop.open(Script.of(page))) {
            return new Sheet(
                    filled,
                    open.work(Values.of(filled)),
                    job.heading(),
                    Stamp.of(
                            "1.0",
                            ZonedDateTime.now(),
                            page.text().getBytes(StandardCharsets.UTF_8)));
        }
    }

    @Test
    void holdsAllThatIsNeededToDoItAgain() {
        Contents contents = Attached.read(RecordFile.bytes(record));
        assertEquals(PAGE.text(), contents.page());
        assertEquals(
                job.filled(PAGE, "pair 3").filled(), contents.filled(Pages::parseFromElsewhere));
        assertEquals("pair 3", contents.facts().get("visit"));
        assertEquals("1.0", contents.facts().get("program"));
    }

    @Test
    void comesOutAgainToTheLastDigit() {
        Verification verified = Verification.of(ReadRecord.of(record), workshop);
        assertEquals(List.of(), verified.differences());
        assertTrue(verified.holds());
        assertTrue(verified.exact());
        assertEquals(3, verified.results());
    }

    /** As on another machine: the array's file is not there, or another one under its name. */
    @Test
    void comesOutAgainWithoutTheFileOfItsArray() throws IOException {
        Path file = folder.resolve("own array.csv");
        Files.copy(Path.of("datasets/arrays/nine-uneven.csv"), file);
        job.enter(ARRAY, "", List.of(Change.to(Place.input("feeds"), file.toString())));
        Path written = RecordFile.write(job, sheet(ARRAY, ""), "");
        Files.copy(
                Path.of("datasets/arrays/ten-one-carrier.csv"),
                file,
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertEquals(List.of(), Verification.of(ReadRecord.of(written), workshop).differences());
        Files.delete(file);
        Verification verified = Verification.of(ReadRecord.of(written), workshop);
        assertTrue(verified.holds());
        assertTrue(Files.readString(RecordFile.csv(written)).contains("elements,9,"));
        assertTrue(verified.exact());
    }

    @Test
    void refusesARecordThatHoldsTheNameOfAnArrayAlone() throws IOException {
        job.enter(ARRAY, "by name", List.of(Change.to(Place.input("feeds"), "nine-uneven")));
        Path written = RecordFile.write(job, sheet(ARRAY, "by name"), "by name");
        String text = Files.readString(written).replace("id=\"array-feeds\"", "id=\"lost\"");
        Path edited = Files.writeString(folder.resolve("by-name.html"), text);
        String refusal =
                assertThrows(
                                RecordRefused.class,
                                () -> Verification.of(ReadRecord.of(edited), workshop))
                        .getMessage();
        assertTrue(refusal.contains("name of the array file nine-uneven, and not"), refusal);
    }

    @Test
    void writesItsResultsBeside() throws IOException {
        String csv = Files.readString(RecordFile.csv(record));
        assertTrue(csv.contains("scaled,1.25,m,"), csv);
    }

    @Test
    void isNeverWrittenOver() {
        Path other = RecordFile.write(job, sheet(), "pair 3");
        assertFalse(other.equals(record));
        assertTrue(Files.exists(record));
    }

    @Test
    void noticesAnyChangedByte() {
        byte[] file = RecordFile.bytes(record);
        assertTrue(Seal.holds(file));
        Random random = new Random(6);
        for (int i = 0; i < 3000; i++) {
            byte[] changed = file.clone();
            changed[random.nextInt(file.length)] ^= (byte) (1 + random.nextInt(255));
            assertFalse(Seal.holds(changed));
        }
    }

    @Test
    void readsTheSameAfterAMailProgramChangedItsLineEnds() throws IOException {
        String text = Files.readString(record);
        Path mailed = Files.writeString(folder.resolve("mailed.html"), text.replace("\n", "\r\n"));
        assertTrue(Verification.of(ReadRecord.of(mailed), workshop).holds());
    }

    @Test
    void tellsEachResultThatDoesNotComeOutAgain() throws IOException {
        String text = Files.readString(record).replaceFirst("scaled,1[.0-9]+,m", "scaled,1.26,m");
        Path edited = folder.resolve("edited.html");
        Files.writeString(edited, text);
        Verification verified = Verification.of(ReadRecord.of(edited), workshop);
        assertFalse(verified.record().sealed());
        assertEquals(
                1,
                verified.differences().stream()
                        .filter(d -> d.startsWith("scaled is 1.26 in the record and 1.2"))
                        .count(),
                verified.differences().toString());
        assertEquals(1, verified.differences().size());
    }

    @Test
    void tellsWhereTheValuesAreNotThoseThatWereRun() throws IOException {
        String text = Files.readString(record).replace("taken,,,2.5,", "taken,,,2.6,");
        Path edited = Files.writeString(folder.resolve("values.html"), text);
        List<String> differences = Verification.of(ReadRecord.of(edited), workshop).differences();
        assertTrue(differences.get(0).contains("not those that were run"), differences.toString());
        assertEquals(2, differences.size(), "and scaled");
    }

    /** Its fingerprint is that of programs which did not put uncertainties and reasons into it. */
    @Test
    void ofAnOlderProgramStillComesOutAgain() throws IOException {
        String made =
                PAGE.text()
                        + "angle:4:30.0\ntaken:3:2.5\nmarks:0:\n"
                        + ":0:\n:12:<x> & \"y\", z\n\n:0:\n:0:\n\n:3:2.0\n:0:\n\n";
        Map<String, String> about =
                Map.of(
                        "page", PAGE.name(),
                        "visit", "pair 3",
                        "made from", Fingerprint.of(made));
        Path old = folder.resolve("older.html");
        Files.writeString(old, RecordFile.html(sheet(), about, Map.of()));
        Verification verified = Verification.of(ReadRecord.of(old), workshop);
        assertEquals(List.of(), verified.differences());
        assertFalse(verified.record().saysShipped());
    }

    @Test
    void countsNumbersEqualThatDifferByTheirLastDigits() {
        assertTrue(Verification.isEqual("0.49999999999999994", "0.5"));
        assertFalse(Verification.isEqual("0.49999", "0.5"));
        assertFalse(Verification.isEqual("0", "1e-300"));
        assertFalse(Verification.isEqual("", "0"));
    }

    private static void sign(Path file, Role role, String by, String remark) {
        Evidence evidence =
                new SheetEvidence(
                                sheet(),
                                new Run(List.of(), List.of(), Map.of()),
                                job.reasons(new Visit(PAGE.name(), "pair 3")))
                        .evidence(true, Optional.empty());
        Signatures.sign(job, file, new Signing(role, by, remark, false, ""), evidence, PAGE);
    }

    @Test
    void saysWhoSignedAndThatItWasChangedSince() throws IOException {
        Path signed = RecordFile.write(job, sheet(), "pair 3");
        sign(signed, Role.PREPARED, "R. Viewer", "windy");
        Signatures.Signature first = Signatures.of(job, signed).get(0);
        assertEquals("windy", first.signed().remark());
        assertEquals("R. Viewer", first.signed().by());
        assertFalse(first.changed());
        assertTrue(Signatures.isAsWritten(job, signed));
        Files.writeString(signed, Files.readString(signed).replace("North Field", "South Field"));
        assertTrue(Signatures.of(job, signed).get(0).changed());
        assertFalse(Signatures.isAsWritten(job, signed));
        String refusal =
                assertThrows(RecordRefused.class, () -> sign(signed, Role.CHECKED, "R", ""))
                        .getMessage();
        assertTrue(refusal.contains("changed after it was written"), refusal);
    }

    @Test
    void signsNoneThatItsJobDoesNotKnow() throws IOException {
        Path foreign = Files.copy(record, record.resolveSibling("foreign.html"));
        assertFalse(Signatures.isKnown(job, foreign));
        assertTrue(Signatures.isKnown(job, record));
        String refusal =
                assertThrows(RecordRefused.class, () -> sign(foreign, Role.CHECKED, "R", ""))
                        .getMessage();
        assertTrue(refusal.contains("is not in the journal of its job"), refusal);
    }

    @Test
    void saysThatItCannotBeWrittenAndNotesNone() throws IOException {
        try (Job other = Job.create(folder.resolve("full"), Map.of())) {
            Files.writeString(folder.resolve("full/records"), "a file where the folder would be");
            String refusal =
                    assertThrows(
                                    RecordRefused.class,
                                    () -> RecordFile.write(other, sheet(), "pair 3"))
                            .getMessage();
            assertTrue(refusal.contains("records cannot be written"), refusal);
            assertEquals(0, other.last());
        }
    }

    @Test
    void refusesWhatIsNoRecord() throws IOException {
        Path other = folder.resolve("other.html");
        Files.write(other, "<p>not</p>".getBytes(StandardCharsets.UTF_8));
        String refusal =
                assertThrows(
                                RecordRefused.class,
                                () -> Verification.of(ReadRecord.of(other), workshop))
                        .getMessage();
        assertTrue(refusal.contains("no record"), refusal);
    }

    /** Each row: what is damaged in what is attached, and by what. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "name,row,column,typed,from; name,row",
                "name,row,column,typed,from; name,name,name,name,name",
                "angle,,,30,; angle",
                "page,trial/sine; page"
            })
    void aDamagedRecordIsSaidToBeOne(String piece, String damage) throws IOException {
        String text = Files.readString(record);
        assertTrue(text.contains(piece), piece);
        Path damaged = Files.writeString(folder.resolve("d.html"), text.replace(piece, damage));
        String refusal =
                assertThrows(
                                RecordRefused.class,
                                () -> Verification.of(ReadRecord.of(damaged), workshop))
                        .getMessage();
        assertTrue(refusal.contains("was changed, and cannot be read"), refusal);
    }

    @Test
    void namesAPageThatNoFileCouldBeCalled() {
        Contents contents = Attached.read(RecordFile.bytes(record));
        Contents odd =
                new Contents(
                        contents.about().replace("trial/sine", "a:b\u0000*"),
                        contents.page(),
                        contents.entries(),
                        contents.results(),
                        contents.arrays(),
                        contents.blanks(),
                        contents.heading());
        assertEquals("a-b--.md", odd.filled(Pages::parseFromElsewhere).page().file().toString());
    }

    @ParameterizedTest
    @CsvSource({"Infinity, 1", "1e999, 1", "1e999, 2e999", "-Infinity, Infinity", "NaN, 1"})
    void nothingEqualsANumberThatIsNone(String one, String other) {
        assertFalse(Verification.isEqual(one, other));
        assertFalse(Verification.isEqual(other, one));
    }

    @Test
    void wordsOutOfARecordStayOnOneLine() {
        assertEquals(
                "a\\n  unchanged\\u000d\\u001b[2J\\u202e",
                OneLine.of("a\n  unchanged\r\u001b[2J\u202e"));
        List<String> differences = List.of("x is 1\n  all 9 results equal");
        Verification forged = new Verification(null, 1, true, differences, null, null);
        assertEquals(List.of("x is 1\\n  all 9 results equal"), forged.differences());
    }
}
