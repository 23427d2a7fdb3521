package halfwidth.web;

import static halfwidth.run.Propagation.FEWEST_DRAWS;
import static halfwidth.run.Propagation.MOST_DRAWS;

import halfwidth.approval.Evidence;
import halfwidth.approval.Rule;
import halfwidth.job.Visit;
import halfwidth.method.MethodSources;
import halfwidth.run.Propagation;
import halfwidth.run.Run.Ran;
import halfwidth.run.Step;
import halfwidth.show.Html;
import halfwidth.show.Traced;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What the review view asks for and sends. */
record ReviewAnswers(Notebook notebook) {
    private static final int REFUSED = 409;

    Reply page(Request request, Visit visit) {
        return Reply.html(page(visit, ""));
    }

    /** The sheet with why what was asked for is not done. */
    Reply refused(Visit visit, String why) {
        return Reply.html(REFUSED, page(visit, why));
    }

    private String page(Visit visit, String told) {
        String sheet = sheet(visit, scene -> Optional.empty());
        return Frame.ofVisit(
                notebook,
                "/review",
                visit,
                html -> {
                    if (!told.isEmpty()) {
                        html.element("p", told, "class", "warning told", "role", "alert");
                    }
                    html.trusted(sheet);
                });
    }

    /** The same sheet with where its results come from, which takes many runs of the page. */
    Reply traced(Request request, Visit visit) {
        int draws = request.form().number("draws");
        if (draws != 0 && (draws < FEWEST_DRAWS || draws > MOST_DRAWS)) {
            throw new Refusal(
                    400,
                    "The number of random draws must be 0 for none, or %s to %s."
                            .formatted(FEWEST_DRAWS, MOST_DRAWS));
        }
        return Reply.html(sheet(visit, scene -> Optional.of(notebook.propagated(scene, draws))));
    }

    private String sheet(Visit visit, Function<Scene, Optional<Propagation>> propagated) {
        Scene scene = notebook.scene(visit, Notebook.Effort.WORKED, List.of());
        Scene example = notebook.example(visit, Notebook.Effort.ONCE);
        String shipped =
                notebook.shipped().has(visit.page())
                        ? notebook.shipped().find(visit.page()).text()
                        : "";
        Evidence evidence = notebook.evidence(scene);
        SigningForms forms =
                new SigningForms(
                        scene,
                        new Rule(evidence, scene.approval(), evidence.content()),
                        notebook.job().events(visit));
        Html content = new Html();
        List<Step> steps = scene.sheet().run().steps().stream().map(Ran::step).toList();
        MethodSources methods = notebook.methods().of(scene.page(), steps);
        Optional<Traced> traced =
                propagated.apply(scene).map(found -> new Traced(scene.sheet(), found, methods));
        new ReviewView(scene, example, shipped, methods, traced, forms, content).write();
        return content.toString();
    }
}
