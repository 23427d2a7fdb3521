package halfwidth.spreadsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What leaves as CSV is no program, and comes back as it was. */
class CsvTextTest {
    private static final Pattern NUMBER = Pattern.compile("[+-]?[\\d.,]+([eE][+-]?\\d+)?");

    private static final List<String> HOSTILE =
            List.of(
                    "=1+1",
                    "+1+1",
                    "-2+3",
                    "@SUM(A1)",
                    "=cmd|' /C calc'!A0",
                    "=HYPERLINK(\"http://x.invalid/\"&A1,\"read\")",
                    "-15 µA",
                    "-1 1/2",
                    "\uff1d1+1",
                    "a;=1+1",
                    "a,=1+1",
                    "a; \"=1+1",
                    "a\t=1+1",
                    "'=1+1",
                    "''=1+1",
                    "'plain",
                    "\"=1+1\"",
                    "=\"quoted\";+2,-x");

    private static String text(CsvFor reader, List<?> cells) {
        return new CsvText(reader).line(cells).toString();
    }

    /** Cells as a spreadsheet finds them that is set to this separator. */
    private static List<String> found(String csv, char separator) throws IOException {
        String bare = csv.replace("\ufeff", "");
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setDelimiter(separator)
                        .setLenientEof(true)
                        .setTrailingData(true)
                        .get();
        return CSVParser.parse(bare, format).getRecords().stream()
                .flatMap(CSVRecord::stream)
                .map(String::strip)
                .toList();
    }

    @ParameterizedTest
    @EnumSource(CsvFor.class)
    void noCellOfItRuns(CsvFor reader) throws IOException {
        for (String hostile : HOSTILE) {
            String csv = text(reader, List.of("x", hostile, hostile, "y"));
            for (char separator : new char[] {',', ';', '\t'}) {
                for (String cell : found(csv, separator)) {
                    String begins = cell.replaceFirst("^[\\s\"]+", "");
                    boolean runs = begins.matches("(?s)[=+\\-@\uff1d\uff0b\uff0d\uff20].*");
                    assertFalse(runs && !NUMBER.matcher(begins).matches(), hostile + " as " + csv);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(CsvFor.class)
    void comesBackAsItWas(CsvFor reader) {
        for (String hostile : HOSTILE) {
            assertEquals(hostile, back(reader, hostile), hostile);
        }
        Random random = new Random(42);
        String signs = "='+-@;,\t \"a1µ";
        for (int i = 0; i < 5_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int length = 1 + random.nextInt(8); length > 0; length--) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            String typed = text.toString().strip();
            assertEquals(typed, back(reader, typed), typed);
        }
    }

    private static String back(CsvFor reader, String cell) {
        String csv = "# x\r\n" + text(reader, List.of("x", cell, "y")).replace("\ufeff", "");
        SpreadsheetFile file = SpreadsheetFile.of("f", header(reader, csv));
        return file.rows().get(1).cells().get(1);
    }

    private static byte[] header(CsvFor reader, String csv) {
        String header = reader == CsvFor.DECIMAL_COMMA ? "a;b;c\r\n" : "a,b,c\r\n";
        return (header + csv.substring(5)).getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void numbersStayNumbersWithTheReadersMark() {
        List<Object> cells = List.of(new BigDecimal("-1.5"), new BigDecimal("1E-9"), "1.5", "-3");
        assertEquals("-1.5,1E-9,1.5,-3\r\n", text(CsvFor.PROGRAMS, cells));
        assertEquals("\ufeff-1.5,1E-9,1.5,-3\r\n", text(CsvFor.DECIMAL_POINT, cells));
        assertEquals("\ufeff-1,5;1E-9;1.5;-3\r\n", text(CsvFor.DECIMAL_COMMA, cells));
    }
}
