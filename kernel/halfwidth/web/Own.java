package halfwidth.web;

import halfwidth.adapt.DifferenceTable;
import halfwidth.show.HtmlSheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;

/** The notebook's own style sheets and modules. Only what is listed here can be asked for. */
final class Own {
    private static final String SCRIPT = "text/javascript; charset=utf-8";
    private static final String STYLE = "text/css; charset=utf-8";
    private static final Map<String, String> FILES =
            Map.ofEntries(
                    Map.entry("screen.css", STYLE),
                    Map.entry("mark.svg", "image/svg+xml"),
                    Map.entry("job.js", SCRIPT),
                    Map.entry("fill.js", SCRIPT),
                    Map.entry("adapt.js", SCRIPT),
                    Map.entry("parts.js", SCRIPT),
                    Map.entry("review.js", SCRIPT),
                    Map.entry("drafts.js", SCRIPT),
                    Map.entry("root.js", SCRIPT),
                    Map.entry("grid.js", SCRIPT),
                    Map.entry("said.js", SCRIPT));

    private Own() {}

    static Reply reply(String name) {
        if (name.equals("sheet.css")) {
            return Reply.of(STYLE, read(HtmlSheet.class, name));
        }
        if (name.equals("difference.css") || name.equals("editor.css")) {
            return Reply.of(STYLE, read(DifferenceTable.class, name));
        }
        if (name.equals("editor.js")) {
            return Reply.of(SCRIPT, read(DifferenceTable.class, name));
        }
        String type = FILES.get(name);
        if (type == null) {
            throw new Refusal(404, "There is no such file.");
        }
        return Reply.of(type, read(Own.class, name));
    }

    private static byte[] read(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
