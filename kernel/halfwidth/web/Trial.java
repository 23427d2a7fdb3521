package halfwidth.web;

import halfwidth.page.Problem;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a change of a page comes to, before it is kept.
 *
 * @param before the page as it is
 * @param after the page as changed, with the same values
 */
record Trial(Edit edit, Scene before, Scene after) {

    /** Whether a step stands in the lines that are typed. */
    boolean isHere(Ran ran) {
        int line = ran.step().line();
        return line >= edit.firstLine() && line <= edit.lastLine();
    }

    /** What fails in the lines that are typed. */
    List<Problem> failuresHere() {
        return failures(after).filter(this::isHere).map(this::problem).toList();
    }

    /** What fails elsewhere and did not before. */
    List<Problem> failuresElsewhere() {
        List<String> known = failures(before).map(ran -> ran.step().code()).toList();
        return failures(after)
                .filter(ran -> !isHere(ran) && !known.contains(ran.step().code()))
                .map(this::problem)
                .toList();
    }

    private static Stream<Ran> failures(Scene scene) {
        return scene.sheet().run().steps().stream()
                .filter(ran -> ran.outcome() instanceof Outcome.Failed);
    }

    private Problem problem(Ran ran) {
        Outcome.Failed failed = (Outcome.Failed) ran.outcome();
        Path file = after.page().file();
        return new Problem(file, failed.line(), words(failed));
    }

    /** Why a step failed, and what to do, on one line. */
    static String words(Outcome.Failed failed) {
        return Stream.of(failed.reason(), failed.detail(), failed.advice())
                .filter(text -> !text.isBlank())
                .map(String::strip)
                .collect(Collectors.joining(" – "));
    }
}
