package halfwidth.web;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Named values as a browser sends them; a name may come several times, in order. */
record Form(Map<String, List<String>> values) {
    private static final int MOST_VALUES = 50_000;

    /**
     * Reads {@code name=value&name=value}.
     *
     * @throws Refusal if it is malformed or has too many values
     */
    static Form read(String encoded) {
        Map<String, List<String>> values = new HashMap<>();
        if (encoded.isEmpty()) {
            return new Form(values);
        }
        String[] pairs = encoded.split("&", MOST_VALUES + 1);
        if (pairs.length > MOST_VALUES) {
            throw new Refusal(413, "Too many values at once; send at most " + MOST_VALUES + ".");
        }
        try {
            for (String pair : pairs) {
                int equals = pair.indexOf('=');
                String name = equals < 0 ? pair : pair.substring(0, equals);
                String value = equals < 0 ? "" : pair.substring(equals + 1);
                values.computeIfAbsent(decoded(name), first -> new ArrayList<>())
                        .add(decoded(value));
            }
        } catch (IllegalArgumentException malformed) {
            throw new Refusal(400, "What was sent cannot be read as a form.");
        }
        return new Form(values);
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }

    /** All values of a name, in order. */
    List<String> all(String name) {
        return values.getOrDefault(name, List.of());
    }

    Optional<String> find(String name) {
        return all(name).stream().findFirst();
    }

    /**
     * The value of a name.
     *
     * @throws Refusal if it is absent
     */
    String get(String name) {
        return find(name).orElseThrow(() -> new Refusal(400, "The value " + name + " is missing."));
    }

    /**
     * A value that is bytes, in Base64 (RFC 4648).
     *
     * @throws Refusal if it is absent or none
     */
    byte[] bytes(String name) {
        try {
            return Base64.getDecoder().decode(get(name));
        } catch (IllegalArgumentException malformed) {
            throw new Refusal(400, "The value " + name + " must be bytes in Base64.");
        }
    }

    /**
     * A value that is a whole number of at least 0.
     *
     * @throws Refusal if it is absent or none
     */
    int number(String name) {
        String text = get(name);
        if (!text.matches("\\d{1,9}")) {
            throw new Refusal(400, "The value " + name + " must be a whole number.");
        }
        return Integer.parseInt(text);
    }
}
