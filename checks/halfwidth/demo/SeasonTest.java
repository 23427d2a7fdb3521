package halfwidth.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The season is worked once for all that is asked of it: it takes minutes. */
@Tag("long")
class SeasonTest {
    @Nested
    class Truth extends Truths {}

    @Nested
    class Mishap extends Mishaps {}

    /** Written once by a program that is no part of the season. */
    private static final String ARRAY = "array.csv";

    private static Map<String, String> files(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            Map<String, String> files = new TreeMap<>();
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                files.put(name, Files.readString(file));
            }
            files.remove(ARRAY);
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void givesTheFilesThatAreCommitted() {
        assertEquals(files(Demo.COMMITTED), files(Demo.folder()));
    }

    @Test
    void visitsEveryPage() {
        Set<String> pages =
                new Pages(Path.of("notebooks"))
                        .all().stream().map(Page::name).collect(Collectors.toSet());
        Set<String> visited =
                Demo.season().desk().visits().values().stream()
                        .map(visit -> visit.page().name())
                        .collect(Collectors.toSet());
        assertEquals(pages, visited);
    }

    @Test
    void saysInEveryFileThatItIsInvented() {
        files(Demo.COMMITTED)
                .forEach((name, text) -> assertTrue(text.startsWith("# invented: "), name));
    }
}
