package halfwidth.proof;

import java.util.HashMap;
import java.util.Map;

/** The names that can be used at a point, with what they stand for. */
final class Scope {
    private final Scope outer;
    private final Map<String, Value> names = new HashMap<>();

    Scope(Scope outer) {
        this.outer = outer;
    }

    Scope declare(String name, Value value) {
        names.put(name, value);
        return this;
    }

    /** The value of a name; null if it is not known. */
    Value find(String name) {
        Value found = names.get(name);
        return found != null || outer == null ? found : outer.find(name);
    }

    /** Notes that a variable may have another value, too. */
    void assign(String name, Value value) {
        if (names.containsKey(name) || outer == null) {
            names.merge(name, value, Value::or);
        } else {
            outer.assign(name, value);
        }
    }
}
