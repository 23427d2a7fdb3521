package halfwidth.localizer.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NamedArrayTest {
    private static final Path SHIPPED = Path.of("datasets", "arrays");
    private static final Path UNEVEN = SHIPPED.resolve("nine-uneven.csv");

    @TempDir Path folder;

    @Test
    void findsEveryShippedArrayByItsName() throws IOException {
        try (Stream<Path> files = Files.list(SHIPPED)) {
            Set<String> names =
                    files.map(file -> file.getFileName().toString().replace(".csv", ""))
                            .collect(Collectors.toSet());
            assertEquals(names, Set.copyOf(ShippedArrays.NAMES));
        }
        for (String name : ShippedArrays.NAMES) {
            assertEquals(
                    ArrayFile.read(SHIPPED.resolve(name + ".csv")), NamedArray.of(name).model());
        }
    }

    @Test
    void findsAFileByItsPath() throws IOException {
        Path file = Files.copy(UNEVEN, folder.resolve("own array.csv"));
        assertEquals(ArrayFile.read(UNEVEN), NamedArray.of(" " + file + " ").model());
    }

    @Test
    void keepsWhatTheFileSaidWhenItWasNamed() throws IOException {
        Path file = Files.copy(UNEVEN, folder.resolve("own.csv"));
        NamedArray before = NamedArray.of(file.toString());
        Files.writeString(file, Files.readString(file).replace("1,-", "1,-1"));
        NamedArray after = NamedArray.of(file.toString());
        assertEquals(ArrayFile.read(UNEVEN), before.model());
        assertFalse(before.equals(after), "another content is another array");
        Files.delete(file);
        assertEquals(ArrayFile.read(UNEVEN), before.model());
    }

    @Test
    void isTheSameWithOtherLineEnds() throws IOException {
        Path file = folder.resolve("own.csv");
        Files.writeString(file, Files.readString(UNEVEN));
        NamedArray before = NamedArray.of(file.toString());
        Files.writeString(file, Files.readString(UNEVEN).replace("\n", "\r\n"));
        assertEquals(before, NamedArray.of(file.toString()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"fifteen-two-carrier", "", "datasets", "no\0name"})
    void listsTheShippedArraysWhereItFindsNone(String name) {
        String refusal =
                assertThrows(IllegalArgumentException.class, () -> NamedArray.of(name))
                        .getMessage();
        ShippedArrays.NAMES.forEach(shipped -> assertTrue(refusal.contains(shipped), refusal));
    }

    @Test
    void refusesAFileThatIsNoTextInUtf8() throws IOException {
        Path file = folder.resolve("latin.csv");
        Files.write(file, "name,d\u00e9j\u00e0 vu\n".getBytes(StandardCharsets.ISO_8859_1));
        String refusal =
                assertThrows(UncheckedIOException.class, () -> NamedArray.of(file.toString()))
                        .getMessage();
        assertTrue(refusal.contains("latin.csv"), refusal);
    }
}
