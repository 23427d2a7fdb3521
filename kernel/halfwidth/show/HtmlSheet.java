package halfwidth.show;

import halfwidth.page.Part;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;

/**
 * A sheet as one HTML file that stands alone: it loads nothing and runs nothing, and prints as it
 * stands. What people or pages wrote is escaped.
 */
public final class HtmlSheet {
    private static final String STYLE = style();

    /** A second lock on the door, should something slip through the escaping. */
    private static final String POLICY =
            "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

    /** What stands where the digest of a sealed sheet goes. */
    public static final String UNSEALED = "0".repeat(64);

    private final Sheet sheet;
    private final List<Attachment> attachments;
    private final Map<String, String> printed;
    private final Html html = new Html();
    private final SheetParts parts;

    private HtmlSheet(Sheet sheet, List<Attachment> attachments, Map<String, String> printed) {
        this.sheet = sheet;
        this.parts = new SheetParts(sheet, html, Pictures.WITHIN);
        this.attachments = attachments;
        this.printed = printed;
    }

    /** Writes a sheet. */
    public static String of(Sheet sheet) {
        return of(sheet, List.of(), Map.of());
    }

    /**
     * Writes a sheet with attachments, and a place for its digest where it has any.
     *
     * @param printed what its foot says besides, by name
     */
    public static String of(
            Sheet sheet, List<Attachment> attachments, Map<String, String> printed) {
        HtmlSheet writer = new HtmlSheet(sheet, attachments, printed);
        writer.write();
        return writer.html.toString();
    }

    /**
     * The content security policy by which a server may send a sheet: its own style and pictures,
     * and nothing else.
     */
    public static String policy(String sheet) {
        String style = sheet.substring(sheet.indexOf("<style>") + 7, sheet.indexOf("</style>"));
        String digest =
                Base64.getEncoder()
                        .encodeToString(Stamp.sha256(style.getBytes(StandardCharsets.UTF_8)));
        return "default-src 'none'; img-src data:; style-src 'sha256-" + digest + "'";
    }

    private static String style() {
        try (InputStream css = HtmlSheet.class.getResourceAsStream("sheet.css")) {
            return new String(css.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write() {
        html.trusted("<!DOCTYPE html>\n").open("html", "lang", "en").line();
        head();
        html.open("body").line();
        parts.top();
        html.open("main").line();
        parts.results();
        parts.body(this::block);
        html.close().line();
        foot();
        html.close().close().line();
    }

    private void head() {
        html.open("head").single("meta", "charset", "utf-8");
        html.single("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.single("meta", "http-equiv", "Content-Security-Policy", "content", POLICY);
        html.single("meta", "name", "color-scheme", "content", "light dark");
        html.element("title", sheet.page().title() + " – " + sheet.page().name());
        html.open("style")
                .trusted(STYLE)
                .trusted(new PageMarks(sheet).css())
                .close()
                .close()
                .line();
    }

    private void block(Part part) {
        if (part instanceof Part.Inputs inputs) {
            parts.inputs(inputs);
        } else if (part instanceof Part.Readings readings) {
            parts.readings(readings);
        } else if (part instanceof Part.Steps steps) {
            parts.steps(steps);
        } else if (part instanceof Part.Checks checks) {
            parts.checks(checks);
        } else if (part instanceof Part.Results results) {
            Margin.open(html, "p", "pointer", results.line());
            html.text("The results are at the top of this sheet: ");
            html.element("a", "Results", "href", "#results").text(".").close().line();
            parts.plots();
        }
    }

    private void foot() {
        Stamp stamp = sheet.stamp();
        html.open("footer").open("dl");
        fact("Page", sheet.fileName());
        fact("Run", Dates.words(stamp.ran()));
        fact("Program", "Halfwidth " + stamp.version());
        fact("Java", stamp.java());
        fact("SHA-256 of the page", stamp.digest());
        printed.forEach(this::fact);
        html.close().line();
        if (!attachments.isEmpty()) {
            attachments();
        }
        html.close().line();
    }

    private void attachments() {
        html.open("p").text("Record sealed by SHA-256 ");
        html.element("code", UNSEALED, "id", "seal");
        html.text(" over this file with zeros in its place, whatever its line ends.").close();
        html.open("div", "class", "attached").line();
        for (Attachment attachment : attachments) {
            html.open("details").element("summary", attachment.title());
            html.element("pre", attachment.text(), "id", attachment.id()).close().line();
        }
        html.close();
    }

    private void fact(String name, String value) {
        html.open("div").element("dt", name).element("dd", value).close();
    }
}
