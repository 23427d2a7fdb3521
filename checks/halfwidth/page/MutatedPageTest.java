package halfwidth.page;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** However a page is spoilt, it is read or refused by line, never anything else. */
class MutatedPageTest {
    private static final String[] PIECES = {
        "",
        ",",
        "\"",
        "```",
        "~~~",
        "```java",
        "```csv inputs",
        "[",
        "]",
        "#",
        "|",
        ";",
        "\t",
        "\r",
        "\u0000",
        "\ud83d",
        "é",
        "> ",
        "- ",
        "1",
        "-",
        "DDM",
        "\n",
        "\n\n",
        "    "
    };

    @Law(tries = 3000)
    void isReadOrRefusedByLine(Draw draw) {
        String text = mutated(draw.random());
        try {
            Page page = Samples.parse(text);
            assertFalse(page.title().isBlank());
            assertNotNull(page.purpose());
            assertNotNull(page.cautions());
            assertTrue(Filled.example(page).example());
        } catch (PageRefused refusal) {
            long lines = Math.max(1, SourceText.withPlainLines(text).lines().count());
            assertFalse(refusal.problems().isEmpty());
            for (Problem problem : refusal.problems()) {
                assertTrue(problem.line() >= 1 && problem.line() <= lines, problem::toString);
            }
        }
    }

    private static String mutated(Random random) {
        List<String> lines = new ArrayList<>(Samples.TEXT.lines().toList());
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(lines.size());
            switch (random.nextInt(5)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
                case 2 -> lines.set(at, PIECES[random.nextInt(PIECES.length)]);
                default -> lines.set(at, spoilt(lines.get(at), random));
            }
        }
        return String.join("\n", lines);
    }

    private static String spoilt(String line, Random random) {
        int from = random.nextInt(line.length() + 1);
        int to = Math.min(line.length(), from + random.nextInt(4));
        String piece = PIECES[random.nextInt(PIECES.length)];
        return line.substring(0, from) + piece + line.substring(to);
    }
}
