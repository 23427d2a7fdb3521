package halfwidth.engine;

import halfwidth.run.Script;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The steps of {@code hostile-steps.txt}, as pages. */
final class HostileSteps {
    private static final Pattern HEADING = Pattern.compile("== (.*?)( !)? \\| (.*)");

    /**
     * One of them.
     *
     * @param name what it tries
     * @param uses what its refusal names
     * @param line the first line of its code
     * @param lines how many lines it has
     * @param shown whether its harm can be seen
     * @param mark the file that it makes where it does harm to files
     */
    record Hostile(
            String name, String uses, int line, int lines, boolean shown, Path mark, String code) {
        boolean has(int at) {
            return at >= line && at < line + lines;
        }

        @Override
        public String toString() {
            return name + " (line " + line + ")";
        }
    }

    private HostileSteps() {}

    /**
     * Reads them.
     *
     * @param folder where they are to do their harm
     */
    static List<Hostile> in(Path folder) throws IOException {
        Path near = Files.writeString(folder.resolve("near"), "x");
        String[] text;
        try (InputStream in = HostileSteps.class.getResourceAsStream("hostile-steps.txt")) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\\R");
        }
        List<Hostile> all = new ArrayList<>();
        for (int i = 0; i < text.length; i++) {
            Matcher heading = HEADING.matcher(text[i]);
            if (!heading.matches()) {
                continue;
            }
            int end = i + 1;
            while (end < text.length && !text[end].isBlank() && !text[end].startsWith("== ")) {
                end++;
            }
            Path mark = folder.resolve("harm-" + all.size());
            String code =
                    String.join("\n", List.of(text).subList(i + 1, end))
                            .replace("HARM", literal(mark))
                            .replace("NEAR", literal(near))
                            .replace("#", String.valueOf(all.size()));
            all.add(
                    new Hostile(
                            heading.group(1),
                            heading.group(3),
                            i + 2,
                            end - i - 1,
                            heading.group(2) != null,
                            mark,
                            code));
        }
        return all;
    }

    private static String literal(Path path) {
        return '"' + path.toString().replace('\\', '/') + '"';
    }

    /** A page of some of them, with one input. */
    static Script page(List<Hostile> steps) {
        List<Script.Piece> pieces = new ArrayList<>();
        pieces.add(new Script.Variable(1, "given", "java.lang.Double"));
        pieces.addAll(
                steps.stream()
                        .map(step -> new Script.Code(step.line(), step.code(), false))
                        .collect(Collectors.toList()));
        return new Script(pieces, List.of());
    }
}
