package halfwidth.spreadsheet;

/** What stands between the cells of a file. */
public enum Separator {
    COMMA(','),
    SEMICOLON(';'),
    TAB('\t'),
    /** Nothing: the cells of a workbook are apart by themselves. */
    NONE('\0');

    private final char sign;

    Separator(char sign) {
        this.sign = sign;
    }

    char sign() {
        return sign;
    }

    /**
     * The one that a line separates its cells by. One within quotation marks does not count, and a
     * line without any is a single cell.
     */
    static Separator of(String line) {
        String open = line.replaceAll("\"[^\"]*\"?", "");
        if (open.indexOf(TAB.sign) >= 0) {
            return TAB;
        }
        return open.indexOf(SEMICOLON.sign) >= 0 ? SEMICOLON : COMMA;
    }
}
