package halfwidth.plot;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;

/** Measures and breaks text of one font. */
record Lettering(Font font) {
    private static final FontRenderContext SMOOTH = new FontRenderContext(null, true, true);

    double width(String text) {
        return text.isEmpty() ? 0 : font.getStringBounds(text, SMOOTH).getWidth();
    }

    double height() {
        return font.getLineMetrics("Ag", SMOOTH).getHeight();
    }

    double ascent() {
        return font.getLineMetrics("Ag", SMOOTH).getAscent();
    }

    /** Breaks text at spaces into lines no wider than the room, unless one word is. */
    List<String> lines(String text, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer) > room) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }
}
