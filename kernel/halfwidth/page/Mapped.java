package halfwidth.page;

import halfwidth.value.Entry;
import halfwidth.value.Kind;
import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How one column of foreign data is taken into a table.
 *
 * @param heading how the data call it; {@code column 1} and so on where they have no header
 * @param column the table's column; empty if it is left out, or not known yet
 * @param unit the unit of its bare numbers; "" if none is stated
 * @param sign which way its bare numbers count
 */
public record Mapped(String heading, Optional<Column> column, String unit, Sign sign) {

    /** Which way bare numbers count. */
    public enum Sign {
        NOT_STATED(""),
        POSITIVE_150("+ in the 150"),
        POSITIVE_90("+ in the 90"),
        /** As the page counts, but the other way round. */
        REVERSED("reversed");

        private final String words;

        Sign(String words) {
            this.words = words;
        }
    }

    /**
     * Reads a heading such as {@code DDM [µA, + in the 150]}; what stands in the brackets beside a
     * unit is the sign.
     */
    static Mapped of(String heading, String as, List<Column> columns) {
        ColumnHeading stated = ColumnHeading.of(as.replace(',', '|'));
        String name = stated.name().isEmpty() ? as.strip() : stated.name();
        Optional<Column> column =
                columns.stream()
                        .filter(known -> plain(known.name()).equals(plain(name)))
                        .findFirst();
        String unit = "";
        Sign sign = Sign.NOT_STATED;
        for (String part : stated.bracket().orElse("").split("\\|")) {
            Optional<Sign> asSign = sign(part.strip());
            if (asSign.isPresent()) {
                sign = asSign.get();
            } else {
                unit = part.strip();
            }
        }
        return new Mapped(heading, column, unit, sign);
    }

    private static Optional<Sign> sign(String words) {
        for (Sign sign : Sign.values()) {
            if (!words.isEmpty() && sign.words.equals(words.replaceAll(" *Hz$", ""))) {
                return Optional.of(sign);
            }
        }
        return Optional.empty();
    }

    /** Names are the same whatever their capitals, blanks and underscores. */
    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
    }

    /** What has to be stated before these cells can be taken; none if nothing has. */
    List<String> questions(List<String> cells) {
        boolean bare = cells.stream().anyMatch(Mapped::isBare);
        if (column.isEmpty() || !bare) {
            return List.of();
        }
        Column to = column.get();
        List<String> questions = new ArrayList<>();
        boolean ddm = to.kind() instanceof Kind.Ddm;
        boolean size = to.kind() instanceof Kind.DdmSize;
        boolean measured = size || to.kind() instanceof Kind.Number && !to.unit().equals("1");
        if ((ddm || measured) && unit.isEmpty()) {
            questions.add(
                    String.format(
                            "%s: in which unit are its numbers? State it as in \"%s=%s [%s]\"",
                            heading, heading, to.name(), ddm ? "µA, + in the 150" : to.unit()));
        } else if (!unit.isEmpty() && Unit.find(unit).isEmpty()) {
            questions.add(heading + ": " + unit + " is no unit known here; state another");
        }
        boolean told = sign == Sign.POSITIVE_150 || sign == Sign.POSITIVE_90;
        if (ddm && !told) {
            questions.add(
                    String.format(
                            "%s: on which side are its numbers positive? State it as in \"%s=%s"
                                    + " [%s, + in the 150]\" or \"+ in the 90\"",
                            heading, heading, to.name(), unit.isEmpty() ? "µA" : unit));
        }
        return questions;
    }

    /** A cell as one would type it into the table. */
    String typed(String cell) {
        if (!isBare(cell)) {
            return cell.strip();
        }
        boolean turned = sign == Sign.POSITIVE_90 || sign == Sign.REVERSED;
        String number = turned ? turned(cell.strip()) : cell.strip();
        boolean words = column.map(to -> to.unit().isEmpty()).orElse(true);
        boolean same = unit.isEmpty() || unit.equals("1") || words;
        return same ? number : Entry.inUnit(number, unit);
    }

    /** A cell that ends in a digit has no unit and no side of its own. */
    private static boolean isBare(String cell) {
        String text = cell.strip();
        return !text.isEmpty()
                && Character.isDigit(text.charAt(text.length() - 1))
                && !text.contains(" in ");
    }

    private static String turned(String number) {
        boolean minus = number.startsWith("-") || number.startsWith("\u2212");
        return minus ? number.substring(1) : "-" + number.replaceFirst("^\\+", "");
    }

    /** For people: {@code DDM → near [µA, + in the 150]}. */
    public String words() {
        if (column.isEmpty()) {
            return heading + " → left out";
        }
        List<String> stated = new ArrayList<>();
        if (!unit.isEmpty()) {
            stated.add(unit);
        }
        if (sign != Sign.NOT_STATED) {
            stated.add(sign.words);
        }
        String to = column.get().unit().isEmpty() ? "" : ", converted to " + column.get().unit();
        String bracket = stated.isEmpty() ? "" : " [" + String.join(", ", stated) + "]";
        return heading + " → " + column.get().name() + bracket + to;
    }
}
