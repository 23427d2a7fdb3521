package halfwidth.json;

import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.show.Answer;
import halfwidth.show.Sheet;
import halfwidth.show.Traced;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What a run of a page came to. */
public final class RunJson {
    private RunJson() {}

    /**
     * Shapes a run.
     *
     * @param visit its visit; "" for none
     * @param status the exit status that it ends with
     */
    public static String of(Traced traced, String visit, int status) {
        Sheet sheet = traced.sheet();
        return JsonText.of(
                new Members()
                        .put("format", "halfwidth run 1")
                        .put("status", status)
                        .put("page", sheet.page().name())
                        .put("title", sheet.page().title())
                        .put("visit", visit)
                        .put("heading", sheet.heading())
                        .put("values", sheet.example() ? "worked example" : "entered")
                        .put("program", sheet.stamp().version())
                        .put("java", sheet.stamp().java())
                        .put(
                                "ran",
                                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(sheet.stamp().ran()))
                        .put(
                                "results",
                                sheet.answers().stream().map(a -> result(a, traced)).toList())
                        .put("awaited", awaited(sheet))
                        .put("faults", faults(sheet.run().steps(), sheet.run().checks()))
                        .all());
    }

    private static Map<String, Object> result(Answer answer, Traced traced) {
        return new Members()
                .put("name", answer.result().name())
                .put("label", answer.result().label())
                .put("value", value(answer))
                .put("unit", answer.result().unit())
                .put("uncertainty", traced.uncertainty(answer))
                .put("verdict", answer.verdict().words())
                .put("said", answer.ruling().words())
                .all();
    }

    private static Object value(Answer answer) {
        boolean none = answer.value().isEmpty() || answer.value().get() instanceof Shown.Nothing;
        return answer.number().isPresent()
                ? answer.number().get()
                : none ? null : answer.shownValue();
    }

    private static List<String> awaited(Sheet sheet) {
        return sheet.run().steps().stream()
                .filter(ran -> ran.outcome() instanceof Outcome.Waiting)
                .flatMap(ran -> ((Outcome.Waiting) ran.outcome()).names().stream())
                .distinct()
                .toList();
    }

    /** Steps that failed, and checks that do not hold or could not run. */
    static List<Map<String, Object>> faults(List<Ran> steps, List<Ran> checks) {
        return Stream.concat(
                        steps.stream().filter(ran -> ran.outcome() instanceof Outcome.Failed),
                        checks.stream().filter(ran -> !(ran.outcome() instanceof Outcome.Done)))
                .map(RunJson::fault)
                .toList();
    }

    private static Map<String, Object> fault(Ran ran) {
        Outcome.Failed failed =
                ran.outcome() instanceof Outcome.Failed found
                        ? found
                        : new Outcome.Failed(
                                ran.step().line(), "It did not run.", "", "Mend what it needs.");
        return new Members()
                .put("line", failed.line())
                .put("code", ran.step().code().strip())
                .put("reason", failed.reason())
                .put("detail", failed.detail())
                .put("advice", failed.advice())
                .all();
    }
}
