package halfwidth.engine;

import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.plot.Plot;
import halfwidth.run.Shown;
import halfwidth.vocabulary.Action;
import java.io.Serializable;
import java.lang.reflect.Array;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/** Turns the value a step gave into a form that can leave the worker. */
final class ValueView {
    /** More rows than this are counted, not shown. */
    private static final int ROWS = 200;

    private static final int CHARACTERS = 2000;

    private ValueView() {}

    static Shown of(Object value) {
        if (value == null) {
            return new Shown.Nothing();
        }
        if (value instanceof Optional<?> optional) {
            return of(optional.orElse(null));
        }
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent()
                    ? new Shown.Real(optional.getAsDouble())
                    : new Shown.Nothing();
        }
        if (value instanceof OptionalInt optional) {
            return optional.isPresent()
                    ? new Shown.Whole(optional.getAsInt())
                    : new Shown.Nothing();
        }
        if (value instanceof OptionalLong optional) {
            return optional.isPresent()
                    ? new Shown.Whole(optional.getAsLong())
                    : new Shown.Nothing();
        }
        if (value instanceof Double || value instanceof Float) {
            return new Shown.Real(((Number) value).doubleValue());
        }
        if (value instanceof Number whole && !(value instanceof java.math.BigDecimal)) {
            return new Shown.Whole(whole.longValue());
        }
        if (value instanceof Boolean flag) {
            return new Shown.Flag(flag);
        }
        if (value instanceof Estimate estimate) {
            return new Shown.Measured(estimate.value(), estimate.standardUncertainty());
        }
        if (value instanceof Action action) {
            return new Shown.Advice(action);
        }
        return compound(value);
    }

    /** A number or truth value; anything else only by its kind. */
    static Shown brief(Object value) {
        boolean small =
                value instanceof Number
                        || value instanceof Boolean
                        || value instanceof Estimate
                        || value instanceof OptionalDouble
                        || value instanceof OptionalInt
                        || value instanceof OptionalLong
                        || value instanceof Optional<?> optional
                                && optional.map(ValueView::isNumber).orElse(true);
        return small ? of(value) : new Shown.Words(value.getClass().getSimpleName());
    }

    private static boolean isNumber(Object value) {
        return value instanceof Number || value instanceof Estimate;
    }

    private static Shown compound(Object value) {
        if (value instanceof Plot plot) {
            return new Shown.Picture(plot.title(), plot.description(), plot.digest(), new byte[0]);
        }
        if (value instanceof Table table) {
            return grid(table.columns());
        }
        if (value instanceof Column<?> column) {
            return grid(List.of(column));
        }
        if (value.getClass().isArray()) {
            List<Object> items = new ArrayList<>();
            int length = Array.getLength(value);
            for (int i = 0; i < Math.min(length, ROWS); i++) {
                items.add(Array.get(value, i));
            }
            return listed(items, length);
        }
        if (value instanceof Collection<?> items) {
            return listed(
                    items.stream().limit(ROWS).map(Object.class::cast).toList(), items.size());
        }
        if (value instanceof Record record) {
            return listed(List.of(record), 1);
        }
        String text = CellView.plain(value);
        return new Shown.Words(
                text.length() <= CHARACTERS ? text : text.substring(0, CHARACTERS) + " …");
    }

    /** Items of one record type as a table of its components, others as a table of one column. */
    private static Shown listed(List<Object> items, int total) {
        int left = total - items.size();
        boolean records =
                !items.isEmpty()
                        && items.get(0) instanceof Record first
                        && items.stream()
                                .allMatch(i -> i != null && i.getClass() == first.getClass());
        if (!records) {
            return new Shown.Grid(
                    List.of("value"),
                    items.stream()
                            .map(item -> Collections.singletonList(CellView.of(item)))
                            .toList(),
                    left,
                    false);
        }
        RecordComponent[] components = items.get(0).getClass().getRecordComponents();
        return new Shown.Grid(
                Arrays.stream(components).map(RecordComponent::getName).toList(),
                items.stream().map(item -> CellView.row((Record) item)).toList(),
                left,
                false);
    }

    private static Shown grid(List<Column<?>> columns) {
        int size = columns.isEmpty() ? 0 : columns.get(0).size();
        List<List<Serializable>> rows = new ArrayList<>();
        for (int row = 0; row < Math.min(size, ROWS); row++) {
            List<Serializable> cells = new ArrayList<>();
            for (Column<?> column : columns) {
                cells.add(column.isMissing(row) ? null : CellView.of(item(column, row)));
            }
            rows.add(cells);
        }
        return new Shown.Grid(
                columns.stream().map(Column::name).toList(), rows, Math.max(0, size - ROWS), true);
    }

    private static Object item(Column<?> column, int row) {
        return column instanceof NumericColumn<?> numbers
                ? (Object) numbers.getDouble(row)
                : column.get(row);
    }
}
