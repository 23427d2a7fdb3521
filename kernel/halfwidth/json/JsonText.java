package halfwidth.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;

/** Writes JSON from maps, lists, numbers, truth values, words and null. */
final class JsonText {
    private static final JsonFactory FACTORY =
            JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_CONTENT).build();

    private JsonText() {}

    /** An object over several lines, with a line feed at its end. */
    static String of(Map<String, ?> members) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.useDefaultPrettyPrinter();
            write(members, json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text + "\n";
    }

    private static void write(Object value, JsonGenerator json) throws IOException {
        if (value instanceof Map<?, ?> members) {
            json.writeStartObject();
            for (Map.Entry<?, ?> member : members.entrySet()) {
                json.writeFieldName(member.getKey().toString());
                write(member.getValue(), json);
            }
            json.writeEndObject();
        } else if (value instanceof Iterable<?> items) {
            json.writeStartArray();
            for (Object item : items) {
                write(item, json);
            }
            json.writeEndArray();
        } else if (value instanceof Integer whole) {
            json.writeNumber(whole);
        } else if (value instanceof Double number && Double.isFinite(number)) {
            json.writeNumber(number);
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else if (value == null) {
            json.writeNull();
        } else {
            json.writeString(value.toString());
        }
    }
}
