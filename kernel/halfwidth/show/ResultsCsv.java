package halfwidth.show;

import halfwidth.run.Shown;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Results as CSV (RFC 4180), for other programs: {@code
 * name,value,unit,uncertainty,verdict,label,values}. Numbers are unrounded, to twelve digits; a
 * value that was not computed is blank, and the verdict says why. The last column tells on every
 * line whether the values put in were {@code entered} or are the {@code worked example}'s, so that
 * a line cut out of the file still tells.
 */
public final class ResultsCsv {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180
                    .builder()
                    .setHeader("name", "value", "unit", "uncertainty", "verdict", "label", "values")
                    .get();

    private ResultsCsv() {}

    /** Writes one line for each answer of a sheet, below a header. */
    public static String of(Sheet sheet) {
        String values = sheet.example() ? "worked example" : "entered";
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, FORMAT)) {
            for (Answer answer : sheet.answers()) {
                csv.printRecord(
                        answer.result().name(),
                        value(answer),
                        answer.result().unit(),
                        answer.uncertainty().map(Numbers::full).orElse(""),
                        verdict(answer),
                        answer.result().label(),
                        values);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static String value(Answer answer) {
        return answer.number()
                .map(Numbers::full)
                .orElseGet(() -> isNone(answer) ? "" : answer.shownValue());
    }

    private static boolean isNone(Answer answer) {
        return answer.value().isPresent() && answer.value().get() instanceof Shown.Nothing;
    }

    private static String verdict(Answer answer) {
        if (isNone(answer)) {
            return Values.NONE;
        }
        return answer.value().isEmpty() ? answer.ruling().reason() : answer.ruling().words();
    }
}
