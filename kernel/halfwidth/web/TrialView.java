package halfwidth.web;

import halfwidth.page.Problem;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.show.Answer;
import halfwidth.show.Html;
import halfwidth.show.SheetParts;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a change of a page would come to, shown below the change while it is typed. */
record TrialView(Html html) {

    /** The text is no page: what is wrong with it, by line. */
    void refused(List<Problem> problems) {
        html.open("div", "class", "trial").open("ol", "class", "problems");
        problems.forEach(problem -> problem(problem.line(), problem.message()));
        html.close().close();
    }

    /**
     * The page ran.
     *
     * @param checked the page as changed, with its worked example
     */
    void ran(Trial trial, Scene checked) {
        List<Problem> here = trial.failuresHere();
        html.open("div", "class", "trial").open("ol", "class", "problems");
        here.forEach(problem -> problem(problem.line(), problem.message()));
        html.close();
        SheetParts parts = trial.after().parts(html);
        trial.after().sheet().run().steps().stream()
                .filter(trial::isHere)
                .filter(ran -> !(ran.outcome() instanceof Outcome.Failed))
                .forEach(parts::outcome);
        for (Problem problem : trial.failuresElsewhere()) {
            html.element(
                    "p",
                    "Then line %s fails: %s".formatted(problem.line(), problem.message()),
                    "class",
                    "warning");
        }
        results(trial.before(), trial.after(), here.isEmpty());
        checks(checked);
        html.close();
    }

    private void problem(int line, String words) {
        html.element("li", words, "data-line", Integer.toString(line));
    }

    private void results(Scene before, Scene after, boolean ran) {
        Map<String, Answer> was =
                before.sheet().answers().stream()
                        .collect(
                                Collectors.toMap(
                                        answer -> answer.result().name(), Function.identity()));
        List<Answer> changed =
                after.sheet().answers().stream()
                        .filter(
                                now ->
                                        !Objects.equals(
                                                words(now), words(was.get(now.result().name()))))
                        .toList();
        if (changed.isEmpty()) {
            if (ran) {
                html.element("p", "No result of the page changes.", "class", "small");
            }
            return;
        }
        html.open("table", "class", "changes").element("caption", "What changes");
        html.open("thead").open("tr");
        List.of("Result", "Was", "Becomes")
                .forEach(head -> html.element("th", head, "scope", "col"));
        html.close().close().open("tbody");
        for (Answer now : changed) {
            html.open("tr").element("th", now.result().label(), "scope", "row");
            html.element("td", words(was.get(now.result().name())));
            html.element("td", words(now)).close();
        }
        html.close().close();
    }

    private static String words(Answer answer) {
        if (answer == null || answer.value().isEmpty()) {
            return "–";
        }
        return (answer.shownValue() + " " + answer.shownUnit()).strip();
    }

    /** With the worked example the page's own checks tell whether the change is meant. */
    private void checks(Scene after) {
        List<Ran> checks = after.sheet().run().checks();
        List<Ran> broken =
                checks.stream().filter(ran -> !(ran.outcome() instanceof Outcome.Done)).toList();
        if (!checks.isEmpty()) {
            html.element(
                    "p",
                    "Checks, with the worked example: %s of %s hold."
                            .formatted(checks.size() - broken.size(), checks.size()),
                    "class",
                    broken.isEmpty() ? "small" : "warning");
        }
        for (Ran ran : broken) {
            html.open("p", "class", "small").text("Line " + ran.step().line() + ": ");
            html.element("code", ran.step().code().strip());
            if (ran.outcome() instanceof Outcome.Failed failed) {
                html.text(" – " + Trial.words(failed));
            }
            html.close();
        }
    }
}
