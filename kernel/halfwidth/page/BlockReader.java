package halfwidth.page;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads each fenced block by what its info string says. */
final class BlockReader {
    private static final Pattern READINGS =
            Pattern.compile("csv readings (\\S+)( gathered)?( optional)?");
    private static final String EXPECTED =
            "expected csv inputs, csv readings NAME, java, java check or csv results";

    private final Problems problems;
    private final Names variables;
    private final Names results;
    private final boolean files;
    private boolean hasSteps;
    private boolean hasResults;

    BlockReader(Problems problems, boolean files) {
        this.files = files;
        this.problems = problems;
        this.variables = new Names(problems);
        this.results = new Names(problems);
    }

    /** The block's part of the page; empty if it is empty or of no known kind. */
    Optional<Part> read(Fence fence) {
        hasSteps |= fence.info().equals("java");
        hasResults |= fence.info().equals("csv results");
        if (fence.content().isBlank()) {
            problems.add(
                    fence.line(), "the " + fence.info() + " block is empty; fill or remove it");
            return Optional.empty();
        }
        checkVisible(fence);
        return Optional.ofNullable(part(fence));
    }

    /** What turns letters round or cannot be seen makes a block look like another than it is. */
    private void checkVisible(Fence fence) {
        List<String> lines = fence.content().lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            int line = fence.start() + i;
            lines.get(i)
                    .codePoints()
                    .filter(letter -> Character.getType(letter) == Character.FORMAT)
                    .findFirst()
                    .ifPresent(
                            letter ->
                                    problems.add(
                                            line,
                                            "has the invisible character U+%04X; delete it, or type the line anew"
                                                    .formatted(letter)));
        }
    }

    private Part part(Fence fence) {
        Matcher readings = READINGS.matcher(fence.info());
        if (readings.matches()) {
            Part.Readings table =
                    new ReadingsBlock(problems, variables).read(fence, readings.group(1));
            return table.of(readings.group(2) != null, readings.group(3) != null);
        }
        return switch (fence.info()) {
            case "java" -> new Part.Steps(fence.start(), fence.content());
            case "java check" -> new Part.Checks(fence.start(), fence.content());
            case "csv inputs" -> new InputsBlock(problems, variables, files).read(fence);
            case "csv results" -> new ResultsBlock(problems, results).read(fence);
            default -> unknown(fence);
        };
    }

    private Part unknown(Fence fence) {
        problems.add(fence.line(), fence.info() + " is no kind of block; " + EXPECTED);
        return null;
    }

    void checkComplete() {
        if (!hasSteps) {
            problems.add(1, "has no steps; expected at least one java block");
        }
        if (!hasResults) {
            problems.add(1, "has no results; expected a csv results block");
        }
    }
}
