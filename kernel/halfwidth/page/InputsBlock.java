package halfwidth.page;

import java.util.List;
import java.util.Objects;

/** Reads a {@code csv inputs} block. */
final class InputsBlock {
    private static final List<String> COLUMNS =
            List.of(
                    "name",
                    "unit",
                    "kind",
                    "example",
                    "label",
                    "default",
                    "from",
                    "least",
                    "most",
                    "uncertainty",
                    "optional");
    private static final int REQUIRED = 5;

    private final Problems problems;
    private final Names names;
    private final boolean files;

    InputsBlock(Problems problems, Names names, boolean files) {
        this.problems = problems;
        this.names = names;
        this.files = files;
    }

    Part.Inputs read(Fence fence) {
        Sheet sheet = Sheet.read(fence, COLUMNS, REQUIRED, problems);
        sheet.lines().forEach(line -> names.claim(line.line(), line.get("name")));
        List<Field> fields =
                sheet.lines().stream()
                        .map(line -> new FieldReader(line, problems, files).read())
                        .filter(Objects::nonNull)
                        .toList();
        return new Part.Inputs(fence.start(), fields);
    }
}
