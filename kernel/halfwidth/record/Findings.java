package halfwidth.record;

import halfwidth.job.Finding;
import halfwidth.job.Outcome;
import halfwidth.job.Outcome.Word;
import halfwidth.run.Outcome.Failed;
import halfwidth.run.Outcome.Waiting;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import halfwidth.show.Answer;
import halfwidth.show.Sheet;
import halfwidth.show.Verdict;
import halfwidth.value.Decimal;
import java.util.List;

/** What a run found, in the form that a job keeps. */
public final class Findings {
    private Findings() {}

    /** The results of a sheet, unrounded, in the page's order. */
    public static List<Finding> of(Sheet sheet) {
        return sheet.answers().stream().map(Findings::finding).toList();
    }

    private static Finding finding(Answer answer) {
        boolean none = answer.value().isEmpty() || answer.value().get() instanceof Shown.Nothing;
        String words = none ? "" : answer.shownValue();
        return new Finding(
                answer.result().name(),
                answer.number().map(Decimal::print).orElse(words),
                answer.number().isPresent() ? answer.result().unit() : "",
                answer.uncertainty().map(Decimal::print).orElse(""),
                answer.ruling().words(),
                answer.number().isPresent() ? answer.shownValue() : "");
    }

    /** What came of the whole page. */
    public static Outcome outcome(Sheet sheet) {
        Run run = sheet.run();
        if (run.steps().stream().anyMatch(ran -> ran.outcome() instanceof Failed)) {
            return Outcome.of(Word.FAILED);
        }
        List<String> awaited =
                run.steps().stream()
                        .filter(ran -> ran.outcome() instanceof Waiting)
                        .flatMap(ran -> ((Waiting) ran.outcome()).names().stream())
                        .distinct()
                        .toList();
        if (!awaited.isEmpty()) {
            return new Outcome(Word.WAITING, awaited);
        }
        return Outcome.of(word(sheet.answers().stream().map(Answer::verdict).toList()));
    }

    private static Word word(List<Verdict> verdicts) {
        if (verdicts.contains(Verdict.HELD)) {
            return Word.HELD;
        }
        if (verdicts.contains(Verdict.NOT_MET)) {
            return Word.NOT_MET;
        }
        if (verdicts.contains(Verdict.TO_DO)) {
            return Word.TO_DO;
        }
        if (verdicts.contains(Verdict.NOT_JUDGED)) {
            return Word.NOT_JUDGED;
        }
        return verdicts.contains(Verdict.MET) ? Word.MET : Word.RAN;
    }
}
