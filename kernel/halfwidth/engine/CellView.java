package halfwidth.engine;

import halfwidth.localizer.uncertainty.Estimate;
import java.io.Serializable;
import java.lang.reflect.Array;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** A value within a table or a record: a number, or what is in it in few words. */
final class CellView {
    /** How deep records within records are told; below that their kind must do. */
    private static final int DEPTH = 2;

    /** What is longer has a step of its own, if anybody is to check it. */
    private static final int LONGEST = 160;

    /** Of more items than this only the first and the last are told. */
    private static final int ITEMS = 3;

    private static final MathContext DIGITS = new MathContext(6);

    private CellView() {}

    /**
     * What stands in a cell: {@code Double} for a number, {@code String} for anything else, null
     * for what is missing, which a number that is none means in a table of readings.
     */
    static Serializable of(Object item) {
        Object value = unwrapped(item);
        if (value == null || value instanceof Number number && Double.isNaN(number.doubleValue())) {
            return null;
        }
        boolean finite = value instanceof Number number && Double.isFinite(number.doubleValue());
        return finite ? (Serializable) ((Number) value).doubleValue() : cut(words(value, 0));
    }

    private static String cut(String words) {
        return words.length() <= LONGEST ? words : words.substring(0, LONGEST) + " …";
    }

    /** The same in words. */
    static String words(Object item) {
        return cut(words(item, 1));
    }

    /** The cells of a record, in the order of its components. */
    static List<Serializable> row(Record item) {
        List<Serializable> row = new ArrayList<>();
        for (RecordComponent component : item.getClass().getRecordComponents()) {
            row.add(of(component(item, component)));
        }
        return row;
    }

    private static Object component(Record item, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(item);
        } catch (ReflectiveOperationException e) {
            return String.valueOf(e.getCause());
        }
    }

    private static Object unwrapped(Object item) {
        if (item instanceof Optional<?> optional) {
            return unwrapped(optional.orElse(null));
        }
        if (item instanceof OptionalDouble optional) {
            return optional.isPresent() ? optional.getAsDouble() : null;
        }
        if (item instanceof OptionalInt optional) {
            return optional.isPresent() ? optional.getAsInt() : null;
        }
        return item;
    }

    private static String words(Object item, int depth) {
        Object value = unwrapped(item);
        if (value == null) {
            return "–";
        }
        if (value instanceof Number number) {
            return number(number.doubleValue());
        }
        if (value instanceof Estimate estimate) {
            return String.format(
                    Locale.ROOT, "%.6g ± %.2g", estimate.value(), estimate.standardUncertainty());
        }
        if (value instanceof Collection<?> items) {
            return items(List.copyOf(items), depth);
        }
        if (value.getClass().isArray()) {
            return items(list(value), depth);
        }
        return value instanceof Record record ? record(record, depth) : plain(value);
    }

    private static String number(double value) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "–" : value > 0 ? "∞" : "-∞";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros();
        return Math.abs(rounded.scale()) > 12 ? rounded.toString() : rounded.toPlainString();
    }

    private static List<Object> list(Object array) {
        List<Object> items = new ArrayList<>();
        for (int i = 0; i < Array.getLength(array); i++) {
            items.add(Array.get(array, i));
        }
        return items;
    }

    private static String items(List<?> items, int depth) {
        if (items.isEmpty()) {
            return "none";
        }
        if (items.size() <= ITEMS) {
            return items.stream().map(one -> words(one, depth)).collect(Collectors.joining(", "));
        }
        if (depth > 0 && items.get(0) instanceof Record) {
            return items.size() + " items";
        }
        Object last = items.get(items.size() - 1);
        return "%s, … %s (%s items)"
                .formatted(words(items.get(0), depth), words(last, depth), items.size());
    }

    private static String record(Record record, int depth) {
        if (depth == DEPTH) {
            return record.getClass().getSimpleName();
        }
        return Arrays.stream(record.getClass().getRecordComponents())
                .map(part -> part.getName() + " " + words(component(record, part), depth + 1))
                .collect(Collectors.joining(", ", "(", ")"));
    }

    /** The text of a value, or its kind where the text is a number that no two runs share. */
    static String plain(Object value) {
        String text = String.valueOf(value);
        Class<?> kind = value.getClass();
        return text.startsWith(kind.getName() + "@") ? kind.getSimpleName() : text;
    }
}
