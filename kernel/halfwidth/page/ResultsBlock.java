package halfwidth.page;

import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads a {@code csv results} block. */
final class ResultsBlock {
    private static final List<String> COLUMNS =
            List.of(
                    "name",
                    "unit",
                    "decimals",
                    "label",
                    "least",
                    "most",
                    "source",
                    "uncertainty",
                    "shown");
    private static final int REQUIRED = 4;

    private final Problems problems;
    private final Names names;

    ResultsBlock(Problems problems, Names names) {
        this.problems = problems;
        this.names = names;
    }

    Part.Results read(Fence fence) {
        Sheet sheet = Sheet.read(fence, COLUMNS, REQUIRED, problems);
        List<Result> results = new ArrayList<>();
        String group = "";
        for (Sheet.Line line : sheet.lines()) {
            if (isHeading(line)) {
                group = line.get("label");
            } else {
                names.claim(line.line(), line.get("name"));
                result(line, group).ifPresent(results::add);
            }
        }
        checkActions(results);
        return new Part.Results(fence.start(), results);
    }

    private void checkActions(List<Result> results) {
        Set<String> all = results.stream().map(Result::name).collect(Collectors.toSet());
        for (Result result : results) {
            result.shown()
                    .filter(shown -> shown.variable().isEmpty())
                    .map(ShownWhen::name)
                    .filter(action -> !all.contains(action) || action.equals(result.name()))
                    .ifPresent(
                            action ->
                                    problems.add(
                                            result.line(),
                                            "shown names %s; expected another result of this table"
                                                    .formatted(Names.quoted(action))));
        }
    }

    /** Whether a row has a label alone, which then is the heading of those below it. */
    private static boolean isHeading(Sheet.Line line) {
        return line.find("label").isPresent()
                && COLUMNS.stream().filter(column -> line.find(column).isPresent()).count() == 1;
    }

    private Optional<Result> result(Sheet.Line line, String group) {
        int before = problems.count();
        checkLabels(line);
        checkLimits(line);
        Optional<ShownWhen> shown = line.find("shown").flatMap(ShownWhen::read);
        if (shown.isEmpty() && line.find("shown").isPresent()) {
            problems.add(
                    line.line(),
                    "shown %s is not understood; expected %s"
                            .formatted(Names.quoted(line.get("shown")), ShownWhen.EXPECTED));
        }
        String unit = unit(line);
        int decimals = decimals(line);
        if (problems.count() > before) {
            return Optional.empty();
        }
        return Optional.of(
                new Result(
                        line.line(),
                        line.get("name"),
                        unit,
                        decimals,
                        line.find("least"),
                        line.find("most"),
                        line.get("source"),
                        line.find("uncertainty"),
                        line.get("label"),
                        group,
                        shown));
    }

    private void checkLabels(Sheet.Line line) {
        if (line.get("label").isEmpty()) {
            problems.add(line.line(), "label is empty; expected what a technician reads beside it");
        }
        line.find("uncertainty")
                .filter(name -> !Names.isVariable(name))
                .ifPresent(
                        name ->
                                problems.add(
                                        line.line(),
                                        "uncertainty "
                                                + name
                                                + " is no Java variable; expected"
                                                + " the one that holds the standard uncertainty"));
    }

    private String unit(Sheet.Line line) {
        String label = line.get("unit");
        Optional<Unit> unit = Unit.find(label);
        if (unit.isEmpty() && !label.isEmpty()) {
            problems.add(
                    line.line(),
                    "unit "
                            + label
                            + " is not known; expected as in mm, 1 for a plain number, or"
                            + " none for words");
        }
        return unit.map(Unit::label).orElse("");
    }

    private int decimals(Sheet.Line line) {
        String cell = line.get("decimals");
        boolean words = line.get("unit").isEmpty() && cell.isEmpty();
        if (!words && !cell.matches("\\d|1[0-5]")) {
            problems.add(
                    line.line(),
                    "decimals " + Names.quoted(cell) + " must be a number from 0 to 15");
            return 0;
        }
        return words ? 0 : Integer.parseInt(cell);
    }

    private void checkLimits(Sheet.Line line) {
        Optional<String> least = line.find("least");
        Optional<String> most = line.find("most");
        checkLimit(line.line(), "least", least);
        checkLimit(line.line(), "most", most);
        if ((least.isPresent() || most.isPresent()) && line.get("source").isEmpty()) {
            problems.add(
                    line.line(),
                    "source is empty; a limit must name its source, as in ICAO Annex 10 Vol I,"
                            + " 3.1.3.7");
        }
        Optional<Double> low = least.filter(FieldReader::isNumber).map(Double::valueOf);
        Optional<Double> high = most.filter(FieldReader::isNumber).map(Double::valueOf);
        if (low.isPresent() && high.isPresent() && low.get() > high.get()) {
            problems.add(line.line(), "least " + least.get() + " is above most " + most.get());
        }
    }

    private void checkLimit(int line, String column, Optional<String> limit) {
        limit.filter(cell -> !FieldReader.isNumber(cell) && !Names.isVariable(cell))
                .ifPresent(
                        cell ->
                                problems.add(
                                        line,
                                        column
                                                + " "
                                                + cell
                                                + " is neither a number nor a Java"
                                                + " variable; expected one of them"));
    }
}
