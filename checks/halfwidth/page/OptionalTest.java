package halfwidth.page;

import static halfwidth.page.Samples.assertRefused;
import static halfwidth.page.Samples.line;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.spreadsheet.SpreadsheetFile;
import halfwidth.value.Kind;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a page says may be left blank. */
class OptionalTest {
    private static final String TEXT =
            """
            # Optional

            Shows it.

            ```csv inputs
            name,unit,kind,example,default,optional,label
            spacing,m,number,3,,,Spacing
            inUse,m,number,4,,yes,Spacing in use
            ```

            ```csv readings sweep
            azimuth [°],near [DDM],reference [DDM optional],mark [optional]
            1,0.1,,
            ```

            ```csv readings cuts gathered optional
            cut [in]
            1
            ```

            ```java
            double twice = 2 * spacing; // m
            boolean hasReference = false;
            ```

            ```csv results
            name,unit,decimals,shown,label
            twice,m,1,if hasReference,Twice
            ```
            """;

    private final Page page = Samples.parse(TEXT);

    @Test
    void anInputATableAndAColumnMayBe() {
        assertEquals(List.of(false, true), page.fields().stream().map(Field::optional).toList());
        assertEquals(
                List.of(false, true),
                page.readings().stream().map(Part.Readings::optional).toList());
        assertTrue(page.readings().get(1).gathered());
        assertEquals(
                List.of(
                        new Column("azimuth", new Kind.Number(), "°"),
                        new Column("near", new Kind.Ddm(), "DDM"),
                        new Column("reference", new Kind.Ddm(), "DDM", true),
                        new Column("mark", new Kind.Text(), "", true)),
                page.readings().get(0).columns());
    }

    @Test
    void aResultNamesWhatItIsWantedFor() {
        assertEquals(
                Optional.of("hasReference"),
                page.results().get(0).shown().flatMap(ShownWhen::variable));
        assertRefused(
                TEXT.replace("if hasReference", "if it is so"),
                line(TEXT, "twice,m,1"),
                "if it is so",
                "or if NAME, NAME a truth value");
    }

    @ParameterizedTest
    @CsvSource({
        "'4,,yes,', '4,,no,', 'optional no is not known; expected yes, or nothing'",
        "'4,,yes,', '4,5,yes,', default leaves nothing optional",
    })
    void anInputIsOptionalOrNot(String piece, String replacement, String problem) {
        assertRefused(TEXT.replace(piece, replacement), line(TEXT, "inUse,m"), problem);
    }

    private static SpreadsheetFile file(String text) {
        return SpreadsheetFile.of("sweep.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aFileNeedNotSayIt() {
        Import taken =
                Import.propose(
                        page.readings().get(0),
                        file("azimuth [°],near [DDM],reference [DDM],mark [text]\n1,0.1,0.2,A\n"));
        assertFalse(taken.mapping().isEmpty());
        FileColumns columns =
                FileColumns.of(
                        file("azimuth,near [DDM],reference [DDM],mark [text]\n1,0.1,0.2,A\n"),
                        page.readings().get(0).columns());
        assertEquals(List.of(), columns.problems());
        assertEquals(List.of("", "", "", ""), columns.units());
    }
}
