package halfwidth.command;

import halfwidth.spreadsheet.CsvFor;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The option that says who is to read a CSV that is written. */
final class CsvReader {
    @Option(
            names = "--csv-for",
            paramLabel = "READER",
            defaultValue = "programs",
            converter = ByWords.class,
            description =
                    "Who reads the CSV: programs (the usual), decimal-point for a spreadsheet set"
                            + " to a language as English, or decimal-comma for one set to a"
                            + " language as German or French: semicolons between cells and commas"
                            + " in numbers.")
    private CsvFor reader;

    private static final class ByWords implements ITypeConverter<CsvFor> {
        @Override
        public CsvFor convert(String typed) {
            return Stream.of(CsvFor.values())
                    .filter(known -> known.toString().equals(typed))
                    .findFirst()
                    .orElseThrow(
                            () ->
                                    new TypeConversionException(
                                            typed
                                                    + " is no reader of a CSV; name programs,"
                                                    + " decimal-point or decimal-comma"));
        }
    }

    CsvFor reader() {
        return reader;
    }
}
