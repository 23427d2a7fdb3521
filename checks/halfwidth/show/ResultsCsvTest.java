package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class ResultsCsvTest {
    private static final String CSV = ResultsCsv.of(DemoSheet.of(true));

    private static List<CSVRecord> records() throws IOException {
        return CSVParser.parse(CSV, CSVFormat.RFC4180).getRecords();
    }

    @Test
    void startsWithTheHeader() {
        assertEquals(
                "name,value,unit,uncertainty,verdict,label,values", CSV.lines().findFirst().get());
    }

    @Test
    void givesTheUnroundedValueWithItsVerdict() throws IOException {
        assertEquals(
                List.of(
                        "firstCut",
                        "56.5695",
                        "mm",
                        "0.943",
                        "met, but the limit is within the uncertainty",
                        "First cut",
                        "worked example"),
                records().get(2).toList());
    }

    @Test
    void leavesAValueThatWasNotComputedBlankAndSaysWhy() throws IOException {
        assertEquals(
                List.of(
                        "step",
                        "",
                        "dB",
                        "",
                        "waiting for power",
                        "Change of power",
                        "worked example"),
                records().get(6).toList());
    }

    @Test
    void saysOnEveryLineWhoseValuesWentIn() throws IOException {
        String entered = ResultsCsv.of(DemoSheet.of(false));
        for (CSVRecord line : CSVParser.parse(entered, CSVFormat.RFC4180).getRecords()) {
            String last = line.get(6);
            assertEquals(line.getRecordNumber() == 1 ? "values" : "entered", last);
        }
        for (CSVRecord line : records().subList(1, 7)) {
            assertEquals("worked example", line.get(6));
        }
    }

    @Test
    void endsEveryLineAsTheStandardSays() {
        assertEquals(7, CSV.split("\r\n", -1).length - 1);
    }
}
