package halfwidth.web;

import halfwidth.job.Fingerprint;
import halfwidth.job.Visit;
import halfwidth.page.Page;
import halfwidth.page.PageRefused;
import halfwidth.page.Pages;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.show.Html;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/** The page's text to be changed by an engineer: the change is a copy in the job. */
record AdaptAnswers(Notebook notebook) {

    Reply page(Request request, Visit visit) {
        Scene scene = notebook.scene(visit, Notebook.Effort.ANEW, List.of());
        String text = scene.page().text();
        return view(visit, text, Fingerprint.of(text), scene.remarks(), failures(scene));
    }

    /** Takes a changed text if it is a page and nobody else changed it meanwhile. */
    Reply change(Request request, Visit visit) {
        String text = request.form().get("text").replace("\r\n", "\n");
        String seen = request.form().get("seen");
        Page now = notebook.page(visit.page());
        if (!Fingerprint.of(now.text()).equals(seen)) {
            return view(
                    visit,
                    text,
                    Fingerprint.of(now.text()),
                    List.of(
                            "The page was changed meanwhile, in another window or editor. Your text"
                                    + " is below and not taken over yet; take it over to replace"
                                    + " the other."),
                    List.of());
        }
        Path file = notebook.job().folder().resolve("pages").resolve(visit.page() + ".md");
        try {
            Pages.parse(visit.page(), file, text);
        } catch (PageRefused refusal) {
            return view(visit, text, seen, List.of(refusal.getMessage()), List.of());
        }
        keep(file, text);
        return Reply.goTo(Address.of("/adapt", visit));
    }

    /** Under another name first, so that a page is there whole or not at all. */
    private static void keep(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            Path part = Files.createTempFile(file.getParent(), "page", ".part");
            Files.writeString(part, text);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Ran> failures(Scene scene) {
        return scene.sheet().run().steps().stream()
                .filter(ran -> ran.outcome() instanceof Outcome.Failed)
                .toList();
    }

    private Reply view(
            Visit visit, String text, String seen, List<String> problems, List<Ran> failures) {
        return Reply.html(
                Frame.ofVisit(
                        notebook,
                        "/adapt",
                        visit,
                        html -> {
                            html.open("main", "id", "sheet", "class", "adapt");
                            html.element("h1", "Adapt " + visit.page());
                            html.element(
                                    "p",
                                    "A change is kept as a copy in the job; the shipped page stays"
                                            + " as it is.");
                            problems.forEach(p -> html.element("pre", p, "class", "warning"));
                            failures.forEach(ran -> failure(html, ran));
                            html.open("form", "method", "post");
                            html.single("input", "type", "hidden", "name", "seen", "value", seen);
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
