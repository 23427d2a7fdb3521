package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Holds JSON to the table of members in the README. */
final class JsonMembers {
    private static final Pattern OBJECT = Pattern.compile("(?m)^\\| \\*(\\w+)\\* \\| (.*) \\|$");
    private static final Pattern MEMBER = Pattern.compile("`([^`]+)` ([^,`]+)");
    private static final Map<String, Map<String, String>> OBJECTS = objects();

    private JsonMembers() {}

    private static Map<String, Map<String, String>> objects() {
        try {
            Map<String, Map<String, String>> objects = new LinkedHashMap<>();
            Matcher object = OBJECT.matcher(Files.readString(Path.of("README.md")));
            while (object.find()) {
                Map<String, String> members = new LinkedHashMap<>();
                Matcher member = MEMBER.matcher(object.group(2));
                while (member.find()) {
                    members.put(member.group(1), member.group(2).strip());
                }
                objects.put(object.group(1), members);
            }
            return objects;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Holds a value to a kind: all members, no others, in the table's order. */
    static void hold(String object, JsonNode json) {
        Map<String, String> members = OBJECTS.get(object);
        assertTrue(members != null && !members.isEmpty(), object + " is not in the README");
        assertTrue(json.isObject(), object + " is " + json);
        List<String> names = new ArrayList<>();
        json.fieldNames().forEachRemaining(names::add);
        assertEquals(List.copyOf(members.keySet()), names, object);
        members.forEach((name, kind) -> value(object + "." + name, kind, json.get(name)));
    }

    private static void value(String where, String kind, JsonNode value) {
        if (kind.contains(" or ")) {
            List<String> kinds = List.of(kind.split(" or "));
            String one =
                    kinds.stream().filter(k -> fits(k, value)).findFirst().orElse(kinds.get(0));
            value(where, one, value);
        } else if (kind.startsWith("list of ")) {
            assertTrue(value.isArray(), where + " is " + value);
            value.forEach(item -> value(where, kind.substring("list of ".length()), item));
        } else if (OBJECTS.containsKey(kind)) {
            hold(kind, value);
        } else {
            assertTrue(fits(kind, value), where + " is no " + kind + " but " + value);
        }
    }

    private static boolean fits(String kind, JsonNode value) {
        return switch (kind) {
            case "text" -> value.isTextual();
            case "number" -> value.isNumber();
            case "flag" -> value.isBoolean();
            case "null" -> value.isNull();
            case "texts by name" -> {
                boolean texts = value.isObject();
                for (JsonNode member : value) {
                    texts &= member.isTextual();
                }
                yield texts;
            }
            default -> OBJECTS.containsKey(kind) && value.isObject();
        };
    }
}
