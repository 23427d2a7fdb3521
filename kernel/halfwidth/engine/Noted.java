package halfwidth.engine;

import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import tech.tablesaw.api.Row;

/**
 * Where a step's compiled code leaves the numbers it uses while a run is to show its workings; at
 * other times they pass through. Static because a snippet's code can reach nothing else. Only the
 * step's own thread is listened to.
 */
public final class Noted {
    /** What was noted since the step began; null while nothing is to be noted. */
    private static volatile Noted now;

    private final Thread owner = Thread.currentThread();
    private final Map<Integer, RowsSeen> rows = new LinkedHashMap<>();
    private Frame frame = new Frame(null, -1);

    private Noted() {}

    /** What was noted within one row, or outside of all. */
    private static final class Frame {
        private final Frame outer;

        /** The loop that it is a turn of; -1 for none. */
        private final int loop;

        private final List<Object> of = new ArrayList<>();
        private final Map<Integer, Object> values = new HashMap<>();
        private final Set<Integer> several = new HashSet<>();
        private Object last;

        Frame(Frame outer, int loop) {
            this.outer = outer;
            this.loop = loop;
        }

        void add(int place, Object value) {
            Object before = values.putIfAbsent(place, value);
            if (before != null && !before.equals(value)) {
                several.add(place);
            }
        }

        /** The values by place, without places that held several in turn. */
        Map<Integer, Object> once() {
            Map<Integer, Object> once = new HashMap<>(values);
            once.keySet().removeAll(several);
            return once;
        }
    }

    /**
     * What a step noted.
     *
     * @param values by place; without places that held several values in turn
     * @param rows by the place of what computes them
     */
    record Notes(Map<Integer, Object> values, Map<Integer, RowsSeen> rows) {}

    static void start() {
        now = new Noted();
    }

    static Notes taken() {
        Noted noted = now;
        now = null;
        if (noted == null) {
            return new Notes(Map.of(), Map.of());
        }
        while (noted.frame.outer != null) {
            noted.leave();
        }
        return new Notes(noted.frame.once(), noted.rows);
    }

    /** What listens to this thread; null if nothing does. */
    private static Noted listening() {
        Noted noted = now;
        return noted != null && Thread.currentThread() == noted.owner ? noted : null;
    }

    /** Begins a row of a rule; returns what tells it from others. */
    public static Object begin() {
        Noted noted = now == null ? null : listening();
        if (noted == null) {
            return null;
        }
        noted.frame = new Frame(noted.frame, -1);
        return noted.frame;
    }

    /** Takes note of what a row is the row of, and returns what was begun. */
    public static Object of(Object begun, Object parameter) {
        if (begun instanceof Frame row) {
            row.of.add(fixed(parameter));
        }
        return begun;
    }

    /** Takes note of what a row is the row of, and returns what was begun. */
    public static Object of(Object begun, double parameter) {
        return begun == null ? null : of(begun, (Object) parameter);
    }

    /** Takes note of what a row is the row of, and returns what was begun. */
    public static Object of(Object begun, long parameter) {
        return begun == null ? null : of(begun, (Object) parameter);
    }

    /** A row of a table is one and the same object for all of them. */
    private static Object fixed(Object parameter) {
        return parameter instanceof Row row ? "row " + (row.getRowNumber() + 1) : parameter;
    }

    /** Takes note of what the turn just begun is the turn of. */
    public static void of(Object variable) {
        Noted noted = now == null ? null : listening();
        if (noted != null) {
            of(noted.frame, variable);
        }
    }

    /** Takes note of what the turn just begun is the turn of. */
    public static void of(double variable) {
        if (now != null) {
            of((Object) variable);
        }
    }

    /** Takes note of what the turn just begun is the turn of. */
    public static void of(long variable) {
        if (now != null) {
            of((Object) variable);
        }
    }

    /** Begins a turn of a loop, which ends the turn before. */
    public static void turn(int place) {
        Noted noted = now == null ? null : listening();
        if (noted != null) {
            if (noted.frame.loop == place) {
                noted.leave();
            }
            noted.frame = new Frame(noted.frame, place);
        }
    }

    /** Ends a loop. */
    public static void end(int place) {
        Noted noted = now == null ? null : listening();
        if (noted != null && noted.frame.loop == place) {
            noted.leave();
        }
    }

    /** Ends what was begun last: what it noted counts for what is around it, too. */
    private void leave() {
        Frame left = frame;
        frame = left.outer;
        if (left.loop >= 0 && left.last != null) {
            seen(left.loop, left);
        }
        left.values.forEach(frame::add);
        frame.several.addAll(left.several);
    }

    private void seen(int place, Frame row) {
        double result = number(row.last);
        rows.computeIfAbsent(place, p -> new RowsSeen()).add(result, row.of, row.once());
    }

    private static double number(Object value) {
        if (value instanceof Estimate estimate) {
            return estimate.value();
        }
        if (value instanceof OptionalDouble optional) {
            return optional.orElse(Double.NaN);
        }
        return value instanceof Number number ? number.doubleValue() : Double.NaN;
    }

    private static void rowEnds(int place, Object begun, Object value) {
        Noted noted = listening();
        if (noted == null || !(begun instanceof Frame row)) {
            return;
        }
        while (noted.frame != row && noted.frame.outer != null) {
            noted.leave(); // loops that the row returned from
        }
        if (noted.frame == row) {
            row.last = value;
            if (value != null) {
                row.values.put(place, value);
            }
            noted.seen(place, row);
            row.values.remove(place);
            noted.leave();
        }
    }

    private static void note(int place, Object value) {
        Noted noted = listening();
        if (noted != null && value != null) {
            noted.frame.add(place, value);
            noted.frame.last = value;
        }
    }

    /** Notes a value and returns it. */
    public static double at(int place, double value) {
        if (now != null) {
            note(place, value);
        }
        return value;
    }

    /** Notes a value and returns it. */
    public static float at(int place, float value) {
        if (now != null) {
            note(place, value);
        }
        return value;
    }

    /** Notes a value and returns it. */
    public static long at(int place, long value) {
        if (now != null) {
            note(place, value);
        }
        return value;
    }

    /** Notes a value and returns it. */
    public static int at(int place, int value) {
        if (now != null) {
            note(place, value);
        }
        return value;
    }

    /** Notes a value and returns it. */
    public static short at(int place, short value) {
        if (now != null) {
            note(place, value);
        }
        return value;
    }

    /** Notes a value and returns it. */
    public static byte at(int place, byte value) {
        if (now != null) {
            note(place, value);
        }
        return value;
    }

    /** Notes a value and returns it. */
    public static char at(int place, char value) {
        if (now != null) {
            note(place, value);
        }
        return value;
    }

    /** Notes a value and returns it. */
    public static boolean at(int place, boolean value) {
        if (now != null) {
            note(place, value);
        }
        return value;
    }

    /** Notes a value and returns it. */
    public static <T> T at(int place, T value) {
        if (now != null) {
            note(place, value);
        }
        return value;
    }

    /** Notes what a rule gave for a row and returns it. */
    public static double row(int place, Object begun, double value) {
        if (begun != null) {
            rowEnds(place, begun, value);
        }
        return value;
    }

    /** Notes what a rule gave for a row and returns it. */
    public static float row(int place, Object begun, float value) {
        if (begun != null) {
            rowEnds(place, begun, value);
        }
        return value;
    }

    /** Notes what a rule gave for a row and returns it. */
    public static long row(int place, Object begun, long value) {
        if (begun != null) {
            rowEnds(place, begun, value);
        }
        return value;
    }

    /** Notes what a rule gave for a row and returns it. */
    public static int row(int place, Object begun, int value) {
        if (begun != null) {
            rowEnds(place, begun, value);
        }
        return value;
    }

    /** Notes what a rule gave for a row and returns it. */
    public static boolean row(int place, Object begun, boolean value) {
        if (begun != null) {
            rowEnds(place, begun, value);
        }
        return value;
    }

    /** Notes what a rule gave for a row and returns it. */
    public static <T> T row(int place, Object begun, T value) {
        if (begun != null) {
            rowEnds(place, begun, value);
        }
        return value;
    }
}
