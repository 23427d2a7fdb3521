package halfwidth.web;

import halfwidth.adapt.DifferenceTable;
import halfwidth.show.HtmlSheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Set;

/** The notebook's own style sheets and modules. Only what is listed here can be asked for. */
final class Own {
    private static final String SCRIPT = "text/javascript; charset=utf-8";
    private static final String STYLE = "text/css; charset=utf-8";
    private static final Set<String> FILES =
            Set.of(
                    "screen.css",
                    "mark.svg",
                    "job.js",
                    "fill.js",
                    "adapt.js",
                    "parts.js",
                    "review.js",
                    "drafts.js",
                    "root.js",
                    "grid.js",
                    "said.js");
    private static final Map<String, String> TYPES =
            Map.of("css", STYLE, "js", SCRIPT, "svg", "image/svg+xml");

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
        if (!FILES.contains(name)) {
            throw new Refusal(404, "There is no such file.");
        }
        String type = TYPES.get(name.substring(name.indexOf('.') + 1));
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
