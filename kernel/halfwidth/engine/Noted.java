package halfwidth.engine;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Where a step's compiled code leaves the numbers it uses while a run is to show its workings; at
 * other times they pass through. Static because a snippet's code can reach nothing else.
 */
public final class Noted {
    /** What was noted since the step began; null while nothing is to be noted. */
    private static volatile Noted now;

    private final Map<Integer, Object> values = new ConcurrentHashMap<>();
    private final Set<Integer> several = ConcurrentHashMap.newKeySet();

    private Noted() {}

    static void start() {
        now = new Noted();
    }

    /** What the step noted, by place; without places that held several values in turn. */
    static Map<Integer, Object> taken() {
        Noted noted = now;
        now = null;
        if (noted == null) {
            return Map.of();
        }
        Map<Integer, Object> once = new HashMap<>(noted.values);
        once.keySet().removeAll(new HashSet<>(noted.several));
        return once;
    }

    private void add(int place, Object value) {
        Object before = values.putIfAbsent(place, value);
        if (before != null && !before.equals(value)) {
            several.add(place);
        }
    }

    private static void note(int place, Object value) {
        Noted noted = now;
        if (noted != null && value != null) {
            noted.add(place, value);
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
}
