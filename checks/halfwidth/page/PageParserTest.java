package halfwidth.page;

import static halfwidth.page.Samples.assertRefused;
import static halfwidth.page.Samples.assertRefusedAmongOthers;
import static halfwidth.page.Samples.line;
import static halfwidth.page.Samples.with;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.value.Kind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sample page, and the sample page with one thing spoilt. */
class PageParserTest {
    private static final String TEXT = Samples.TEXT;
    private final Page page = Samples.page();

    @Test
    void readsTitlePurposeAndCautions() {
        assertEquals("sample", page.name());
        assertEquals("Cut for a phase step", page.title());
        assertEquals(
                "How long a piece of line delays the signal by a given phase.", page.purpose());
        assertEquals(
                List.of(
                        "Caution. Take RF off before a line is opened. It cannot be made longer again.",
                        "Caution: measure twice."),
                page.cautions());
    }

    @Test
    void keepsPartsInTheOrderOfTheFile() {
        assertEquals(
                List.of(
                        "Prose",
                        "Inputs",
                        "Prose",
                        "Readings",
                        "Prose",
                        "Steps",
                        "Results",
                        "Prose",
                        "Checks"),
                page.parts().stream().map(part -> part.getClass().getSimpleName()).toList());
    }

    @Test
    void numbersThePartsByTheFirstLineOfTheirContent() {
        assertEquals(
                List.of(
                        line(TEXT, "How long"),
                        line(TEXT, "name,unit,kind"),
                        line(TEXT, "A block in"),
                        line(TEXT, "azimuth"),
                        line(TEXT, "## Steps"),
                        line(TEXT, "double length"),
                        line(TEXT, "name,unit,decimals"),
                        line(TEXT, "> Not"),
                        line(TEXT, "length == 22.5")),
                page.parts().stream().map(Part::line).toList());
    }

    @Test
    void keepsBlocksInOtherLanguagesAsProse() {
        Part.Prose prose = (Part.Prose) page.parts().get(2);
        assertEquals(
                "A block in another language stays prose:\n\n```text\njava\n```\n\n- a list",
                prose.markdown());
    }

    @Test
    void readsFields() {
        List<Field> fields = page.fields();
        assertEquals(
                new Field(
                        line(TEXT, "step,°"),
                        "step",
                        new Kind.Number(),
                        "°",
                        "90 deg",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(-360.0),
                        Optional.of(360.0),
                        "Phase step, wanted",
                        Optional.empty()),
                fields.get(0));
        assertEquals(Optional.of("4"), fields.get(1).standing());
        assertEquals(Optional.of("lines/phase-constant#perInch"), fields.get(1).from());
        assertEquals(
                List.of(
                        new Kind.Number(),
                        new Kind.Number(),
                        new Kind.Count(),
                        new Kind.Ddm(),
                        new Kind.Choice(List.of("CSB", "SBO")),
                        new Kind.Text(),
                        new Kind.Date()),
                fields.stream().map(Field::kind).toList());
    }

    @Test
    void readsReadings() {
        assertEquals(
                List.of(
                        new Column("azimuth", new Kind.Number(), "°"),
                        new Column("near", new Kind.Ddm(), "DDM"),
                        new Column("mark", new Kind.Text(), ""),
                        new Column("on", new Kind.Date(), ""),
                        new Column("count", new Kind.Count(), "1"),
                        new Column("tx", new Kind.Choice(List.of("1", "2")), "")),
                page.readings().get(0).columns());
        assertEquals(
                List.of(
                        List.of("-2", "155 in the 90", "A", "2026-11-25", "3", "1"),
                        List.of("0", "", "B, left", "", "", "2")),
                page.readings().get(0).example());
    }

    @Test
    void readsResults() {
        assertEquals(
                new Result(
                        line(TEXT, "length,in"),
                        "length",
                        "in",
                        2,
                        Optional.of("0"),
                        Optional.of("longest"),
                        "Example handbook, 3.1",
                        Optional.empty(),
                        "Length to cut",
                        ""),
                page.results().get(0));
        assertEquals("", page.results().get(1).unit());
    }

    @Test
    void takesALabelAloneForTheHeadingOfTheResultsBelowIt() {
        String row =
                TEXT.lines().filter(line -> line.startsWith("length,in")).findFirst().orElseThrow();
        long commas = row.replaceAll("\"[^\"]*\"", "").chars().filter(c -> c == ',').count();
        String headed = TEXT.replace(row, ",".repeat((int) commas) + "Cut\n" + row);
        List<Result> results = Samples.parse(headed).results();
        assertEquals(page.results().size(), results.size());
        assertEquals("Cut", results.get(0).group());
        assertEquals("Cut", results.get(1).group());
    }

    @Test
    void readsWindowsLinesAndAByteOrderMarkTheSame() {
        assertEquals(page, Samples.parse("\ufeff" + TEXT.replace("\n", "\r\n")));
        assertEquals(page, Samples.parse(TEXT.replace('\n', '\r')));
    }

    @Test
    void trimsTabsAndBlanksAroundCells() {
        Page padded = Samples.parse(with("step,°,,90 deg,", "step\t, ° ,\t,  90 deg ,"));
        assertEquals(page.parts(), padded.parts());
    }

    @ParameterizedTest
    @CsvSource({
        "```csv inputs, ```csv input",
        "```csv inputs, ```csv  Inputs",
        "```csv inputs, ```csv",
        "```csv readings sweep, ```csv readings",
        "```csv readings sweep, ```csv readings sweep two",
        "```csv results, ```csv result",
        "```java check, ```java checks",
        "```java check, ```javascript",
        "```java check, ```Java",
        "```text, ```java-text",
    })
    void refusesBlocksThatAreNearlyMeant(String fence, String typo) {
        assertRefusedAmongOthers(
                with(fence + "\n", typo + "\n"),
                line(TEXT, fence),
                "is no kind of block",
                "csv inputs, csv readings NAME, java, java check or csv results");
    }

    @Test
    void refusesBlocksThatAreNotAtTheMargin() {
        String list = with("- a list\n", "- a list\n\n  ```java\n  int x = 1;\n  ```\n");
        assertRefused(list, line(list, "  ```java"), "part of a list or a quotation");
        String quote = with("> Not a caution.\n", "> Not\n> ```csv inputs\n> x\n> ```\n");
        assertRefused(quote, line(quote, "> ```csv"), "part of a list or a quotation");
    }

    @Test
    void refusesBlocksThatCommonMarkHides() {
        String comment = with("- a list\n", "<!--\n\n```java\nint x = 1;\n```\n\n-->\n");
        assertRefused(comment, line(comment, "int x") - 1, "part of an HTML block or comment");
        String indented = with("- a list\n", "    ~~~ csv inputs\n    x\n    ~~~\n");
        assertRefused(indented, line(indented, "~~~ csv"), "indented by four or more");
    }

    @Test
    void letsALongerFenceShowAShorterOne() {
        String shown = with("```text\njava\n```\n", "````text\n```java\nint x;\n```\n````\n");
        assertEquals(page.results().size(), Samples.parse(shown).results().size());
    }

    @Test
    void refusesAnUnclosedBlock() {
        String open = TEXT.substring(0, TEXT.length() - 4);
        assertRefused(open, line(TEXT, "```java check"), "never closed", "a line of ```");
    }

    @Test
    void refusesEmptyBlocks() {
        String empty = with("double length = step / perInch; // in\n", "  \n");
        assertRefused(empty, line(TEXT, "```java"), "the java block is empty");
    }

    @Test
    void refusesAPageWithoutOneTitleFirst() {
        assertAll(
                () -> assertRefused(with("# Cut for a phase step", "Cut"), 1, "has no title"),
                () -> assertRefused(with("# Cut", "## Cut"), 1, "has no title", "level-one"),
                () -> assertRefused("Hello\n\n" + TEXT, 3, "title is not first"),
                () -> assertRefused(with("# Cut for a phase step", "#"), 1, "title is empty"),
                () ->
                        assertRefused(
                                with("## Steps", "# Steps"),
                                line(TEXT, "## Steps"),
                                "second title after line 1"));
    }

    @Test
    void refusesAPageWithoutStepsOrResults() {
        assertRefusedAmongOthers("", 1, "has no title");
        assertRefusedAmongOthers("# Title", 1, "has no steps", "java block");
        assertRefusedAmongOthers("# Title", 1, "has no results", "csv results");
        assertEquals(2, Samples.problems("# Title").size());
    }

    @Test
    void tellsAllProblemsAtOnceByFileAndLine() {
        String text =
                with("step,°,", "step,furlong,")
                        .replace("length,in,2", "length,in,x")
                        .replace("\n0,,", "\nzero,,");
        List<Problem> problems = Samples.problems(text);
        assertEquals(
                List.of(line(TEXT, "step,°"), line(TEXT, "0,,\"B"), line(TEXT, "length,in")),
                problems.stream().map(Problem::line).toList());
        assertTrue(
                problems.get(0).toString().startsWith("sample.md:10: unit furlong is not known"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "*", "> ", "- ", "`", "![](", "<", "(", "\\", "|", "a\t"})
    void endsInTimeOnEndlessNesting(String piece) {
        String text = TEXT + "\n" + piece.repeat(piece.equals("> ") ? 100_000 : 30_000) + "\n";
        long start = System.nanoTime();
        Page deep = Samples.parse(text);
        deep.cautions();
        // Under a second is usual; the limit leaves room for a busy machine.
        assertTrue(System.nanoTime() - start < 20e9);
        assertEquals("Cut for a phase step", deep.title());
    }

    @Test
    void endsInTimeOnAnEndlessLine() {
        String line = "x".repeat(1_000_000);
        assertEquals(page.results(), Samples.parse(TEXT + "\n" + line).results());
        assertRefused(
                with("step,°,", line + ",°,").replace("90 deg", line),
                line(TEXT, "step,°"),
                "1000000 characters are too long");
    }
}
