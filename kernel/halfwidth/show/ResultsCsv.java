package halfwidth.show;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Results as CSV (RFC 4180), for other programs: {@code name,value,unit,uncertainty,verdict,label}.
 * Numbers are unrounded, to twelve digits; a value that was not computed is blank, and the verdict
 * says why.
 */
public final class ResultsCsv {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180
                    .builder()
                    .setHeader("name", "value", "unit", "uncertainty", "verdict", "label")
                    .get();

    private ResultsCsv() {}

    /** Writes one line for each answer, below a header. */
    public static String of(List<Answer> answers) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, FORMAT)) {
            for (Answer answer : answers) {
                csv.printRecord(
                        answer.result().name(),
                        answer.number().map(Numbers::full).orElseGet(answer::shownValue),
                        answer.result().unit(),
                        answer.uncertainty().map(Numbers::full).orElse(""),
                        verdict(answer),
                        answer.result().label());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static String verdict(Answer answer) {
        return answer.value().isEmpty() ? answer.ruling().reason() : answer.ruling().words();
    }
}
