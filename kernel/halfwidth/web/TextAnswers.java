package halfwidth.web;

import halfwidth.adapt.AdaptedPages;
import halfwidth.adapt.ChangedElsewhere;
import halfwidth.adapt.Draft;
import halfwidth.adapt.PageText;
import halfwidth.adapt.Version;
import halfwidth.job.Visit;
import halfwidth.page.Problem;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.show.Html;
import java.util.List;

/** A page as one text, to be changed all at once; the change is a copy in the job. */
record TextAnswers(Notebook notebook) {

    /** The text as it is in the file, even where it is no page, so that it can be mended. */
    Reply page(Request request, Visit visit) {
        Scene scene = notebook.scene(visit, Notebook.Effort.ANEW, List.of());
        PageText text = notebook.adapted().draft(visit.page()).text();
        return view(visit, text.toString(), text.version(), scene.remarks(), failures(scene));
    }

    /** Takes a changed text if it is a page and nobody else changed it meanwhile. */
    Reply change(Request request, Visit visit) {
        AdaptedPages adapted = notebook.adapted();
        // A browser sends its own line ends, whatever the text had.
        String text = request.form().get("text").replace("\r\n", "\n");
        Version seen = new Version(request.form().get("seen"));
        Draft draft = Draft.of(visit.page(), adapted.file(visit.page()), text);
        if (draft.page().isEmpty()) {
            List<String> problems = draft.problems().stream().map(Problem::toString).toList();
            return view(visit, text, seen, problems, List.of());
        }
        try {
            adapted.write(draft, seen);
            return Reply.goTo(notebook.at("/text", visit));
        } catch (ChangedElsewhere meanwhile) {
            return view(
                    visit,
                    text,
                    adapted.version(visit.page()),
                    List.of(
                            "The page was changed meanwhile, in another window or editor. Your text"
                                    + " is below and not taken over yet; take it over to replace"
                                    + " the other."),
                    List.of());
        }
    }

    private static List<Ran> failures(Scene scene) {
        return scene.sheet().run().steps().stream()
                .filter(ran -> ran.outcome() instanceof Outcome.Failed)
                .toList();
    }

    private Reply view(
            Visit visit, String text, Version seen, List<String> problems, List<Ran> failures) {
        return Reply.html(
                Frame.ofVisit(
                        notebook,
                        "/text",
                        visit,
                        html -> {
                            html.open("main", "id", "sheet", "class", "adapt");
                            html.element("h1", "Adapt " + visit.page());
                            html.element(
                                    "p",
                                    "A change is kept as a copy in the job; the shipped page stays"
                                            + " as it is.");
                            new WayBack(notebook, visit, html).write(seen);
                            problems.forEach(p -> html.element("pre", p, "class", "warning"));
                            failures.forEach(ran -> failure(html, ran));
                            html.open("form", "method", "post");
                            html.single(
                                    "input",
                                    "type",
                                    "hidden",
                                    "name",
                                    "seen",
                                    "value",
                                    seen.digest());
                            html.open("label").text("The page’s text");
                            html.open("textarea", "name", "text", "spellcheck", "false");
                            html.text("\n" + text).close().close();
                            html.element("button", "Take over");
                            html.close().close().line();
                        }));
    }

    private static void failure(Html html, Ran ran) {
        Outcome.Failed failed = (Outcome.Failed) ran.outcome();
        html.open("div", "class", "failure");
        html.element("p", "Line " + failed.line() + ": " + failed.reason());
        html.open("pre").element("code", ran.step().code().strip()).close();
        html.element("pre", failed.detail()).element("p", failed.advice()).close().line();
    }
}
