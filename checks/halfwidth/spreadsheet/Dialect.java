package halfwidth.spreadsheet;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * How a spreadsheet saves a table as text. One family quotes a cell only where it must and fills
 * lines up with empty cells; the other can quote all text, or all cells, and puts no mark in front.
 *
 * @param separator between cells
 * @param comma whether its numbers have decimal commas
 * @param mark the bytes in front
 * @param end of each line
 * @param quoted whether every cell is
 * @param wide how many empty columns and rows it writes behind the table
 * @param above lines above the header
 * @param heading what it makes of a heading
 */
record Dialect(
        String name,
        char separator,
        boolean comma,
        Charset charset,
        byte[] mark,
        String end,
        boolean quoted,
        int wide,
        String above,
        UnaryOperator<String> heading) {
    private static final byte[] NONE = {};
    private static final byte[] UTF_8 = {(byte) 0xef, (byte) 0xbb, (byte) 0xbf};
    private static final byte[] LITTLE = {(byte) 0xff, (byte) 0xfe};
    private static final byte[] BIG = {(byte) 0xfe, (byte) 0xff};
    private static final Charset WESTERN = Charset.forName("windows-1252");

    static List<Dialect> all() {
        UnaryOperator<String> same = heading -> heading;
        UnaryOperator<String> shouted = Dialect::shouted;
        UnaryOperator<String> spaced = heading -> "  " + heading.replace(" ", "\u00a0") + "\u00a0 ";
        Charset utf8 = StandardCharsets.UTF_8;
        Charset little = StandardCharsets.UTF_16LE;
        Charset big = StandardCharsets.UTF_16BE;
        return List.of(
                new Dialect("comma, UTF-8", ',', false, utf8, NONE, "\n", false, 0, "", same),
                new Dialect("comma, marked", ',', false, utf8, UTF_8, "\r\n", false, 0, "", same),
                new Dialect("comma, all quoted", ',', false, utf8, NONE, "\n", true, 0, "", same),
                new Dialect("comma, wide", ',', false, utf8, UTF_8, "\r\n", false, 3, "", same),
                new Dialect(
                        "comma, old line ends", ',', false, utf8, NONE, "\r", false, 0, "", same),
                new Dialect(
                        "comma, shouted", ',', false, utf8, UTF_8, "\r\n", false, 0, "", shouted),
                new Dialect("comma, spaced", ',', false, utf8, NONE, "\n", true, 1, "", spaced),
                new Dialect(
                        "comma, code page", ',', false, WESTERN, NONE, "\r\n", false, 0, "", same),
                new Dialect(
                        "comma, stated", ',', false, utf8, NONE, "\r\n", false, 2, "sep=,", same),
                new Dialect("semicolon", ';', true, utf8, NONE, "\n", false, 0, "", same),
                new Dialect(
                        "semicolon, marked", ';', true, utf8, UTF_8, "\r\n", false, 0, "", same),
                new Dialect(
                        "semicolon, code page",
                        ';',
                        true,
                        WESTERN,
                        NONE,
                        "\r\n",
                        false,
                        2,
                        "",
                        same),
                new Dialect(
                        "semicolon, stated",
                        ';',
                        true,
                        utf8,
                        UTF_8,
                        "\r\n",
                        false,
                        0,
                        "sep=;",
                        same),
                new Dialect(
                        "semicolon, stated, wide",
                        ';',
                        true,
                        WESTERN,
                        NONE,
                        "\r\n",
                        false,
                        2,
                        "\"sep=;\";;",
                        same),
                new Dialect(
                        "semicolon, all quoted", ';', true, utf8, NONE, "\n", true, 0, "", same),
                new Dialect(
                        "semicolon, shouted",
                        ';',
                        true,
                        utf8,
                        UTF_8,
                        "\r\n",
                        false,
                        1,
                        "",
                        shouted),
                new Dialect(
                        "semicolon, spaced",
                        ';',
                        true,
                        WESTERN,
                        NONE,
                        "\r\n",
                        false,
                        1,
                        "",
                        spaced),
                new Dialect(
                        "semicolon, noted",
                        ';',
                        true,
                        utf8,
                        UTF_8,
                        "\r\n",
                        false,
                        0,
                        "# read in the rain; twice",
                        same),
                new Dialect(
                        "tab, UTF-16 LE", '\t', true, little, LITTLE, "\r\n", false, 0, "", same),
                new Dialect("tab, UTF-16 BE", '\t', true, big, BIG, "\n", false, 2, "", same),
                new Dialect(
                        "tab, UTF-16 LE, point",
                        '\t',
                        false,
                        little,
                        LITTLE,
                        "\r\n",
                        false,
                        1,
                        "",
                        shouted),
                new Dialect("tab, UTF-8", '\t', false, utf8, NONE, "\n", false, 0, "", same),
                new Dialect(
                        "tab, code page", '\t', true, WESTERN, NONE, "\r\n", false, 0, "", spaced));
    }

    /** A name in capitals; a unit is one only as it is. */
    static String shouted(String heading) {
        int bracket = heading.indexOf('[');
        return bracket < 0
                ? heading.toUpperCase(Locale.ROOT)
                : heading.substring(0, bracket).toUpperCase(Locale.ROOT)
                        + heading.substring(bracket);
    }

    /** Writes a table: a heading and rows of cells. */
    byte[] write(List<String> headings, List<List<String>> rows) {
        int width = headings.size() + wide;
        StringBuilder text = new StringBuilder(above.isEmpty() ? "" : above + end);
        text.append(line(headings.stream().map(heading).toList(), width));
        rows.forEach(row -> text.append(line(row, width)));
        for (int i = 0; i < wide; i++) {
            text.append(line(List.of(), width));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(mark);
        bytes.writeBytes(text.toString().getBytes(charset));
        return bytes.toByteArray();
    }

    private String line(List<String> cells, int width) {
        List<String> filled = new ArrayList<>(cells);
        while (filled.size() < width) {
            filled.add("");
        }
        return filled.stream().map(this::cell).collect(Collectors.joining("" + separator)) + end;
    }

    private String cell(String cell) {
        boolean must = cell.indexOf(separator) >= 0 || cell.indexOf('"') >= 0;
        return quoted || must ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }
}
