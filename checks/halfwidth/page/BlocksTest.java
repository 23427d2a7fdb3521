package halfwidth.page;

import static halfwidth.page.Samples.assertRefused;
import static halfwidth.page.Samples.assertRefusedAmongOthers;
import static halfwidth.page.Samples.line;
import static halfwidth.page.Samples.with;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a line of a block of CSV may say. */
class BlocksTest {
    private static final String TEXT = Samples.TEXT;

    /** Each row: a piece of the sample, what replaces it, and what is said at its line. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "step,°,,;            2step,°,,;           name 2step is no Java variable",
                "step,°,,;            class,°,,;           name class is no Java variable",
                "step,°,,;            ,°,,;                name (empty) is no Java variable",
                "step,°,,;            #step,°,,;           name #step is no Java variable",
                "cuts,1,count;        STEP,1,count;        name STEP is taken by line 10",
                "step,°,,;            step,,,;             unit (empty) is not known",
                "step,°,,;            step,furlong,,;      unit furlong is not known",
                "step,°,,;            step,DDM,,;          unit DDM does not fit this kind",
                "offset,DDM;          offset,µA;           unit µA does not fit a kind of DDM",
                "feed,,choice;        feed,in,choice;      unit in has no meaning",
                "step,°,,;            step,°,real,;        kind real is not known; expected number",
                "choice CSB|SBO;      choice CSB;          kind choice CSB is not known",
                "choice CSB|SBO;      choice CSB|csb;      kind choice CSB|csb is not known",
                "choice CSB|SBO;      choice CSB|;         kind choice CSB| is not known",
                "90 deg;              90 in;               example: in is typed where ° is expected",
                "90 deg;              361;                 example: 361 ° must be at least -360 °",
                "90 deg,;             ,;                   example: nothing is typed",
                "31 in the 90;        31;                  example: 31 may be thousandths",
                "number,4,4;          number,4,40;         default: 40 °/in must be at least 0.1",
                "number,4,4;          number,4,4 x;        default: x is not a known unit",
                "SBO,,,,,Feed;        SBO,SBO,,,,Feed;     default has no meaning for this kind",
                "SBO,,,,,Feed;        SBO,,,1,,Feed;       least has no meaning for this kind",
                "-360,360;            low,360;             least low is no number",
                "-360,360;            ~-360,3,60~;         where the header has 9",
                "-360,360;            360,-360;            least 360 is above most -360",
                "~Phase step, wanted~; ;                   label is empty",
                "lines/phase-constant#perInch; lines/phase-constant;  names no result",
                "lines/phase-constant#perInch; #perInch;   names no result",
                "lines/phase-constant#perInch; a#b#c;      names no result",
                "lines/phase-constant#perInch; a//b#c;     names no result",
            })
    void refusesInputs(String piece, String replacement, String says) {
        String wanted = piece.equals("Phase step, wanted") ? "\"" + piece + "\"" : piece;
        String text = with(wanted, replacement == null ? "" : replacement);
        String row = TEXT.lines().filter(line -> line.contains(wanted)).findFirst().orElseThrow();
        int place = line(TEXT, row);
        // One line may be wrong in a way that spoils a later check of the same line.
        assertRefusedAmongOthers(text, place, says);
        assertEquals(
                0, Samples.problems(text).stream().filter(other -> other.line() != place).count());
    }

    @Test
    void acceptsFewerColumnsInAnyOrder() {
        String few =
                with(
                        TEXT.substring(TEXT.indexOf("name,unit,kind"), TEXT.indexOf("```\n\nA ")),
                        "label,example,kind,unit,name\nStep,90,,°,step\n");
        Field field = Samples.parse(few).fields().get(0);
        assertEquals("step", field.name());
        assertEquals("90", field.example());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "name,unit,kind,example; name,units,kind,example; column units is not known",
                "name,unit,kind,example; name,kind,example,unit2; column unit is missing",
                "name,unit,kind,example; name,unit,unit,example; column unit is there twice",
                "most,label; most,Label; column label is missing; expected at least name,unit,kind",
                "kind,example,default; kind,example,; column (empty) is not known",
            })
    void refusesHeadersOfInputs(String piece, String replacement, String says) {
        int place = line(TEXT, "name,unit,kind");
        assertRefusedAmongOthers(with(piece, replacement), place, says.split("; ")[0]);
    }

    @Test
    void refusesABlockThatIsOnlyAHeader() {
        String inputs = TEXT.substring(TEXT.indexOf("step,°"), TEXT.indexOf("```\n\nA block"));
        assertRefused(with(inputs, ""), line(TEXT, "```csv inputs"), "only a header");
        String rows = TEXT.substring(TEXT.indexOf("-2,155"), TEXT.indexOf("```\n\n## Steps"));
        assertRefused(with(rows, ""), line(TEXT, "```csv readings"), "no example row");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "azimuth [°];        azimuth [furlong];  column azimuth [furlong] is no heading",
                "azimuth [°];        azimuth [array];    column azimuth [array] is no heading",
                "azimuth [°];        azimuth [];         column azimuth [] is no heading",
                "azimuth [°];        azimuth [°;         is no heading; expected a name with its unit",
                "azimuth [°];        [°];                column [°] is no heading",
                "azimuth [°];        MARK;               column mark is there twice",
                "-2,155 in the 90;   -2 in,155 in the 90; azimuth: in is typed where ° is expected",
                "-2,155 in the 90;   -2,155;             near: 155 may be thousandths",
                "A,2026-11-25,3;     A,25/11/26,3;       on: 25/11/26 does not say which",
                "A,2026-11-25,3;     A,2026-11-25,3.5;   count: 3.5 is no whole number",
                "A,2026-11-25,3,1;   A,2026-11-25,3,4;   tx: 4 is not among the choices",
                "A,2026-11-25,3,1;   A,2026-11-25,3;     has 5 cells where the header has 6",
                "A,2026-11-25,3,1;   A,2026-11-25,3,1,;  has 7 cells where the header has 6",
                "~\"B, left\"~;      \"B, left;          a quotation mark is out of place",
                "~\"B, left\"~;      \"B\" left;         a quotation mark is out of place",
            })
    void refusesReadings(String piece, String replacement, String says) {
        String row = TEXT.lines().filter(line -> line.contains(piece)).findFirst().orElseThrow();
        assertRefusedAmongOthers(with(piece, replacement), line(TEXT, row), says);
    }

    @Test
    void refusesNamesOfReadingsThatAreTaken() {
        String text = with("readings sweep", "readings Step");
        assertRefused(text, line(TEXT, "readings sweep"), "name Step is taken by line 10");
        String odd = with("readings sweep", "readings 2nd");
        assertRefused(odd, line(TEXT, "readings sweep"), "name 2nd is no Java variable");
    }

    @Test
    void refusesAnEmptyLineInOneColumn() {
        String block = TEXT.substring(TEXT.indexOf("azimuth"), TEXT.indexOf("```\n\n## Steps"));
        String text = with(block, "azimuth [°]\n1\n\n2\n");
        assertRefused(text, line(TEXT, "azimuth") + 2, "is empty", "\"\" for a missing");
        Part.Readings readings =
                Samples.parse(with(block, "azimuth [°]\n1\n\"\"\n2\n")).readings().get(0);
        assertEquals(3, readings.example().size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "length,in,2;      length,furlong,2;  unit furlong is not known",
                "length,in,2;      length,in,;        decimals (empty) must be a number from 0 to 15",
                "length,in,2;      length,in,16;      decimals 16 must be a number from 0 to 15",
                "length,in,2;      length,in,-1;      decimals -1 must be",
                "length,in,2;      long,in,2;         name long is no Java variable",
                "2,0,longest;      2,0 in,longest;    least 0 in is neither a number nor",
                "2,0,longest;      2,0,a.b;           most a.b is neither a number nor",
                "2,0,longest;      2,2,1;             least 2 is above most 1",
                "~\"Example handbook, 3.1\"~; ;       a limit must name its source",
                ",,Length to cut;  ,2u,Length to cut; uncertainty 2u is no Java variable",
                ",,Length to cut;  ,,;                label is empty",
            })
    void refusesResults(String piece, String replacement, String says) {
        String text = with(piece, replacement == null ? "" : replacement);
        assertRefusedAmongOthers(text, line(TEXT, "length,in"), says);
    }

    @Test
    void refusesTheSameResultTwice() {
        String text = with("word,,,", "Length,,,");
        assertRefused(text, line(TEXT, "word,,,"), "name Length is taken");
    }

    /** U+202E turns what follows round, U+200B is not seen, U+00AD neither. */
    @ParameterizedTest
    @ValueSource(strings = {"\u202e", "\u2066", "\u200b", "\u00ad", "\ufeff"})
    void noBlockHasCharactersThatCannotBeSeen(String hidden) {
        assertRefused(
                with("double length", "double " + hidden + "length"),
                line(TEXT, "double length"),
                "has the invisible character U+%04X; delete it".formatted((int) hidden.charAt(0)));
    }
}
