package halfwidth.run;

import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.page.Result;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the worker needs of a page: its inputs, its code and the names of the variables whose final
 * values are wanted.
 *
 * @param pieces in the order of the page
 * @param wanted variables to report at the end
 * @param units in which the wanted variables are shown, by name; more than one is a mistake of the
 *     page
 */
public record Script(List<Piece> pieces, List<String> wanted, Map<String, List<String>> units)
        implements Serializable {

    /** The type of a table of readings. */
    public static final String TABLE = "tech.tablesaw.api.Table";

    public Script {
        pieces = List.copyOf(pieces);
        wanted = List.copyOf(wanted);
        units = new TreeMap<>(units); // in one order, since a page is found by its digest
    }

    /** A script whose wanted variables have no unit to be shown in. */
    public Script(List<Piece> pieces, List<String> wanted) {
        this(pieces, wanted, Map.of());
    }

    /** Takes from a page what the worker needs of it. */
    public static Script of(Page page) {
        List<Piece> pieces = new ArrayList<>();
        for (Part part : page.parts()) {
            if (part instanceof Part.Inputs inputs) {
                inputs.fields().forEach(field -> pieces.add(variable(field)));
            } else if (part instanceof Part.Readings readings) {
                pieces.add(table(readings));
            } else if (part instanceof Part.Steps steps) {
                pieces.add(new Code(steps.line(), steps.code(), false));
            } else if (part instanceof Part.Checks block) {
                pieces.add(new Code(block.line(), block.code(), true));
            }
        }
        return new Script(pieces, wanted(page), units(page));
    }

    private static Variable variable(Field field) {
        String type = Values.type(field.kind()).getName();
        return new Variable(field.line(), field.name(), type, Map.of("", field.unit()));
    }

    private static Variable table(Part.Readings table) {
        Map<String, String> units =
                table.columns().stream().collect(Collectors.toMap(Column::name, Column::unit));
        return new Variable(table.line(), table.name(), TABLE, units);
    }

    /** The results and the variables that they name. */
    private static List<String> wanted(Page page) {
        Stream<String> conditions =
                page.results().stream()
                        .flatMap(result -> result.shown().stream())
                        .flatMap(shown -> shown.variable().stream());
        return Stream.concat(page.results().stream().flatMap(Script::measured), conditions)
                .distinct()
                .toList();
    }

    /** A result and the variables that its limits and its uncertainty name. */
    private static Stream<String> measured(Result result) {
        return Stream.of(
                        Optional.of(result.name()),
                        result.least(),
                        result.most(),
                        result.uncertainty())
                .flatMap(Optional::stream)
                .filter(name -> Character.isJavaIdentifierStart(name.charAt(0)));
    }

    /** A result's unit is that of its limits and of its uncertainty, too. */
    private static Map<String, List<String>> units(Page page) {
        Map<String, List<String>> units = new TreeMap<>();
        for (Result result : page.results()) {
            if (!result.unit().isEmpty()) {
                measured(result)
                        .map(name -> units.computeIfAbsent(name, n -> new ArrayList<>()))
                        .filter(all -> !all.contains(result.unit()))
                        .forEach(all -> all.add(result.unit()));
            }
        }
        return units;
    }

    /** A part of the page that becomes snippets. */
    public sealed interface Piece extends Serializable {}

    /**
     * An input or a table of readings, declared as a variable of this name.
     *
     * @param line where the page declares it, 1-based
     * @param type the class of its values, such as {@code java.lang.Double}, or {@link #TABLE}
     * @param units of a table's columns, by their names; an input's own stands under ""
     */
    public record Variable(int line, String name, String type, Map<String, String> units)
            implements Piece {
        public Variable {
            units = new TreeMap<>(units); // in one order, since a page is found by its digest
        }

        /** A variable whose unit is not known. */
        public Variable(int line, String name, String type) {
            this(line, name, type, Map.of());
        }
    }

    /**
     * A block of top-level statements.
     *
     * @param line the line in the page's file of its first line, 1-based
     * @param checks whether its statements are checks
     */
    public record Code(int line, String text, boolean checks) implements Piece {}
}
