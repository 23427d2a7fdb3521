package halfwidth.show;

import halfwidth.run.Shown;
import halfwidth.spreadsheet.CsvFor;
import halfwidth.spreadsheet.CsvText;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Results as CSV, for other programs or a spreadsheet: {@code
 * name,value,unit,uncertainty,verdict,label,values}. Numbers are unrounded, to twelve digits; a
 * value that was not computed is blank, and the verdict says why. The last column tells on every
 * line whether the values put in were {@code entered} or are the {@code worked example}'s, so that
 * a line cut out of the file still tells.
 */
public final class ResultsCsv {
    private static final List<String> HEADER =
            List.of("name", "value", "unit", "uncertainty", "verdict", "label", "values");

    private ResultsCsv() {}

    /** Writes one line for each answer of a sheet, below a header. */
    public static String of(Sheet sheet) {
        return of(sheet, Answer::uncertainty, CsvFor.PROGRAMS);
    }

    /**
     * The same; where the page states no uncertainty of a result, the one to first order from those
     * of its inputs.
     */
    public static String of(Traced traced, CsvFor reader) {
        return of(traced.sheet(), traced::uncertainty, reader);
    }

    private static String of(
            Sheet sheet, Function<Answer, Optional<Double>> uncertainty, CsvFor reader) {
        String values = sheet.example() ? "worked example" : "entered";
        CsvText csv = new CsvText(reader).line(HEADER);
        for (Answer answer : sheet.answers()) {
            csv.line(
                    List.of(
                            answer.result().name(),
                            value(answer),
                            answer.result().unit(),
                            number(uncertainty.apply(answer)),
                            verdict(answer),
                            answer.result().label(),
                            values));
        }
        return csv.toString();
    }

    private static Object number(Optional<Double> number) {
        return number.<Object>map(known -> new BigDecimal(Numbers.full(known))).orElse("");
    }

    private static Object value(Answer answer) {
        return answer.number().isPresent()
                ? number(answer.number())
                : isNone(answer) ? "" : answer.shownValue();
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
