package halfwidth.show;

import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.vocabulary.EntryPlace;
import java.util.List;
import java.util.Optional;

/** What the run is short of: inputs not filled in, steps that failed, checks that do not hold. */
record Shortfall(Sheet sheet, Html html) {

    void write() {
        List<String> names = sheet.waitedFor();
        if (!names.isEmpty()) {
            long steps = sheet.outcomes(Outcome.Waiting.class).count();
            html.open("section", "class", "shortfall", "aria-labelledby", "waiting");
            html.element("h2", "Waiting", "id", "waiting");
            html.element("p", Counted.of(steps, "step") + " not run for want of:");
            html.open("ul");
            names.forEach(name -> html.element("li", sheet.known(name)));
            html.close().close().line();
        }
        broken("line", "Failed", sheet.failed());
        broken("check", "Checks that do not hold", sheet.brokenChecks());
    }

    private void broken(String kind, String title, List<Ran> broken) {
        if (broken.isEmpty()) {
            return;
        }
        html.open("section", "class", "shortfall bad", "aria-labelledby", "broken-" + kind);
        html.element("h2", title, "id", "broken-" + kind).open("ul");
        for (Ran ran : broken) {
            html.open("li");
            Optional<Outcome.Failed> failed =
                    Optional.of(ran.outcome())
                            .filter(Outcome.Failed.class::isInstance)
                            .map(Outcome.Failed.class::cast);
            Optional<EntryPlace> entry = failed.flatMap(Outcome.Failed::refused);
            if (entry.isPresent()) {
                html.text(sheet.known(entry.get()));
            } else {
                int line = ran.step().line();
                html.element("a", "line " + line, "href", "#%s-%s".formatted(kind, line));
            }
            failed.ifPresent(why -> html.text(": " + why.reason()));
            html.close();
        }
        html.close().close().line();
    }
}
