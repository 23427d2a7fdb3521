package halfwidth.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PagesTest {
    @TempDir private Path notebooks;

    private Path write(String name, String text) throws IOException {
        Path file = notebooks.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    @Test
    void listsStagesInTheOrderOfTheJobAndOthersAfter() throws IOException {
        for (String name :
                List.of(
                        "zoo/a",
                        "record/b",
                        "monitor/pair-null",
                        "site/b",
                        "site/a",
                        "own/x",
                        "lines/c",
                        "sweep/d",
                        "array/e",
                        "transmit/f",
                        "instruments/g")) {
            write(name + ".md", Samples.TEXT);
        }
        write("site/notes.txt", "not a page");
        Pages pages = new Pages(notebooks);
        List<String> expected =
                List.of(
                        "site/a",
                        "site/b",
                        "lines/c",
                        "transmit/f",
                        "array/e",
                        "sweep/d",
                        "monitor/pair-null",
                        "instruments/g",
                        "record/b",
                        "own/x",
                        "zoo/a");
        assertEquals(expected, pages.names());
        assertEquals(expected, pages.all().stream().map(Page::name).toList());
    }

    @Test
    void withinAStageTheShippedPagesStandAsTheReadmeListsThemAndOthersAfter() throws IOException {
        List<String> listed = new ArrayList<>();
        String stage = "";
        String readme = Files.readString(Path.of("README.md"));
        for (String line : readme.substring(readme.indexOf("## The pages")).lines().toList()) {
            String[] cells = line.split("\\|");
            if (cells.length == 4 && cells[2].strip().matches("[a-z, -]+[a-z]")) {
                stage = cells[1].isBlank() ? stage : cells[1].strip();
                for (String page : cells[2].split(",")) {
                    listed.add(stage + "/" + page.strip());
                }
            }
        }
        listed.remove("stage/page");
        assertEquals(listed, new Pages(Path.of("notebooks")).names());
        for (String name : List.of("site/a", "site/lost-mark", "site/check-points")) {
            write(name + ".md", Samples.TEXT);
        }
        assertEquals(
                List.of("site/check-points", "site/lost-mark", "site/a"),
                new Pages(notebooks).names());
    }

    @Test
    void findsAPageByItsName() throws IOException {
        Path file = write("transmit/feed-trim.md", Samples.TEXT);
        Page page = new Pages(notebooks).find("transmit/feed-trim");
        assertEquals("transmit/feed-trim", page.name());
        assertEquals(file, page.file());
        assertEquals(page, new Pages(notebooks).find("transmit\\feed-trim"));
    }

    @Test
    void hasAPageOnlyByItsWholeNameWithinItsFolder() throws IOException {
        write("site/a.md", Samples.TEXT);
        write("site/with space.md", Samples.TEXT);
        write("own/site/b.md", Samples.TEXT);
        Pages pages = new Pages(notebooks.resolve("site")).under(notebooks.resolve("own"));
        assertTrue(pages.has("a"));
        assertTrue(pages.has("with space"));
        assertTrue(pages.has("site/b"));
        for (String none : List.of("A", "a.md", "b", "../site/a", "./a", "", "site", "/a")) {
            assertFalse(pages.has(none), none);
        }
    }

    @Test
    void refusesAnUnknownNameWithNearOnes() throws IOException {
        write("transmit/feed-trim.md", Samples.TEXT);
        write("site/check-points.md", Samples.TEXT);
        Pages pages = new Pages(notebooks);
        String near = refusal(pages, "feed-trin");
        assertTrue(near.contains("page feed-trin is not in"), near);
        assertTrue(near.endsWith("near it are transmit/feed-trim"), near);
        assertTrue(
                refusal(pages, "xyz").endsWith("there are site/check-points, transmit/feed-trim"));
        assertTrue(refusal(pages, "../x").contains("is not in"));
    }

    private static String refusal(Pages pages, String name) {
        return assertThrows(IllegalArgumentException.class, () -> pages.find(name)).getMessage();
    }

    @Test
    void tellsTheProblemsOfAllPages() throws IOException {
        Path one = write("site/a.md", "# A");
        Path other = write("site/b.md", "# B");
        PageRefused refusal = assertThrows(PageRefused.class, () -> new Pages(notebooks).all());
        assertEquals(
                List.of(one, one, other, other),
                refusal.problems().stream().map(Problem::file).toList());
        assertTrue(refusal.getMessage().startsWith(one + ":1: has no steps; expected"));
    }

    @Test
    void refusesBytesThatAreNotText() throws IOException {
        Path file = notebooks.resolve("a.md");
        // The micro sign as Windows-1252 writes it, in line 3.
        byte[] text = "# A\n\n10 µA\n".getBytes(StandardCharsets.ISO_8859_1);
        Files.write(file, text);
        assertProblem(file, 3, "not UTF-8");
        Files.write(file, new byte[] {'#', ' ', (byte) 0xc2});
        assertProblem(file, 1, "not UTF-8");
    }

    @Test
    void refusesAHugeFile() throws IOException {
        assertProblem(write("huge.md", "x".repeat(2_000_001)), 0, "2000001 bytes are too many");
    }

    private void assertProblem(Path file, int line, String words) {
        Problem problem =
                assertThrows(PageRefused.class, () -> new Pages(notebooks).find(nameOf(file)))
                        .problems()
                        .get(0);
        assertEquals(line, problem.line());
        assertTrue(problem.message().contains(words), problem::message);
    }

    private static String nameOf(Path file) {
        return file.getFileName().toString().replace(".md", "");
    }

    @Test
    void aFileThatEndsOtherwiseIsNoPage() throws IOException {
        write("a.txt", Samples.TEXT);
        assertEquals(List.of(), new Pages(notebooks).names());
    }

    @Test
    void aPageIsParsedAgainOnlyWhenItsTextIsAnother() throws IOException {
        Path file = write("a.md", Samples.TEXT);
        Pages pages = new Pages(notebooks);
        Page first = pages.find("a");
        assertSame(first, pages.find("a"));
        assertSame(first, pages.under(notebooks.resolve("own")).find("a"));
        Files.writeString(file, Samples.TEXT.replaceFirst("# .*", "# Another"));
        assertEquals("Another", pages.find("a").title());
        Files.writeString(file, "# No page");
        assertThrows(PageRefused.class, () -> pages.find("a"));
    }
}
