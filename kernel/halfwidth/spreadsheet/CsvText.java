package halfwidth.spreadsheet;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/**
 * CSV that leaves, line by line. No cell of it is one that a spreadsheet would run ({@link
 * SpreadsheetFile} gives the text back as it was).
 */
public final class CsvText {
    private static final String MARK = "\ufeff";

    private final CsvFor reader;
    private final CSVFormat format;
    private final StringBuilder text = new StringBuilder();

    public CsvText(CsvFor reader) {
        this.reader = reader;
        this.format = CSVFormat.RFC4180.builder().setDelimiter(reader.separator().sign()).get();
        if (reader != CsvFor.PROGRAMS) {
            text.append(MARK);
        }
    }

    /**
     * Adds a line.
     *
     * @param cells numbers as {@link BigDecimal}, which get the reader's decimal mark; anything
     *     else is text
     */
    public CsvText line(List<?> cells) {
        text.append(format.format(cells.stream().map(this::cell).toArray())).append("\r\n");
        return this;
    }

    private String cell(Object cell) {
        if (cell instanceof BigDecimal number) {
            String digits = number.toString();
            return reader == CsvFor.DECIMAL_COMMA ? digits.replace('.', ',') : digits;
        }
        return Apostrophe.before(cell.toString(), reader.separator());
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
