package halfwidth.page;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** A page with one of everything, and ways to spoil it. */
final class Samples {
    static final String TEXT = resource("sample.md");
    static final Path FILE = Path.of("sample.md");

    private Samples() {}

    private static String resource(String name) {
        try (InputStream stream = Samples.class.getResourceAsStream(name)) {
            return SourceText.withPlainLines(
                    new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static Page parse(String text) {
        return Pages.parse("sample", FILE, text);
    }

    static Page page() {
        return parse(TEXT);
    }

    /** The sample with a piece of it replaced. */
    static String with(String piece, String replacement) {
        assertTrue(TEXT.contains(piece), () -> "the sample has no " + piece);
        return TEXT.replace(piece, replacement);
    }

    /** The 1-based line of the first line that contains a piece of text. */
    static int line(String text, String piece) {
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).contains(piece)) {
                return i + 1;
            }
        }
        throw new AssertionError("no line with " + piece);
    }

    static List<Problem> problems(String text) {
        return assertThrows(PageRefused.class, () -> parse(text)).problems();
    }

    /** Asserts that the text has one problem, at a line, in words that help. */
    static void assertRefused(String text, int line, String... words) {
        List<Problem> problems = problems(text);
        assertTrue(problems.size() == 1, () -> "expected one problem: " + problems);
        assertRefusedAmongOthers(text, line, words);
    }

    static void assertRefusedAmongOthers(String text, int line, String... words) {
        List<Problem> problems = problems(text);
        assertTrue(
                problems.stream()
                        .anyMatch(
                                problem ->
                                        problem.line() == line
                                                && List.of(words).stream()
                                                        .allMatch(problem.message()::contains)),
                () -> "line " + line + " " + List.of(words) + " is not among " + problems);
    }
}
