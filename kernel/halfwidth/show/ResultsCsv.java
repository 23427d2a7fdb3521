package halfwidth.show;

import halfwidth.run.Shown;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.function.Function;
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
        return of(sheet, result -> Optional.empty());
    }

    /**
     * The same; where the page states no uncertainty of a result, the one to first order from those
     * of its inputs.
     */
    public static String of(Traced traced) {
        return of(traced.sheet(), traced::uncertainty);
    }

    private static String of(Sheet sheet, Function<String, Optional<Double>> firstOrder) {
        String values = sheet.example() ? "worked example" : "entered";
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, FORMAT)) {
            for (Answer answer : sheet.answers()) {
                csv.printRecord(
                        answer.result().name(),
                        value(answer),
                        answer.result().unit(),
                        answer.uncertainty()
                                .or(() -> unstated(answer, firstOrder))
                                .map(Numbers::full)
                                .orElse(""),
                        verdict(answer),
                        answer.result().label(),
                        values);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** Nothing where the page states an uncertainty that did not come out. */
    private static Optional<Double> unstated(
            Answer answer, Function<String, Optional<Double>> firstOrder) {
        return answer.result().uncertainty().isPresent()
                ? Optional.empty()
                : firstOrder.apply(answer.result().name());
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
