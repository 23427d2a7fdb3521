package halfwidth.page;

import java.util.List;

/** A piece of a page. {@link #line()} is the 1-based line in the file where its content starts. */
public sealed interface Part {
    int line();

    /**
     * Prose between blocks; the title is not part of it. Each piece is Markdown by itself: a link
     * by reference finds its definition in the same piece only.
     *
     * @param markdown its CommonMark source
     */
    record Prose(int line, String markdown) implements Part {}

    /** A {@code csv inputs} block. */
    record Inputs(int line, List<Field> fields) implements Part {
        public Inputs {
            fields = List.copyOf(fields);
        }
    }

    /**
     * A {@code csv readings NAME} block, behind whose name {@code gathered} and {@code optional}
     * may stand.
     *
     * @param example the worked example's rows, each as long as {@code columns}; blank is missing
     * @param gathered whether, in a job, the rows of earlier visits of the page stand above its own
     * @param optional whether it may be left without rows: what needs it is then left out
     */
    record Readings(
            int line,
            String name,
            List<Column> columns,
            List<List<String>> example,
            boolean gathered,
            boolean optional)
            implements Part {
        public Readings {
            columns = List.copyOf(columns);
            example = example.stream().map(List::copyOf).toList();
        }

        /** A table that holds its own rows only and has to be filled in. */
        public Readings(int line, String name, List<Column> columns, List<List<String>> example) {
            this(line, name, columns, example, false, false);
        }

        /** The same table, gathering earlier visits or not, optional or not. */
        Readings of(boolean gathers, boolean mayBeLeft) {
            return new Readings(line, name, columns, example, gathers, mayBeLeft);
        }
    }

    /**
     * A {@code java} block: steps.
     *
     * @param code its text, whose first line is {@code line}
     */
    record Steps(int line, String code) implements Part {}

    /** A {@code java check} block, laid out like steps. */
    record Checks(int line, String code) implements Part {}

    /** A {@code csv results} block. */
    record Results(int line, List<Result> results) implements Part {
        public Results {
            results = List.copyOf(results);
        }
    }
}
