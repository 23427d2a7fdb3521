package halfwidth.notebooks;

import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * One slip that somebody might make when writing or adapting a page: {@code find} stands exactly
 * once in the page and becomes {@code replace}.
 *
 * @param kind what was slipped on: {@code unit}, {@code fraction} (numerator and denominator),
 *     {@code sign} (also a side or a tone), {@code constant} (stale or wrong), {@code row} (off by
 *     one, or a wrong column), {@code function} (wrong or missing), {@code count} (of a mean)
 */
record Mistake(String id, String page, String kind, String find, String replace, String remark) {
    private static final Path NOTEBOOKS = Path.of("notebooks");

    static List<Mistake> all() throws IOException {
        CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
        try (InputStream file = Mistake.class.getResourceAsStream("mistakes.csv");
                Reader text = new InputStreamReader(file, StandardCharsets.UTF_8)) {
            return format.parse(text).stream().map(Mistake::of).toList();
        }
    }

    private static Mistake of(CSVRecord row) {
        return new Mistake(
                row.get("id"),
                row.get("page"),
                row.get("kind"),
                row.get("find"),
                row.get("replace"),
                row.get("remark"));
    }

    static Page sound(String page) throws IOException {
        return Pages.parse(page, file(page), Files.readString(file(page)));
    }

    /** The page with this mistake in it. */
    Page made() throws IOException {
        String text = Files.readString(file(page));
        int first = text.indexOf(find);
        if (first < 0 || text.indexOf(find, first + 1) >= 0) {
            throw new AssertionError(id + ": \"" + find + "\" must stand once in " + page);
        }
        return Pages.parse(page, file(page), text.replace(find, replace));
    }

    private static Path file(String page) {
        return NOTEBOOKS.resolve(page + ".md");
    }
}
