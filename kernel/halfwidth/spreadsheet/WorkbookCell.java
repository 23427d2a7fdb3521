package halfwidth.spreadsheet;

import halfwidth.value.Decimal;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;

/** A cell of a workbook as one would type what it holds; of a formula, what it last came to. */
record WorkbookCell(Cell cell) {
    private static final Pattern ERROR = Pattern.compile("#(?:[A-Z]+[!?]|[A-Z]+/[A-Z0]+!?|N/A)");

    /** What a format says beside the number: words in quotes or brackets, and single letters. */
    private static final Pattern BESIDE = Pattern.compile("\"[^\"]*\"|\\[[^\\]]*]|\\\\.|_.|\\*.");

    /** The formats of dates and times that workbooks name by number (ECMA-376, 18.8.30). */
    private static boolean isDateByNumber(int format) {
        return format >= 14 && format <= 22
                || format >= 27 && format <= 36
                || format >= 45 && format <= 47
                || format >= 50 && format <= 58;
    }

    /** Why it cannot be read; empty if it can. */
    Optional<String> problem() {
        Object value = cell.getValue();
        if (value == null) {
            return cell.getType() == CellType.FORMULA
                    ? Optional.of(
                            "its formula was never calculated; open and save the file in a"
                                    + " spreadsheet")
                    : Optional.empty();
        }
        boolean computed = cell.getType() == CellType.FORMULA || cell.getType() == CellType.ERROR;
        return computed && ERROR.matcher(value.toString()).matches()
                ? Optional.of("it came to " + value + "; mend it in the spreadsheet or clear it")
                : Optional.empty();
    }

    String text() {
        Object value = cell.getValue();
        if (value == null) {
            return "";
        }
        if (value instanceof Boolean flag) {
            return flag ? "TRUE" : "FALSE";
        }
        return value instanceof BigDecimal number ? number(number) : value.toString();
    }

    private String number(BigDecimal number) {
        String format = Optional.ofNullable(cell.getDataFormatString()).orElse("");
        String bare = BESIDE.matcher(format).replaceAll("");
        int id = Optional.ofNullable(cell.getDataFormatId()).orElse(0);
        boolean general = bare.equalsIgnoreCase("general");
        if (isDateByNumber(id) || !general && bare.matches("(?i).*[dmyhs].*")) {
            return date(number.doubleValue());
        }
        // Spreadsheets write seventeen digits of a binary number.
        return bare.contains("%")
                ? Decimal.print(
                                number.movePointRight(2)
                                        .round(java.math.MathContext.DECIMAL64)
                                        .doubleValue())
                        + " %"
                : Decimal.print(number.doubleValue());
    }

    private String date(double days) {
        LocalDateTime date = cell.asDate();
        if (days >= 0 && days < 1) {
            return date.toLocalTime().toString();
        }
        boolean whole = date.toLocalTime().equals(LocalTime.MIDNIGHT);
        return date.toLocalDate() + (whole ? "" : " " + date.toLocalTime());
    }
}
