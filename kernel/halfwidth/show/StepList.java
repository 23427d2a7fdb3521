package halfwidth.show;

import halfwidth.method.MethodSource;
import halfwidth.page.Part;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.run.Step;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The steps of one block, each with its line in the margin, its numbers and its outcome.
 *
 * @param called the library methods to name at a step
 * @param uncertainty that of a step, in words; "" for none
 */
record StepList(
        Sheet sheet,
        Html html,
        Pictures pictures,
        Function<Step, List<MethodSource>> called,
        Function<Step, String> uncertainty) {

    /** Steps by themselves. */
    static StepList plain(Sheet sheet, Html html, Pictures pictures) {
        return new StepList(sheet, html, pictures, step -> List.of(), step -> "");
    }

    void write(Part.Steps part) {
        List<Ran> steps = within(sheet.run().steps(), part.line(), part.code());
        if (steps.isEmpty()) {
            Margin.open(html, "div", "block", part.line());
            html.open("pre").element("code", part.code()).close().close().line();
        }
        List<Ran> imports = steps.stream().takeWhile(StepList::isImport).toList();
        html.open("div", "class", "steps").line();
        if (!imports.isEmpty()) {
            imports(imports);
        }
        steps.stream().skip(imports.size()).forEach(this::step);
        html.close().line();
    }

    /** Whether a step imports names, and did so without a word. */
    private static boolean isImport(Ran ran) {
        return ran.step().code().startsWith("import ") && ran.outcome() instanceof Outcome.Done;
    }

    private void imports(List<Ran> imports) {
        Margin.open(html, "section", "step imports", imports.get(0).step().line());
        String code =
                imports.stream()
                        .map(ran -> ran.step().code().strip())
                        .collect(Collectors.joining("\n"));
        html.open("pre").element("code", code).close().close().line();
    }

    /** The steps or checks whose first line lies in a block of the page. */
    static List<Ran> within(List<Ran> all, int firstLine, String code) {
        long end = firstLine + code.lines().count();
        return all.stream()
                .filter(ran -> ran.step().line() >= firstLine && ran.step().line() < end)
                .toList();
    }

    private void step(Ran ran) {
        Step step = ran.step();
        Margin.open(html, "section", "step", step.line());
        Optional<WorkedStep> worked = WorkedStep.of(sheet.run(), ran);
        if (worked.isPresent()) {
            new WorkedHtml(html).write(worked.get());
            calls(worked.get());
            uncertain(step);
            rows(ran);
            printed(ran.outcome());
            html.close().line();
            return;
        }
        html.open("div", "class", "work");
        html.open("pre").element("code", step.code().strip()).close();
        note(step);
        html.close();
        if (Plots.isPlot(ran)) {
            new Plots(sheet, html, pictures).pointer(ran);
        } else {
            outcome(step, ran.outcome());
        }
        uncertain(step);
        rows(ran);
        html.close().line();
    }

    private void uncertain(Step step) {
        String words = uncertainty.apply(step);
        if (!words.isEmpty()) {
            html.element("p", words, "class", "uncertain");
        }
    }

    private void calls(WorkedStep worked) {
        List<LibraryCall> calls = LibraryCall.of(worked, called.apply(worked.step()));
        if (!calls.isEmpty()) {
            html.open("div", "class", "calls");
            new WorkedHtml(html).calls(calls);
            html.close();
        }
    }

    /** What was computed row by row: on paper the review sheet has it. */
    private void rows(Ran ran) {
        List<WorkedRows> rows = WorkedRows.of(sheet.run(), ran);
        if (rows.isEmpty()) {
            return;
        }
        html.open("details", "class", "each");
        html.element("summary", "First, last and worst row");
        rows.forEach(new WorkedHtml(html)::rows);
        html.close();
    }

    private void note(Step step) {
        String used = new Numbered(sheet).used(step);
        if (!used.isEmpty()) {
            html.element("p", "with " + used, "class", "used");
        }
        if (!step.note().isBlank()) {
            html.element("p", step.note(), "class", "source");
        }
    }

    private void printed(Outcome outcome) {
        if (outcome instanceof Outcome.Done done && !done.printed().isBlank()) {
            html.element("pre", done.printed().stripTrailing(), "class", "printed");
        }
    }

    void outcome(Step step, Outcome outcome) {
        if (outcome instanceof Outcome.Done done) {
            new ShownValue(html).write(step, done.value());
            printed(outcome);
        } else if (outcome instanceof Outcome.Waiting waiting) {
            String names =
                    waiting.names().stream().map(sheet::known).collect(Collectors.joining(", "));
            html.element("p", "waiting for " + names, "class", "waits");
        } else if (outcome instanceof Outcome.Skipped skipped) {
            String names =
                    skipped.names().stream().map(sheet::known).collect(Collectors.joining(", "));
            html.element("p", Absence.OPTIONAL + " (" + names + ")", "class", "waits");
        } else if (outcome instanceof Outcome.Held held) {
            String lines = Absence.lines(held.lines());
            html.element("p", "not run, since " + lines + " failed", "class", "waits");
        } else if (outcome instanceof Outcome.Failed failed) {
            failure(html, failed);
        }
    }

    /** What went wrong, in a technician's words first. */
    static void failure(Html html, Outcome.Failed failed) {
        html.open("div", "class", "failure").open("p").element("strong", "Failed");
        html.text(" at line %s: %s".formatted(failed.line(), failed.reason())).close();
        if (!failed.advice().isBlank()) {
            html.element("p", failed.advice());
        }
        if (!failed.detail().isBlank()) {
            html.element("pre", failed.detail().strip());
        }
        html.close();
    }
}
