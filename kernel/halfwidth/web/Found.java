package halfwidth.web;

import halfwidth.job.Finding;
import halfwidth.job.Outcome;
import halfwidth.job.Outcome.Word;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.show.Answer;
import halfwidth.show.Sheet;
import halfwidth.show.Verdict;
import java.util.List;
import java.util.Optional;

/** What a run found, as the job keeps it. */
final class Found {
    private Found() {}

    static Outcome outcome(Sheet sheet) {
        List<halfwidth.run.Outcome> outcomes =
                sheet.run().steps().stream().map(Ran::outcome).toList();
        if (outcomes.stream().anyMatch(halfwidth.run.Outcome.Failed.class::isInstance)) {
            return Outcome.of(Word.FAILED);
        }
        List<String> missing =
                outcomes.stream()
                        .filter(halfwidth.run.Outcome.Waiting.class::isInstance)
                        .flatMap(
                                outcome ->
                                        ((halfwidth.run.Outcome.Waiting) outcome).names().stream())
                        .distinct()
                        .toList();
        return missing.isEmpty() ? judged(sheet) : new Outcome(Word.WAITING, missing);
    }

    private static Outcome judged(Sheet sheet) {
        List<Verdict> verdicts = sheet.answers().stream().map(Answer::verdict).toList();
        if (verdicts.contains(Verdict.NOT_MET)) {
            return Outcome.of(Word.NOT_MET);
        }
        if (verdicts.contains(Verdict.NOT_JUDGED)) {
            return Outcome.of(Word.NOT_JUDGED);
        }
        return Outcome.of(verdicts.contains(Verdict.MET) ? Word.MET : Word.RAN);
    }

    static List<Finding> findings(Sheet sheet) {
        return sheet.answers().stream().map(Found::finding).toList();
    }

    private static Finding finding(Answer answer) {
        boolean number = answer.number().isPresent();
        return new Finding(
                answer.result().name(),
                answer.number().map(String::valueOf).orElseGet(() -> words(answer.value())),
                number ? answer.result().unit() : "",
                answer.uncertainty().map(String::valueOf).orElse(""),
                answer.ruling().words());
    }

    private static String words(Optional<Shown> value) {
        return value.filter(shown -> !(shown instanceof Shown.Nothing)).isEmpty()
                ? ""
                : value.get() instanceof Shown.Words words ? words.text() : "";
    }
}
