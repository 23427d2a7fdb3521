package halfwidth.spreadsheet;

import java.util.Locale;

/** For whom a CSV is written. */
public enum CsvFor {
    /** As RFC 4180 says, in UTF-8 without a mark. */
    PROGRAMS,
    /** The same with a mark, without which spreadsheets mistake the letters. */
    DECIMAL_POINT,
    /** Semicolons between cells, commas in numbers, and the mark. */
    DECIMAL_COMMA;

    Separator separator() {
        return this == DECIMAL_COMMA ? Separator.SEMICOLON : Separator.COMMA;
    }

    /** How it is typed, as in {@code decimal-comma}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
