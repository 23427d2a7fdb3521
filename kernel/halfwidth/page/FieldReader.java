package halfwidth.page;

import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import halfwidth.value.Kind;
import halfwidth.value.Unit;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads one declared input, and checks that its example can be typed into it. */
final class FieldReader {
    private static final Pattern PLAIN_NUMBER =
            Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");
    private static final Pattern RESULT_OF_A_PAGE =
            Pattern.compile("[^#/\\\\]+(/[^#/\\\\]+)*#([^#]+)");
    private static final String DDM = "DDM";

    private final Sheet.Line line;
    private final Problems problems;
    private final boolean files;

    /**
     * A reader of one line.
     *
     * @param files whether an array may be named by the path of a file
     */
    FieldReader(Sheet.Line line, Problems problems, boolean files) {
        this.line = line;
        this.problems = problems;
        this.files = files;
    }

    /** The field, or null if anything is wrong with it. */
    Field read() {
        int before = problems.count();
        Kind kind = kind();
        if (kind == null) {
            return null;
        }
        Field field = field(kind);
        if (problems.count() == before) {
            checkEntry(field, "example");
            field.standing().ifPresent(standing -> checkEntry(field, "default"));
        }
        return problems.count() == before ? field : null;
    }

    private Field field(Kind kind) {
        Optional<Double> least = limit("least", kind);
        Optional<Double> most = limit("most", kind);
        checkOrder(least, most);
        checkRest(kind);
        String unit = unit(kind);
        return new Field(
                line.line(),
                line.get("name"),
                kind,
                unit,
                line.get("example"),
                line.find("default"),
                line.find("from"),
                least,
                most,
                line.get("label"),
                uncertainty(kind, unit),
                optional());
    }

    private boolean optional() {
        Optional<String> cell = line.find("optional");
        if (cell.isPresent() && !cell.get().equals("yes")) {
            wrong("optional " + cell.get() + " is not known; expected yes, or nothing");
        } else if (cell.isPresent() && line.find("default").isPresent()) {
            wrong("default leaves nothing optional; expected one of the two");
        }
        return cell.isPresent();
    }

    private void wrong(String message) {
        problems.add(line.line(), message);
    }

    private Kind kind() {
        String word = line.find("kind").orElse("number");
        Optional<Kind> kind = Kinds.of(word);
        if (kind.isEmpty()) {
            wrong("kind " + word + " is not known; " + Kinds.EXPECTED);
        }
        return kind.filter(Kind.Array.class::isInstance)
                .map(array -> (Kind) new Kind.Array(((Kind.Array) array).orNone(), files))
                .or(() -> kind)
                .orElse(null);
    }

    private String unit(Kind kind) {
        String label = line.get("unit");
        if (!Kinds.isNumeric(kind)) {
            if (!label.isEmpty()) {
                wrong("unit " + label + " has no meaning for this kind; expected none");
            }
            return "";
        }
        Optional<Unit> unit = Unit.find(label);
        if (unit.isEmpty()) {
            wrong(
                    "unit "
                            + Names.quoted(label)
                            + " is not known; expected as in mm, or 1 for none");
        } else if (Kinds.isDdm(kind) && !label.equals(DDM) && !label.equals("1")) {
            wrong("unit " + label + " does not fit a kind of DDM; expected DDM or 1");
        } else if (label.equals(DDM) && !Kinds.isDdm(kind)) {
            wrong("unit DDM does not fit this kind; expected kind ddm or ddm size");
        }
        return unit.map(Unit::label).orElse("");
    }

    private Optional<Double> limit(String column, Kind kind) {
        Optional<String> cell = line.find(column);
        if (cell.isPresent() && !Kinds.isNumeric(kind)) {
            wrong(column + " has no meaning for this kind; expected none");
            return Optional.empty();
        }
        if (cell.isPresent() && !isNumber(cell.get())) {
            wrong(column + " " + cell.get() + " is no number; expected as in 0.5, in the unit");
            return Optional.empty();
        }
        return cell.map(Double::valueOf);
    }

    private Optional<Double> uncertainty(Kind kind, String unit) {
        Optional<String> cell = line.find("uncertainty");
        if (cell.isEmpty() || Kinds.isNumeric(kind) && unit.isEmpty()) {
            return Optional.empty(); // the unit has been complained of
        }
        try {
            return Optional.of((Double) Entry.uncertainty(kind, unit, cell.get()).value());
        } catch (EntryRefused refusal) {
            wrong("uncertainty: " + refusal.getMessage());
            return Optional.empty();
        }
    }

    static boolean isNumber(String cell) {
        return PLAIN_NUMBER.matcher(cell).matches() && Double.isFinite(Double.parseDouble(cell));
    }

    private void checkOrder(Optional<Double> least, Optional<Double> most) {
        if (least.isPresent() && most.isPresent() && least.get() > most.get()) {
            wrong("least " + line.get("least") + " is above most " + line.get("most"));
        }
    }

    private void checkRest(Kind kind) {
        if (line.get("label").isEmpty()) {
            wrong("label is empty; expected what a technician reads beside the field");
        }
        if (line.find("default").isPresent() && !Kinds.isNumeric(kind)) {
            wrong("default has no meaning for this kind; expected none");
        }
        line.find("from")
                .filter(from -> !isResult(from))
                .ifPresent(
                        from ->
                                wrong(
                                        "from "
                                                + from
                                                + " names no result; expected as in"
                                                + " lines/phase-constant#phaseConstant"));
    }

    private static boolean isResult(String from) {
        return RESULT_OF_A_PAGE.matcher(from).matches()
                && Names.isVariable(from.substring(from.indexOf('#') + 1));
    }

    private void checkEntry(Field field, String column) {
        try {
            field.read(line.get(column));
        } catch (EntryRefused refusal) {
            wrong(column + ": " + refusal.getMessage());
        }
    }
}
