package halfwidth.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import java.io.IOException;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

class FilledTest {
    @TempDir private Path folder;
    private final Page page = Samples.page();
    private final Filled none = Filled.none(page);

    @Test
    void fillsInTheWorkedExampleAndSaysSo() {
        Filled example = Filled.example(page);
        assertTrue(example.example());
        assertEquals(
                List.of("step", "perInch", "cuts", "offset", "feed", "by", "on"),
                List.copyOf(example.entries().keySet()));
        assertEquals(-0.031, example.entries().get("offset").value());
        assertEquals(LocalDate.of(2026, 11, 25), example.entries().get("on").value());
        assertEquals(Arrays.asList(0.0, null, "B, left", null, null, "2"), values(example).get(1));
    }

    @Test
    void startsARealPageWithNothingButDefaults() {
        assertFalse(none.example());
        assertEquals(Set.of("perInch", "cuts"), none.entries().keySet());
        assertTrue(none.readings().isEmpty());
    }

    private static Optional<Double> uncertainty(Filled filled, String field) {
        return filled.entries().get(field).uncertainty();
    }

    @Test
    void keepsAnUncertaintyThatIsTypedOrStated() {
        Filled typed = none.with("step", "10 ± 0.5").uncertain("perInch", "0.1 °/in");
        assertEquals(Optional.of(0.5), uncertainty(typed, "step"));
        assertEquals(Optional.of(0.1), uncertainty(typed, "perInch"));
        assertEquals("4 ± 0.1 °/in", typed.entries().get("perInch").typed());
        assertEquals(4.0, typed.entries().get("perInch").value());
    }

    @Test
    void statesTheUncertaintyOfEachReadingOfAColumnThatHasNone() {
        List<List<String>> rows =
                List.of(
                        List.of("1", "", "", "", "", ""),
                        List.of("", "", "", "", "", ""),
                        List.of("2 ± 0.3", "", "", "", "", ""));
        Filled filled = none.withReadings("sweep", rows).uncertain("sweep.azimuth", "0.1");
        List<Optional<Double>> found =
                filled.readings().get("sweep").stream()
                        .map(row -> row.get(0).flatMap(Entry::uncertainty))
                        .toList();
        assertEquals(List.of(Optional.of(0.1), Optional.empty(), Optional.of(0.3)), found);
    }

    @Test
    void refusesAnUncertaintyOfWhatHasNone() {
        assertRefused(() -> none.uncertain("step", "1"), "step: it is not filled in");
        assertRefused(() -> none.uncertain("cuts", "1"), "no measured number");
        assertRefused(() -> none.uncertain("sweep.azimuth", "1"), "no readings are filled in");
        assertRefused(() -> none.uncertain("perinch", "1"), "no such field", "perInch");
        assertRefused(() -> none.uncertain("perInch", "-1"), "above 0");
        assertRefused(
                () -> none.with("step", "1 ± 0.1").uncertain("step", "1"),
                "it has one already, 1 ± 0.1");
    }

    @Test
    void takesTheUncertaintyThatThePageStatesWhereNoneIsTyped() {
        Page stated =
                Samples.parse(
                        Samples.with("most,label\n", "most,uncertainty,label\n")
                                .replace("360,\"Phase", "360,0.5,\"Phase")
                                .replaceAll(
                                        "(?m)^((?:perInch|cuts|offset|feed|by|on),.*),", "$1,,"));
        Filled filled = Filled.none(stated).with("step", "10");
        assertEquals(Optional.of(0.5), uncertainty(filled, "step"));
        assertEquals(
                "10 ° ± 0.5 ° by the page (standard uncertainty)",
                filled.entries().get("step").understood());
        assertEquals(Optional.of(0.2), uncertainty(filled.with("step", "10 ± 0.2"), "step"));
        assertEquals(Optional.empty(), uncertainty(filled, "perInch"));
    }

    @Test
    void anUncertaintyInAnExampleIsTheExamplesAlone() {
        Page page = Samples.parse(Samples.with("90 deg", "90 ± 2"));
        assertEquals(Optional.of(2.0), uncertainty(Filled.example(page), "step"));
        assertEquals(Optional.empty(), uncertainty(Filled.none(page).with("step", "10"), "step"));
    }

    @Test
    void readsUncertainCellsOfAFileInTheUnitOfItsColumn() throws IOException {
        Path file = csv("azimuth [rad],near,mark,on,count,tx\n0.1 ± 0.01,0.031 ± 0.002,A,,,1\n");
        List<Optional<Entry>> row = none.withReadings("sweep", file).readings().get("sweep").get(0);
        assertEquals(0.01 * 180 / Math.PI, row.get(0).get().uncertainty().get(), 1e-9);
        assertEquals(Optional.of(0.002), row.get(1).get().uncertainty());
    }

    @Test
    void returnsCopiesInTheOrderOfThePage() {
        Filled filled = none.with("by", "B").with("step", "10");
        assertEquals(
                List.of("step", "perInch", "cuts", "by"), List.copyOf(filled.entries().keySet()));
        assertEquals(2, none.entries().size());
        assertEquals(20.0, filled.with("step", "20").entries().get("step").value());
        assertThrows(UnsupportedOperationException.class, () -> filled.entries().remove("step"));
    }

    @Test
    void refusesAnEntryByItsLabel() {
        assertRefused(
                () -> none.with("step", "400 °"),
                "Phase step, wanted (step): 400 ° must be at least -360 ° and at most 360 °");
        assertRefused(() -> none.with("steps", "4"), "page sample has no field steps", "step");
        assertRefused(() -> none.withReadings("sweeps", List.of()), "no table", "sweep");
    }

    private static void assertRefused(Executable act, String... words) {
        String message = assertThrows(EntryRefused.class, act).getMessage();
        for (String word : words) {
            assertTrue(message.contains(word), () -> message + " does not say " + word);
        }
    }

    @Test
    void refusesRowsByTableRowAndColumn() {
        List<String> good = List.of("1", "", "", "", "", "");
        List<String> bad = List.of("x", "155", "", "", "", "");
        assertRefused(
                () -> none.withReadings("sweep", List.of(good, bad, List.of("1"))),
                "sweep, row 2, azimuth: x does not start with a number",
                "sweep, row 2, near: 155 may be thousandths",
                "sweep, row 3 has 1 cells; give 6");
        assertRefused(() -> none.withReadings("sweep", List.of()), "sweep has no rows");
    }

    @Test
    void tellsTheFirstProblemsOfMany() {
        List<String> bad = List.of("x", "", "", "", "", "");
        assertRefused(
                () -> none.withReadings("sweep", java.util.Collections.nCopies(30, bad)),
                "row 20",
                "and 10 more");
    }

    private static List<List<Serializable>> values(Filled filled) {
        return filled.readings().get("sweep").stream()
                .map(row -> row.stream().map(cell -> cell.map(Entry::value).orElse(null)).toList())
                .toList();
    }

    private Path csv(String text) throws IOException {
        return Files.writeString(folder.resolve("s.csv"), text);
    }

    @Test
    void readsAFileWithItsColumnsInAnyOrder() throws IOException {
        Path file = csv("mark,tx,on [date],near [DDM],azimuth,count\n\"B, left\",2,,0.031,-1.5,\n");
        assertEquals(
                List.of(Arrays.asList(-1.5, 0.031, "B, left", null, null, "2")),
                values(none.withReadings("sweep", file)));
    }

    @Test
    void readsWhatASpreadsheetWritesWhereTheCommaIsDecimal() throws IOException {
        Path semicolons =
                csv(
                        "\ufeffazimuth [°];near;mark;on;count;tx\r\n-1,5;0,031;A;;3;1\r\n\r\n;;;;;\r\n");
        List<List<Serializable>> expected = List.of(Arrays.asList(-1.5, 0.031, "A", null, 3, "1"));
        assertEquals(
                expected,
                values(none.withReadings("sweep", semicolons)),
                "a row in which nothing stands is no reading");
        Path tabs = csv("azimuth\tnear\tmark\ton\tcount\ttx\n-1,5\t31 ‰\tA\t\t3\t1\n\t\t\t\t\t\n");
        assertEquals(expected, values(none.withReadings("sweep", tabs)));
    }

    /** 150 µA = 0.155 DDM by convention; 1 rad = 180/π °. */
    @Test
    void convertsFromTheUnitThatTheHeaderStates() throws IOException {
        Path file = csv("azimuth [rad],near [µA],mark,on,count,tx\n0.5,-150,,,,\n30 °,15 µA,,,,\n");
        Filled filled = none.withReadings("sweep", file);
        List<List<Serializable>> values = values(filled);
        assertEquals(Math.toDegrees(0.5), (double) values.get(0).get(0), 1e-14);
        assertEquals(-0.155, values.get(0).get(1));
        assertEquals(30.0, values.get(1).get(0));
        assertEquals(0.0155, (double) values.get(1).get(1), 1e-17);
        Optional<Entry> azimuth = filled.readings().get("sweep").get(0).get(0);
        assertEquals("28.65 ° (0.5 rad typed)", azimuth.orElseThrow().understood());
    }

    @Test
    void refusesAFileByLineAndColumn() throws IOException {
        Path file =
                csv("azimuth [in],near,mark,on,count,tx\n1,155,,,,\n\n2,0,155,A,,,\n,,\"x,,,\n");
        assertRefused(() -> none.withReadings("sweep", file), "s.csv:5: a quotation mark");
        csv("azimuth [in],near,mark,on,count,tx\n1,155,,,,\n\n2,0,155,A,,,\n");
        assertRefused(
                () -> none.withReadings("sweep", file),
                "s.csv:2, azimuth: in is typed where ° is expected",
                "s.csv:2, near: 155 may be thousandths",
                "s.csv:4: has 7 cells where the header has 6");
    }

    @Test
    void refusesHeadersThatAreNotTheColumns() throws IOException {
        Path file = csv("azimut,near [furlong],mark [m],on,count,tx,TX\n1,2,3,4,5,6,7\n");
        assertRefused(
                () -> none.withReadings("sweep", file),
                "s.csv:1: column azimuth is missing",
                "column azimut is unknown; near it are azimuth",
                "column near is stated in [furlong], which is not known here; give it in DDM",
                "column mark is stated in [m], which is not known here; give it without brackets",
                "column tx is there twice");
    }

    @Test
    void refusesAFileWithoutReadings() throws IOException {
        Path header = csv("azimuth,near,mark,on,count,tx\n");
        assertRefused(() -> none.withReadings("sweep", header), "s.csv has no rows");
        Path empty = csv("");
        assertRefused(() -> none.withReadings("sweep", empty), "s.csv has no rows");
        Path missing = folder.resolve("none.csv");
        assertRefused(() -> none.withReadings("sweep", missing), "none.csv: there is no such");
        // In the old systems' code pages this is an accented letter, in others another one.
        Files.write(header, new byte[] {'m', 'a', 'r', 'k', '\n', (byte) 0xe6, '\n'});
        assertRefused(() -> none.withReadings("sweep", header), "s.csv:2: has bytes");
    }

    @Test
    void takesLinesAboveTheHeaderAsNotes() throws IOException {
        Path file =
                csv(
                        "# invented: no station's\n\"# in a spreadsheet, too\"\n\nmark,azimuth,near,on,count,tx\n#4,1,,,,\n");
        assertEquals(
                List.of(Arrays.asList(1.0, null, "#4", null, null, null)),
                values(none.withReadings("sweep", file)),
                "a row below the header is never taken for a note");
    }

    @Test
    void readsInputsFromAFile() throws IOException {
        Path file = csv("# invented\nname;value\nstep;10,5\nby;B\noffset;\n");
        Filled filled = none.withInputs(file);
        assertEquals(10.5, filled.entries().get("step").value());
        assertEquals("B", filled.entries().get("by").value());
        assertFalse(filled.entries().containsKey("offset"), "no value leaves it unfilled");
    }

    @Test
    void refusesInputsByLine() throws IOException {
        Path file = csv("# invented\nname,value\nstep,400 °\nsteps,4\nby,B\nby,A\nstep\n");
        assertRefused(
                () -> none.withInputs(file),
                "s.csv:3: Phase step, wanted (step): 400 ° must be",
                "s.csv:4: page sample has no field steps",
                "s.csv:6: by is already on line 5",
                "s.csv:7: has 1 cells");
        csv("field,value\n");
        assertRefused(() -> none.withInputs(file), "s.csv:1: expected the header name,value");
    }
}
