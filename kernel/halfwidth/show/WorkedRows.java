package halfwidth.show;

import halfwidth.formula.EachRow;
import halfwidth.formula.PlainFormula;
import halfwidth.formula.Term;
import halfwidth.formula.Terms;
import halfwidth.run.Outcome;
import halfwidth.run.Rows;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import halfwidth.run.Step;
import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a step computes for each of its rows, and a few of the rows with their numbers: the first,
 * the last, and the worst, which is the one that gave the step's value where one did, as with a
 * minimum, and otherwise the one farthest from zero.
 *
 * @param step the step
 * @param value what it came to
 * @param rows how
 */
public record WorkedRows(Step step, Shown value, Rows rows) {

    /** All that a step computes row by row; empty unless the run kept its workings. */
    public static List<WorkedRows> of(Run run, Run.Ran ran) {
        return ran.outcome() instanceof Outcome.Done done
                ? run.rows().getOrDefault(ran.step().index(), List.of()).stream()
                        .map(rows -> new WorkedRows(ran.step(), done.value(), rows))
                        .filter(WorkedRows::saysMore)
                        .toList()
                : List.of();
    }

    /** A single row that only calls a method says nothing that the step does not. */
    private boolean saysMore() {
        return rows.count() > 1 && !parts().isEmpty()
                || parts().stream().anyMatch(part -> Terms.computes(part.term()));
    }

    /** The parts that gave a number in one of the rows shown. */
    private List<EachRow.Part> parts() {
        return rows.each().parts().stream()
                .filter(part -> rows.rows().stream().anyMatch(row -> number(row, part).isPresent()))
                .toList();
    }

    private static Optional<Shown> number(Rows.Row row, EachRow.Part part) {
        return Optional.ofNullable(row.used().get(part.place()))
                .filter(value -> !(value instanceof Shown.Flag));
    }

    /** What the rows are, as in {@code For each n, of 9 rows}. */
    public String heading() {
        String of = String.join(", ", rows.each().of());
        return "For each "
                + (of.isEmpty() ? "turn" : of)
                + ", of "
                + Counted.of(rows.count(), "row");
    }

    /** What is computed for each row, in its order. */
    public List<Computed> formulas() {
        return parts().stream()
                .map(part -> new Computed(part.name(), part.complete(), part.term()))
                .toList();
    }

    /**
     * A number of a row.
     *
     * @param name what it is kept in; "" where it is what the row gives
     * @param complete whether its formula says more than the Java does
     */
    public record Computed(String name, boolean complete, Term formula) {}

    /** The rows that are shown. */
    public List<OneRow> shown() {
        return rows.rows().stream().map(this::row).toList();
    }

    private OneRow row(Rows.Row row) {
        List<Came> numbers =
                parts().stream()
                        .filter(part -> number(row, part).isPresent())
                        .map(part -> came(row, part))
                        .toList();
        NumbersPut put = new NumbersPut(row.used());
        List<NumbersPut.Branch> branches =
                rows.each().parts().stream()
                        .flatMap(part -> put.branches(part.term()).stream())
                        .toList();
        List<NumbersPut.Defined> methods =
                put.methods(rows.methods()).stream()
                        .filter(method -> method.numbers().isPresent())
                        .toList();
        return new OneRow(label(row), numbers, branches, methods);
    }

    private Came came(Rows.Row row, EachRow.Part part) {
        Shown number = number(row, part).orElseThrow();
        Optional<Term> put =
                part.complete() ? new NumbersPut(row.used()).in(part.term()) : Optional.empty();
        return new Came(part.name(), put, number, Values.words(number, unit(row, number)));
    }

    /** Which row it is, and why it is shown. */
    private String label(Rows.Row row) {
        if (rows.count() == 1) {
            return "the only row" + of(row);
        }
        List<String> why = new ArrayList<>();
        row.why().forEach(one -> why.add(words(one)));
        return "row %s, %s%s".formatted(row.number(), String.join(" and ", why), of(row));
    }

    /** What it is the row of, as in {@code , n = 3}. */
    private String of(Rows.Row row) {
        List<String> names = rows.each().of();
        return IntStream.range(0, Math.min(names.size(), row.of().size()))
                .mapToObj(i -> ", " + names.get(i) + " = " + row.of().get(i))
                .collect(Collectors.joining());
    }

    private static String words(Rows.Why why) {
        return switch (why) {
            case FIRST -> "the first";
            case TAKEN -> "which gives the result";
            case FARTHEST -> "farthest from 0";
            case LAST -> "the last";
        };
    }

    /** The unit of a number, which is known where it is one of those that the step gives. */
    private String unit(Rows.Row row, Shown number) {
        if (!(number instanceof Shown.Real real)) {
            return "";
        }
        boolean same = value instanceof Shown.Real whole && whole.value() == real.value();
        boolean cell =
                value instanceof Shown.Grid grid
                        && Values.isSeries(grid)
                        && row.number() <= grid.rows().size()
                        && Double.valueOf(real.value())
                                .equals(grid.rows().get(row.number() - 1).get(0));
        return same || cell ? unit() : "";
    }

    private String unit() {
        String stated = step.note().split(":", 2)[0].strip();
        return step.unit().isEmpty() && Unit.find(stated).isPresent() ? stated : step.unit();
    }

    /**
     * A row with its numbers.
     *
     * @param label which it is and why it is shown
     * @param numbers in the order of the formulas
     * @param branches the conditions it met
     * @param methods the page's methods that it went through, with its numbers
     */
    public record OneRow(
            String label,
            List<Came> numbers,
            List<NumbersPut.Branch> branches,
            List<NumbersPut.Defined> methods) {}

    /**
     * What a formula came to in a row.
     *
     * @param numbers the formula with the row's numbers; empty if none went in by itself
     * @param value what came of it
     * @param result the same in words, with its unit where that is known
     */
    public record Came(String name, Optional<Term> numbers, Shown value, String result) {
        private String words() {
            String left = name.isEmpty() ? "" : name + " = ";
            return left + numbers.map(PlainFormula::of).map(n -> n + " = ").orElse("") + result;
        }
    }

    /** A line of text for what is computed, then one for each row. */
    public List<String> text() {
        List<String> lines = new ArrayList<>();
        lines.add(
                heading()
                        + ": "
                        + formulas().stream()
                                .map(WorkedRows::plain)
                                .collect(Collectors.joining("; ")));
        for (OneRow row : shown()) {
            lines.add(
                    row.label()
                            + ": "
                            + row.numbers().stream()
                                    .map(Came::words)
                                    .collect(Collectors.joining("; ")));
        }
        return lines;
    }

    private static String plain(Computed part) {
        String left = part.name().isEmpty() ? "" : part.name() + " = ";
        return left + PlainFormula.of(part.formula());
    }
}
