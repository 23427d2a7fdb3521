package halfwidth.command;

import halfwidth.spreadsheet.CsvFor;
import picocli.CommandLine.Option;

/** The option that says who is to read a CSV that is written. */
final class CsvReader {
    @Option(
            names = "--csv-for",
            paramLabel = "READER",
            defaultValue = "programs",
            description =
                    "Who reads the CSV: programs (the usual), decimal-point for a spreadsheet set"
                            + " to a language as English, or decimal-comma for one set to a"
                            + " language as German or French: semicolons between cells and commas"
                            + " in numbers.")
    private CsvFor reader;

    CsvFor reader() {
        return reader;
    }
}
