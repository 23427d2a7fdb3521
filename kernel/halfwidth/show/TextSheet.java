package halfwidth.show;

import halfwidth.page.Field;
import halfwidth.page.Part;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A sheet as plain text for a terminal, {@value #WIDTH} columns wide: what a technician needs,
 * without the steps. Of its own it uses only characters that old consoles have too.
 */
public final class TextSheet {
    private static final int WIDTH = 88;

    private final Sheet sheet;
    private final List<String> lines = new ArrayList<>();

    private TextSheet(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Writes a sheet, with a line feed after each line. */
    public static String of(Sheet sheet) {
        TextSheet text = new TextSheet(sheet);
        text.title();
        text.cautions();
        text.inputs();
        text.results();
        text.waiting();
        text.failures();
        text.checks();
        return String.join("\n", text.lines) + "\n";
    }

    private void title() {
        String title = Line.safe(sheet.page().title());
        String name = Line.safe(sheet.page().name());
        int room = WIDTH - Line.width(name);
        lines.add(
                Line.width(title) + 2 <= room
                        ? Line.padRight(title, room) + name
                        : title + "  " + name);
        lines.add("=".repeat(WIDTH));
        heading();
        if (sheet.example()) {
            lines.add("*** WORKED EXAMPLE - invented values, not a station's ***");
        }
        sheet.ownCopy().ifPresent(copy -> indent(copy.words(), copy.isSound() ? "" : "*** "));
    }

    private void heading() {
        String words =
                sheet.heading().entrySet().stream()
                        .filter(entry -> !entry.getValue().isBlank())
                        .map(entry -> entry.getKey() + " " + entry.getValue())
                        .collect(Collectors.joining(", "));
        if (!words.isEmpty()) {
            indent(words, "");
        }
    }

    private void section(String name) {
        lines.add("");
        lines.add(name);
    }

    private void cautions() {
        List<Prose> cautions = Prose.cautions(sheet.page());
        if (cautions.isEmpty()) {
            return;
        }
        section("CAUTION");
        for (Prose caution : cautions) {
            caution.paragraphs().forEach(paragraph -> indent(paragraph, "  ! "));
        }
    }

    private void indent(String text, String mark) {
        String lead = mark;
        for (String line : Line.wrap(text, WIDTH - mark.length())) {
            lines.add(lead + line);
            lead = " ".repeat(mark.length());
        }
    }

    private void inputs() {
        if (sheet.page().fields().isEmpty() && sheet.page().readings().isEmpty()) {
            return;
        }
        section("INPUTS");
        Columns columns = new Columns(WIDTH - 2, "ll");
        for (Field field : sheet.page().fields()) {
            String understood =
                    sheet.entry(field.name())
                            .map(entry -> entry.understood())
                            .orElse(field.optional() ? Absence.OPTIONAL : "not filled in");
            String origin = sheet.filled().origins().getOrDefault(field.name(), "");
            columns.row(List.of(field.label(), understood), List.of(origin));
        }
        for (Part.Readings table : sheet.page().readings()) {
            String count = Readings.of(table, sheet).words();
            columns.row(List.of("readings " + table.name(), count), List.of());
        }
        columns.lines().forEach(line -> lines.add("  " + line));
    }

    private void results() {
        List<Answer> answers = sheet.answers();
        if (answers.isEmpty()) {
            return;
        }
        section("RESULTS");
        boolean judged = Answer.anyLimits(answers);
        Columns columns = new Columns(WIDTH - 2, "lrllll");
        String group = "";
        for (Answer answer : answers) {
            if (!answer.result().group().equals(group)) {
                group = answer.result().group();
                columns.heading(group);
            }
            List<String> notes = List.of(answer.ruling().why());
            if (answer.isText()) {
                columns.text(answer.result().label(), answer.shownValue(), notes);
            } else {
                columns.row(cells(answer, judged), notes);
            }
        }
        columns.lines().forEach(line -> lines.add("  " + line));
        if (answers.stream().anyMatch(answer -> answer.uncertainty().isPresent())) {
            lines.add("  ± is one standard uncertainty.");
        }
    }

    private static List<String> cells(Answer answer, boolean judged) {
        String uncertainty = answer.shownUncertainty();
        return List.of(
                answer.result().label(),
                answer.value().isEmpty() ? "-" : answer.shownValue(),
                answer.shownUnit(),
                uncertainty.isEmpty() ? "" : "± " + uncertainty,
                judged ? answer.shownLimits() : "",
                judged ? answer.verdict().words() : "");
    }

    private void waiting() {
        List<String> names = sheet.waitedFor();
        if (names.isEmpty()) {
            return;
        }
        long steps = sheet.outcomes(Outcome.Waiting.class).count();
        section("WAITING - " + Counted.of(steps, "step") + " not run for want of");
        names.forEach(name -> indent(sheet.known(name), "  "));
    }

    private void failures() {
        if (sheet.failed().isEmpty()) {
            return;
        }
        section("FAILED");
        sheet.failed().forEach(ran -> failure(ran, (Outcome.Failed) ran.outcome()));
        long held = sheet.outcomes(Outcome.Held.class).count();
        if (held > 0) {
            indent(Counted.of(held, "later step") + " not run, since this is needed there.", "  ");
        }
    }

    private void failure(Ran ran, Outcome.Failed failed) {
        if (failed.refused().isPresent()) {
            String entry = sheet.known(failed.refused().get());
            indent(entry + ": " + failed.reason(), "  ");
            indent("(%s:%s)".formatted(sheet.page().file(), failed.line()), "    ");
            return;
        }
        indent("%s:%s: %s".formatted(sheet.page().file(), failed.line(), failed.reason()), "  ");
        ran.step().code().lines().forEach(code -> lines.add("      " + Line.safe(code)));
        for (String more : List.of(failed.detail(), failed.advice())) {
            more.lines().forEach(line -> indent(line, "    "));
        }
    }

    private void checks() {
        List<Ran> broken = sheet.brokenChecks();
        int all = sheet.run().checks().size();
        if (all == 0) {
            return;
        }
        section("CHECKS - %s of %s hold".formatted(all - broken.size(), all));
        for (Ran check : broken) {
            if (check.outcome() instanceof Outcome.Failed failed) {
                failure(check, failed);
            } else {
                indent("line %s was not run".formatted(check.step().line()), "  ");
            }
        }
    }
}
