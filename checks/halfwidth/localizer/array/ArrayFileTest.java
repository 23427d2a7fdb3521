package halfwidth.localizer.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArrayFileTest {
    private static final String PAIR =
            """
            # two elements
            name,Pair
            course frequency [MHz],110.1
            depth of each tone [1],0.2
            element pattern,isotropic
            element,position [m],course CSB [1],course CSB phase [deg],course SBO [1],course SBO phase [deg]
            1,-1,1,0,0.1,90
            2,1,1,0,0.1,-90
            """;

    private static ArrayModel read(String text) throws IOException {
        return ArrayFile.read("pair.csv", new StringReader(text));
    }

    private static String refusal(String text) {
        return assertThrows(IllegalArgumentException.class, () -> read(text)).getMessage();
    }

    @Test
    void readsPropertiesAndCurrents() throws IOException {
        ArrayModel pair = read(PAIR);
        assertEquals("Pair", pair.name());
        assertEquals(110_100_000, pair.course().frequency());
        assertEquals(0.2, pair.course().depth());
        assertEquals(-1, pair.positions().get(0));
        assertEquals(new Current(0.1, -90), pair.course().sbo().get(1));
        assertTrue(pair.clearance().isEmpty());
    }

    @Test
    void readsWhatASpreadsheetMakesOfIt() throws IOException {
        String padded =
                "\uFEFF"
                        + PAIR.replace("\n", ",,\r\n")
                                .replace("# two elements", "\"# two, of one carrier\"");
        assertEquals(read(PAIR), read(padded));
    }

    @Test
    void readsColumnsInAnyOrder() throws IOException {
        String swapped =
                PAIR.replace(
                                "course SBO [1],course SBO phase [deg]",
                                "course SBO phase [deg],course SBO [1]")
                        .replace("0.1,90", "90,0.1")
                        .replace("0.1,-90", "-90,0.1");
        assertEquals(read(PAIR), read(swapped));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,-1,1,0 | 1,-1,one,0 | pair.csv, line 7: course CSB [1] \"one\" must be a number",
                "1,-1,1,0 | 1,-1,NaN,0 | pair.csv, line 7: course CSB [1] \"NaN\" must be a number",
                "1,-1,1,0 | 1,-1,,0 | pair.csv, line 7: course CSB [1] must be given",
                "1,-1,1,0 | 1,-1,-2,0 | pair.csv, line 7: course CSB amplitude -2 must be",
                "2,1,1,0 | 3,1,1,0 | pair.csv, line 8: element must be number 2 here",
                "2,1,1,0 | 2,-1,1,0 | pair.csv, line 8: position -1.0 m must differ",
                "0.1,-90 | 0.1,-90,5 | pair.csv, line 8: row must have at most 6 cells, not 7",
                "name,Pair | title,Pair | pair.csv, line 2: \"title\" must be one of",
                "name,Pair | depth of each tone [1],0.3 | pair.csv, line 4: depth of each tone [1] must",
                "depth of each tone [1],0.2 | # | pair.csv: depth of each tone [1] must be given",
                "110.1 | 1101 | pair.csv: frequency 1101000000 Hz must be 50000000 to 500000000",
                "position [m] | position | pair.csv, line 6: column \"position\" must be one of",
                "course SBO [1] | course CSB [1] | pair.csv, line 6: column \"course CSB [1]\" must",
                "isotropic | round | pair.csv, line 5: element pattern must be \"isotropic\" or",
            })
    void namesTheLineItRefuses(String sound, String broken, String message) {
        String refusal = refusal(PAIR.replace(sound, broken));
        assertTrue(refusal.startsWith(message), refusal);
    }

    @Test
    void refusesClearanceWithoutItsFrequency() {
        String text =
                PAIR.replace(
                                "course SBO phase [deg]",
                                "course SBO phase [deg],clearance CSB [1],clearance CSB phase"
                                        + " [deg],clearance SBO [1],clearance SBO phase [deg]")
                        .replace("90\n", "90,1,0,1,0\n");
        assertTrue(refusal(text).contains("must be given together"), refusal(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "# nothing\n", "name,Pair\n", "name;Pair\n", "\"name,Pair\n"})
    void refusesFilesWithoutElements(String text) {
        assertTrue(refusal(text).startsWith("pair.csv"), refusal(text));
    }

    @Test
    void saysWhichFileIsMissing() {
        Path missing = Path.of("datasets", "no-such-array.csv");
        String message =
                assertThrows(UncheckedIOException.class, () -> ArrayFile.read(missing))
                        .getMessage();
        assertTrue(message.contains("no-such-array.csv"), message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"fourteen-two-carrier.csv", "ten-one-carrier.csv", "nine-uneven.csv"})
    void writesWhatItReads(String file) throws IOException {
        ArrayModel array = ArrayFile.read(Path.of("datasets", "arrays", file));
        StringBuilder text = new StringBuilder();
        ArrayFile.write(array, text);
        assertEquals(array, ArrayFile.read("again", new StringReader(text.toString())));
    }
}
