package halfwidth.page;

import halfwidth.value.Kind;
import halfwidth.value.Unit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The heading of a column of readings, as in {@code azimuth [°]}.
 *
 * @param bracket what stands in brackets; empty if there are none
 */
record ColumnHeading(String name, Optional<String> bracket) {
    static final String EXPECTED =
            " is no heading; expected a name with its unit, as in near [DDM], step [DDM size], a [°], on [date],"
                    + " points [count], mark [text], and behind it optional, as in near [DDM optional]";

    private static final String OPTIONAL = "optional";

    /** Neither separators of CSV files nor brackets can be part of a name. */
    private static final Pattern HEADING =
            Pattern.compile("([^\\[\\],;\\t]+?)\\s*(?:\\[\\s*([^\\[\\]]*?)\\s*])?");

    /** Reads a heading; its name is empty if it is none. */
    static ColumnHeading of(String cell) {
        Matcher heading = HEADING.matcher(cell.strip());
        return heading.matches()
                ? new ColumnHeading(heading.group(1), Optional.ofNullable(heading.group(2)))
                : new ColumnHeading("", Optional.empty());
    }

    /** The column that it declares; empty if it declares none. */
    Optional<Column> column() {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        String inBracket = bracket.orElse("text");
        boolean optional = inBracket.equals(OPTIONAL) || inBracket.endsWith(" " + OPTIONAL);
        if (!optional) {
            return column(inBracket);
        }
        String kind = inBracket.substring(0, inBracket.length() - OPTIONAL.length()).strip();
        return column(kind.isEmpty() ? "text" : kind)
                .map(column -> new Column(name, column.kind(), column.unit(), true));
    }

    private Optional<Column> column(String inBracket) {
        if (inBracket.equals("DDM")) {
            return Optional.of(new Column(name, new Kind.Ddm(), inBracket));
        }
        if (inBracket.equals("DDM size")) {
            return Optional.of(new Column(name, new Kind.DdmSize(), "DDM"));
        }
        if (inBracket.equals("count")) {
            return Optional.of(new Column(name, new Kind.Count(), "1"));
        }
        Optional<Kind> words = Kinds.of(inBracket).filter(Kinds::isWords);
        return words.isPresent()
                ? words.map(kind -> new Column(name, kind, ""))
                : Unit.find(inBracket)
                        .map(unit -> new Column(name, new Kind.Number(), unit.label()));
    }
}
