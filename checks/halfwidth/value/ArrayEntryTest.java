package halfwidth.value;

import static halfwidth.value.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.localizer.array.NamedArray;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ArrayEntryTest {
    private static final Kind ARRAY = new Kind.Array(false);
    private static final Kind OR_NONE = new Kind.Array(true);

    @TempDir Path folder;

    @Test
    void understandsAShippedOneAndAFile() throws IOException {
        assertEquals(
                new Entry(" nine-uneven ", NamedArray.of("nine-uneven"), "nine-uneven"),
                Entry.read(ARRAY, "", " nine-uneven "));
        Path file = folder.resolve("own array.csv");
        Files.copy(Path.of("datasets/arrays/nine-uneven.csv"), file);
        Entry entry = Entry.read(OR_NONE, "", file.toString());
        assertEquals(NamedArray.of(file.toString()), entry.value());
        assertEquals(file.toString(), entry.understood());
    }

    @Test
    void understandsNoneOnlyWhereThereMayBeNone() {
        assertEquals(NamedArray.NONE, Entry.read(OR_NONE, "", "None").value());
        assertRefused(ARRAY, "", "none", "array \"none\" must be one of the shipped");
        assertRefused(OR_NONE, "", "nome", "type another array, or none");
    }

    @Test
    void refusesAnUnknownNameListingTheShippedOnes() {
        assertRefused(
                ARRAY,
                "",
                "nine-unevn",
                "array \"nine-unevn\" must be one of the shipped",
                "nine-uneven, ten-one-carrier",
                "there is no file",
                "type another array");
        assertRefused(ARRAY, "", " ", "must be one of the shipped");
        assertRefused(ARRAY, "", "a\u0000b", "must be one of the shipped");
    }

    @Test
    void refusesAFileThatIsNoArrayNamingTheLine() throws IOException {
        Path file = Files.writeString(folder.resolve("bad.csv"), "name,Trial\nwidth,4\n");
        assertRefused(ARRAY, "", file.toString(), "bad.csv, line 2", "correct it");
        assertRefused(ARRAY, "", folder.toString(), "there is no file");
    }

    /** Windows would ask that machine, and tell it who asks. */
    @ParameterizedTest
    @ValueSource(strings = {"\\\\host\\share\\a.csv", "//host/share/a.csv", "/\\host/a.csv"})
    void refusesAFileOfAnotherMachine(String typed) {
        assertRefused(ARRAY, "", typed, "a file on another machine is not fetched; copy it here");
    }
}
