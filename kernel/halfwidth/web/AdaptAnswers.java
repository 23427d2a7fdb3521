package halfwidth.web;

import halfwidth.adapt.AdaptedPages;
import halfwidth.adapt.ChangedElsewhere;
import halfwidth.adapt.Draft;
import halfwidth.adapt.Version;
import halfwidth.job.Visit;
import halfwidth.page.Problem;
import halfwidth.show.Html;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A page's steps and blocks to be changed one by one; what is kept is a copy in the job. */
record AdaptAnswers(Notebook notebook) {
    /** The status of an answer that asks whether it is really meant (RFC 6585, section 3). */
    private static final int AGREEMENT_NEEDED = 428;

    /** The view without the sheet, which has to be compiled first and then is sent for. */
    Reply page(Request request, Visit visit) {
        if (notebook.adapted().draft(visit.page()).page().isEmpty()) {
            // It can only be mended as a text.
            return Reply.goTo(notebook.at("/text", visit));
        }
        return Reply.html(
                Frame.ofVisit(
                        notebook,
                        "/adapt",
                        visit,
                        html -> {
                            html.open("div", "id", "parts").open("main", "id", "sheet");
                            html.element("p", "The sheet is being computed.", "class", "computing");
                            html.close().close();
                        }));
    }

    /** The sheet with its steps. */
    Reply sheet(Request request, Visit visit) {
        Draft draft = notebook.adapted().draft(visit.page());
        if (draft.page().isEmpty()) {
            throw new Refusal(409, "The page cannot be read; open its whole text to mend it.");
        }
        boolean example = isExample(request.form(), visit);
        Scene scene = notebook.trial(draft.page().get(), visit, example);
        Html content = new Html();
        content.open(
                "div",
                "id",
                "parts",
                "data-version",
                draft.text().version().digest(),
                "data-with",
                example ? "example" : "values");
        scene.parts(content).top();
        content.open("main", "id", "sheet", "class", "adapt");
        about(content, visit, example);
        new WayBack(notebook, visit, content).write(draft.text().version());
        scene.parts(content).results();
        new AdaptView(scene, draft, content).write();
        content.close().close();
        return Reply.html(content.toString());
    }

    private void about(Html html, Visit visit, boolean example) {
        html.element(
                "p",
                notebook.adapted().adapted(visit.page())
                        ? "This is the job’s own copy of the page. The shipped one stays as it is."
                        : "What you change here is kept as a copy in the job; the shipped page"
                                + " stays.",
                "class",
                "small");
        html.open("p", "class", "tools");
        if (!notebook.job().values(visit).isEmpty()) {
            String other = example ? "values" : "example";
            html.element(
                    "a",
                    example ? "With the values of this visit" : "With the worked example",
                    "href",
                    notebook.at("/adapt", visit) + Address.also("with", other));
        }
        html.element("a", "The page’s whole text", "href", notebook.at("/text", visit));
        html.close();
    }

    /** Takes the page back to the shipped one, and keeps the copy. */
    Reply shipped(Request request, Visit visit) {
        try {
            notebook.adapted().setAside(visit.page(), seen(request.form()));
            return Reply.goTo(notebook.at("/adapt", visit));
        } catch (ChangedElsewhere meanwhile) {
            throw changed();
        } catch (IllegalArgumentException none) {
            throw new Refusal(409, none.getMessage());
        }
    }

    /** The values of the visit if it has any, and nobody asks for the others. */
    private boolean isExample(Form form, Visit visit) {
        return form.find("with")
                .map("example"::equals)
                .orElseGet(() -> notebook.job().values(visit).isEmpty());
    }

    /** What a change would come to; nothing is kept. */
    Reply trial(Request request, Visit visit) {
        Edit edit = Edit.of(request.form());
        Draft before = unchanged(request.form(), visit);
        Draft after = edit.on(before);
        Html html = new Html();
        TrialView view = new TrialView(html);
        if (after.page().isEmpty() || before.page().isEmpty()) {
            view.refused(after.problems());
            return Reply.html(html.toString());
        }
        boolean example = isExample(request.form(), visit);
        Trial trial = trial(edit, before, after, visit, example);
        Scene checked = example ? trial.after() : notebook.trial(after.page().get(), visit, true);
        view.ran(trial, checked);
        return Reply.html(html.toString());
    }

    private Trial trial(Edit edit, Draft before, Draft after, Visit visit, boolean example) {
        return new Trial(
                edit,
                notebook.trial(before.page().orElseThrow(), visit, example),
                notebook.trial(after.page().orElseThrow(), visit, example));
    }

    /** Keeps a change in the job's copy of the page; asks first if a step fails with it. */
    Reply keep(Request request, Visit visit) {
        Edit edit = Edit.of(request.form());
        Draft before = unchanged(request.form(), visit);
        Draft after = edit.on(before);
        if (after.page().isEmpty()) {
            return Reply.text(
                    409,
                    after.problems().stream()
                            .map(Problem::message)
                            .collect(Collectors.joining("\n")));
        }
        boolean agreed = request.form().find("agreed").isPresent();
        if (!agreed && before.page().isPresent()) {
            boolean example = isExample(request.form(), visit);
            Trial trial = trial(edit, before, after, visit, example);
            List<Problem> failures =
                    Stream.of(trial.failuresHere(), trial.failuresElsewhere())
                            .flatMap(List::stream)
                            .toList();
            if (!failures.isEmpty()) {
                return Reply.text(AGREEMENT_NEEDED, "With this change " + words(failures));
            }
        }
        try {
            notebook.adapted().write(after, seen(request.form()));
            return Reply.text(200, "line-" + edit.firstLine());
        } catch (ChangedElsewhere meanwhile) {
            throw changed();
        }
    }

    private static String words(List<Problem> failures) {
        return failures.stream()
                .map(one -> "line %s fails: %s".formatted(one.line(), one.message()))
                .collect(Collectors.joining("\n"));
    }

    private static Version seen(Form form) {
        return new Version(form.get("seen"));
    }

    /** The page that the window shows. */
    private Draft unchanged(Form form, Visit visit) {
        AdaptedPages adapted = notebook.adapted();
        Draft draft = adapted.draft(visit.page());
        if (!draft.text().version().equals(seen(form))) {
            throw changed();
        }
        return draft;
    }

    private static Refusal changed() {
        return new Refusal(
                409,
                "The page was changed meanwhile, in another window or editor. What you typed is"
                        + " kept here; load this view again to see the other change.");
    }

    /** The version of the page as it is now. */
    Reply version(Request request, Visit visit) {
        return Reply.text(200, notebook.adapted().version(visit.page()).digest());
    }
}
