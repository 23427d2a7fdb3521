package halfwidth.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Change;
import halfwidth.job.Job;
import halfwidth.job.Place;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.record.ShownSheet.How;
import halfwidth.run.Budget;
import halfwidth.run.OpenPage;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.OwnCopy;
import halfwidth.show.Sheet;
import halfwidth.show.Stamp;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a record shows is compared with what it comes to, even where it was sealed anew. */
class ShownSheetTest {
    private static final Page PAGE =
            Pages.parse(
                    "trial/width",
                    Path.of("trial/width.md"),
                    """
                    # Width

                    ```csv inputs
                    name,unit,kind,example,least,most,label
                    angle,°,number,30,0,90,Angle
                    ```

                    ```csv readings marks
                    at [m optional],what
                    1,"a, b"
                    ```

                    ```csv results
                    name,unit,decimals,most,source,label
                    sine,1,4,0.6125,invented for this test,Sine
                    ```

                    ```java
                    double sine = sin(toRadians(angle)); // 1
                    Plot drawn = Plot.of("A line").line("sine", new double[] {0, 1}, new double[] {0, sine});
                    ```

                    ```java check
                    assert sine > 0 : "arithmetic";
                    ```
                    """);
    private static Workshop workshop;
    @TempDir private static Path folder;
    private static Job job;
    private static Path record;

    @BeforeAll
    static void writeARecord() {
        workshop =
                Workshop.withoutSpare(
                        new Budget(Duration.ofMinutes(2), 256, Budget.USUAL.outputBytes()));
        job = Job.create(folder.resolve("job"), Map.of("Station", "North Field"));
        job.enter(
                PAGE,
                "",
                List.of(
                        Change.to(Place.input("angle"), "37"),
                        Change.to(Place.cell("marks", 1, "what"), "<x> & \"y\", z"),
                        Change.to(Place.cell("marks", 2, "at"), "2")));
        record = write(false);
    }

    @AfterAll
    static void close() {
        workshop.close();
        job.close();
    }

    private static Path write(boolean own) {
        Filled filled = job.filled(PAGE, "").filled();
        Map<String, String> heading = new LinkedHashMap<>(job.heading());
        heading.put("Prepared by", "P. Reparer");
        try (OpenPage open = workshop.open(Script.of(PAGE))) {
            Run run = open.work(Values.of(filled));
            Sheet plain = new Sheet(filled, run, heading, Stamp.now("1.0", PAGE));
            Sheet drawn = PaperPlots.drawn(plain, open);
            Run example = open.run(Values.of(Filled.example(PAGE)));
            Sheet sheet = own ? drawn.ofOwnCopy(OwnCopy.of(true, example, "")) : drawn;
            return RecordFile.write(job, sheet, "");
        }
    }

    private static ShownSheet shown(Path file) {
        return Verification.of(ReadRecord.of(file), workshop).shown();
    }

    private static Path sealed(String text) throws IOException {
        Path file = Files.createTempFile(folder, "edited", ".html");
        return Files.writeString(file, Forgery.sealed(text));
    }

    private static Path edited(String what, String otherwise) throws Exception {
        String text = Files.readString(record);
        int at = text.indexOf(what);
        assertTrue(at >= 0, what + " is shown");
        // The first place is on the sheet, before what is attached.
        assertTrue(at < Forgery.seal(text));
        String edited = text.substring(0, at) + otherwise + text.substring(at + what.length());
        assertNotEquals(text, edited);
        return sealed(edited);
    }

    @Test
    void isTheSameWhereNobodyAlteredIt() {
        assertEquals(new ShownSheet(How.SAME, List.of()), shown(record));
        assertTrue(Verification.of(ReadRecord.of(record), workshop).holds());
        assertEquals(How.SAME, shown(write(true)).how(), "of a job's own page as well");
    }

    /** Each row: what of the sheet, what stands there, what somebody put there instead. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "figure| 0.6018| 0.6118",
                "entry| >37<| >36<",
                "station| North Field| South Field",
                "signer| P. Reparer| R. Viewer",
                "limit| 0.6125| 0.7125",
                "verdict| >met<| >not met<",
                "script| </main>| <script>alert(1)</script></main>",
                "style| </style>| .blank{display:none}</style>",
                "policy| default-src &#39;none&#39;| default-src *",
                "journal| Journal before it| Journal behind it",
                "comment| <body>| <body><!-- -->",
            })
    void findsWhatWasAlteredUnderANewSeal(String what, String shows, String otherwise)
            throws Exception {
        Path edited = edited(shows, otherwise);
        Verification verified = Verification.of(ReadRecord.of(edited), workshop);
        assertTrue(verified.record().sealed(), "sealed anew");
        assertEquals(List.of(), verified.differences(), "what is attached is as it was");
        assertEquals(How.DIFFERENT, verified.shown().how(), what);
        assertFalse(verified.holds());
        String words = verified.shown().words().get(0);
        assertTrue(words.contains("where it comes to"), words);
        assertTrue(words.length() < 300, words);
    }

    @Test
    void findsAnotherPlotUnderANewSeal() throws Exception {
        Matcher picture =
                Pattern.compile("data:image/png;base64,([A-Za-z0-9+/=]+)")
                        .matcher(Files.readString(record));
        assertTrue(picture.find(), "it has a plot");
        String png = picture.group(1);
        int middle = png.length() / 2;
        char other = png.charAt(middle) == 'A' ? 'B' : 'A';
        String altered = png.substring(0, middle) + other + png.substring(middle + 1);
        assertEquals(How.DIFFERENT, shown(edited(png, altered)).how());
    }

    /** Whoever says that another system drew it still gets no more than "not compared". */
    @Test
    void saysThatPlotsOfAnotherSystemAreNotCompared() throws Exception {
        String text = Files.readString(record);
        String elsewhere = text.replace(Build.ofDrawing(), "21 Elsewhere arm 0123456789ab");
        assertNotEquals(text, elsewhere);
        assertEquals(How.SAME, shown(sealed(elsewhere)).how(), "if it draws in the same dots");
        elsewhere = elsewhere.replaceFirst("(base64,[^\"]{200})[^\"]", "$1_");
        ShownSheet moved = shown(sealed(elsewhere));
        assertEquals(How.PLOTS_LEFT_OUT, moved.how());
        assertTrue(moved.words().get(0).contains("21 Elsewhere"), moved.words().get(0));
        ShownSheet altered = shown(sealed(elsewhere.replaceFirst("0\\.6018", "0.6118")));
        assertEquals(How.DIFFERENT, altered.how(), "the rest is compared all the same");
    }

    @Test
    void saysThatASheetOfAnotherVersionIsNotCompared() throws Exception {
        String text = Files.readString(record);
        String older = text.replace("build," + Build.ofProgram(), "build,another");
        assertNotEquals(text, older);
        ShownSheet shown = shown(sealed(older));
        assertEquals(How.NOT_COMPARED, shown.how());
        String words = shown.words().get(0);
        assertTrue(words.contains("made by another version of the program (1.0)"), words);
        assertTrue(words.contains("cannot be compared"), words);
    }

    @Test
    void namesWhereTheJournalEndedBeforeIt() throws IOException {
        String text = Files.readString(record);
        List<String> lines = Files.readAllLines(folder.resolve("job/journal.csv"));
        String line =
                lines.stream()
                        .filter(one -> one.contains(record.getFileName().toString()))
                        .findFirst()
                        .orElseThrow();
        int number = Integer.parseInt(line.substring(0, line.indexOf(',')));
        String before = lines.get(number - 1);
        String link = before.substring(before.length() - 12);
        String words =
                "line %s, %s %s %s"
                        .formatted(
                                number - 1,
                                link.substring(0, 4),
                                link.substring(4, 8),
                                link.substring(8));
        assertTrue(text.contains("<dt>Journal before it</dt><dd>" + words + "</dd>"), words);
        assertTrue(ReadRecord.of(record).journalLink().orElseThrow().isIn(job.folder()));
    }

    /** The page in a record with one more input, whose worked example is this array. */
    private static Path naming(String array) throws Exception {
        String text = Files.readString(record);
        int attached = text.indexOf("id=\"page-text\"");
        String input = "angle,°,number,30,0,90,Angle\n";
        String rest = text.substring(attached);
        assertTrue(rest.contains(input));
        String more = input + "feeds,,array," + array + ",,,Feeds\n";
        return sealed(text.substring(0, attached) + rest.replace(input, more));
    }

    /** A file that nobody here named is not even looked for, be it there or not. */
    @Test
    void readsNoPathThatItNames() throws Exception {
        Path array = Path.of("datasets/arrays/nine-uneven.csv").toAbsolutePath();
        assertTrue(Files.isReadable(array), "it would be read, were it typed");
        for (String path : List.of(array.toString(), "/nowhere/any.csv")) {
            Path forged = naming(path);
            String refusal =
                    assertThrows(RecordRefused.class, () -> ReadRecord.of(forged)).getMessage();
            assertTrue(refusal.contains("array file \"" + path + "\" is not read"), refusal);
        }
        assertEquals("Width", ReadRecord.of(naming("nine-uneven")).filled().page().title());
    }
}
