package halfwidth.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The members of an object, in the order in which they are put. */
final class Members {
    private final Map<String, Object> members = new LinkedHashMap<>();

    /**
     * Puts a member.
     *
     * @param value an empty optional is null
     */
    Members put(String name, Object value) {
        members.put(name, value instanceof Optional<?> maybe ? maybe.orElse(null) : value);
        return this;
    }

    Map<String, Object> all() {
        return Collections.unmodifiableMap(members);
    }
}
