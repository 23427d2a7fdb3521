package halfwidth.spreadsheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A workbook written by hand after ECMA-376: its parts as XML in a zip. Texts stand in a list that
 * all cells share, as one family of spreadsheets writes them, or within their cells, as others do.
 */
public final class Workbook {
    /** Where texts stand. */
    public enum Texts {
        SHARED,
        INLINE
    }

    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONS =
            "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKAGE =
            "http://schemas.openxmlformats.org/package/2006/relationships";
    private static final String TYPES =
            "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    private final Texts texts;
    private final List<String> shared = new ArrayList<>();
    private final Map<String, String> sheets = new LinkedHashMap<>();
    private final Map<String, byte[]> others = new LinkedHashMap<>();
    private String state = "";

    public Workbook(Texts texts) {
        this.texts = texts;
    }

    /** Adds a sheet of cells in XML, each row's without its end. */
    public Workbook sheet(String name, List<List<String>> rows) {
        StringBuilder data = new StringBuilder();
        for (int row = 1; row <= rows.size(); row++) {
            data.append("<row r=\"").append(row).append("\">");
            for (int column = 0; column < rows.get(row - 1).size(); column++) {
                String cell = rows.get(row - 1).get(column);
                data.append(cell.replace("@", (char) ('A' + column) + "" + row));
            }
            data.append("</row>");
        }
        return raw(name, "<sheetData>" + data + "</sheetData>");
    }

    /** Adds a sheet of whatever XML. */
    Workbook raw(String name, String content) {
        sheets.put(name, content);
        return this;
    }

    /** Adds a part of whatever bytes. */
    Workbook part(String path, byte[] content) {
        others.put(path, content);
        return this;
    }

    /** Hides the sheet that was added last. */
    Workbook hidden() {
        state = List.copyOf(sheets.keySet()).get(sheets.size() - 1);
        return this;
    }

    public String text(String text) {
        String escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
        if (texts == Texts.INLINE) {
            return "<c r=\"@\" t=\"inlineStr\"><is><t xml:space=\"preserve\">"
                    + escaped
                    + "</t></is></c>";
        }
        shared.add(escaped);
        return "<c r=\"@\" t=\"s\"><v>" + (shared.size() - 1) + "</v></c>";
    }

    /** A number as a spreadsheet keeps it: to seventeen digits of a binary one. */
    public static String number(double value) {
        return styled(value, 0);
    }

    /** A number with the look of that place in the list of looks below. */
    public static String styled(double value, int look) {
        String digits =
                new java.math.BigDecimal(value).round(new java.math.MathContext(17)).toString();
        return "<c r=\"@\" s=\"" + look + "\"><v>" + digits + "</v></c>";
    }

    static String formula(String formula, String type, String value) {
        return "<c r=\"@\" t=\"" + type + "\"><f>" + formula + "</f>" + value + "</c>";
    }

    static String blank() {
        return "<c r=\"@\"/>";
    }

    private String styles() {
        // Looks 0 to 4: general, a date, a percentage, a date of a format of its own, and a number
        // with a word behind it.
        return HEAD
                + "<styleSheet xmlns=\""
                + MAIN
                + "\"><numFmts count=\"2\">"
                + "<numFmt numFmtId=\"164\" formatCode=\"dd/mm/yyyy\"/>"
                + "<numFmt numFmtId=\"165\" formatCode=\"0.00&quot; dm&quot;\"/></numFmts>"
                + "<cellXfs count=\"5\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/>"
                + "<xf numFmtId=\"10\"/><xf numFmtId=\"164\"/><xf numFmtId=\"165\"/></cellXfs>"
                + "</styleSheet>";
    }

    public byte[] bytes() {
        StringBuilder types = new StringBuilder(HEAD);
        StringBuilder list =
                new StringBuilder(
                        HEAD
                                + "<workbook xmlns=\""
                                + MAIN
                                + "\" xmlns:r=\""
                                + RELATIONS
                                + "\"><sheets>");
        StringBuilder relations =
                new StringBuilder(HEAD + "<Relationships xmlns=\"" + PACKAGE + "\">");
        types.append(
                "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">");
        types.append(
                "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>");
        types.append("<Default Extension=\"xml\" ContentType=\"application/xml\"/>");
        types.append(type("/xl/workbook.xml", "sheet.main"));
        types.append(type("/xl/styles.xml", "styles"));
        Map<String, byte[]> parts = new LinkedHashMap<>();
        int at = 1;
        for (Map.Entry<String, String> sheet : sheets.entrySet()) {
            String path = "worksheets/sheet" + at + ".xml";
            String hidden = sheet.getKey().equals(state) ? " state=\"hidden\"" : "";
            list.append(
                    "<sheet name=\"%s\" sheetId=\"%d\"%s r:id=\"rId%d\"/>"
                            .formatted(sheet.getKey(), at, hidden, at));
            relations.append(relation(at, "worksheet", path));
            types.append(type("/xl/" + path, "worksheet"));
            parts.put(
                    "xl/" + path,
                    utf8(
                            HEAD
                                    + "<worksheet xmlns=\""
                                    + MAIN
                                    + "\">"
                                    + sheet.getValue()
                                    + "</worksheet>"));
            at++;
        }
        relations.append(relation(at++, "styles", "styles.xml"));
        if (texts == Texts.SHARED) {
            relations.append(relation(at, "sharedStrings", "sharedStrings.xml"));
            types.append(type("/xl/sharedStrings.xml", "sharedStrings"));
            StringBuilder strings = new StringBuilder(HEAD + "<sst xmlns=\"" + MAIN + "\">");
            shared.forEach(
                    text ->
                            strings.append("<si><t xml:space=\"preserve\">")
                                    .append(text)
                                    .append("</t></si>"));
            parts.put("xl/sharedStrings.xml", utf8(strings + "</sst>"));
        }
        parts.put("[Content_Types].xml", utf8(types + "</Types>"));
        parts.put(
                "_rels/.rels",
                utf8(
                        HEAD
                                + "<Relationships xmlns=\""
                                + PACKAGE
                                + "\">"
                                + relation(1, "officeDocument", "xl/workbook.xml")
                                + "</Relationships>"));
        parts.put("xl/workbook.xml", utf8(list + "</sheets></workbook>"));
        parts.put("xl/_rels/workbook.xml.rels", utf8(relations + "</Relationships>"));
        parts.put("xl/styles.xml", utf8(styles()));
        parts.putAll(others);
        return zip(parts);
    }

    static byte[] zip(Map<String, byte[]> parts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return bytes.toByteArray();
    }

    private static String type(String path, String what) {
        return "<Override PartName=\"" + path + "\" ContentType=\"" + TYPES + what + "+xml\"/>";
    }

    private static String relation(int id, String what, String target) {
        return "<Relationship Id=\"rId%d\" Type=\"%s/%s\" Target=\"%s\"/>"
                .formatted(id, RELATIONS, what, target);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
