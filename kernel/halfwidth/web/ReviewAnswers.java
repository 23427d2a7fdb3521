package halfwidth.web;

import static halfwidth.run.Propagation.FEWEST_DRAWS;
import static halfwidth.run.Propagation.MOST_DRAWS;

import halfwidth.job.Fact;
import halfwidth.job.Job;
import halfwidth.job.Line;
import halfwidth.job.Visit;
import halfwidth.method.MethodSources;
import halfwidth.record.RecordFile;
import halfwidth.record.Signatures;
import halfwidth.run.Propagation;
import halfwidth.run.Run.Ran;
import halfwidth.run.Step;
import halfwidth.show.Html;
import halfwidth.show.Sheet;
import halfwidth.show.Traced;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** What the review view asks for and sends. */
record ReviewAnswers(Notebook notebook) {
    /** A record of blanks would be taken for one of a visit. */
    static final String NOTHING_TO_SIGN =
            "Nothing is filled in on this sheet, so there is nothing to sign yet.";

    Reply page(Request request, Visit visit) {
        String sheet = sheet(visit, scene -> Optional.empty());
        return Reply.html(Frame.ofVisit(notebook, "/review", visit, html -> html.trusted(sheet)));
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
        List<Line> signed =
                notebook.job().lines().stream()
                        .filter(line -> line.fact() instanceof Fact.Signed)
                        .filter(line -> line.fact().visit().equals(visit))
                        .toList();
        Html content = new Html();
        List<Step> steps = scene.sheet().run().steps().stream().map(Ran::step).toList();
        MethodSources methods = notebook.methods().of(scene.page(), steps);
        Optional<Traced> traced =
                propagated.apply(scene).map(found -> new Traced(scene.sheet(), found, methods));
        new ReviewView(scene, example, shipped, methods, traced, signed, content).write();
        return content.toString();
    }

    /** Writes a record of the sheet as it is now, and notes the signature. */
    Reply sign(Request request, Visit visit) {
        String name = request.form().get("name").strip();
        String remark = request.form().find("remark").orElse("").strip();
        Fact.Role role = role(request.form().get("role"));
        if (name.isEmpty()) {
            throw new Refusal(400, "Sign with a name.");
        }
        Job job = notebook.job();
        Scene scene = notebook.scene(visit, Notebook.Effort.WORKED, List.of());
        if (scene.values().isEmpty()) {
            throw new Refusal(400, NOTHING_TO_SIGN);
        }
        Sheet drawn =
                scene.sheet()
                        .headed(Job.signed(role, name, LocalDate.now()))
                        .drawn(step -> notebook.draw(scene.sheet().filled(), step, Desk.ON_PAPER));
        Path record = RecordFile.write(job, drawn, visit.name());
        Signatures.sign(job, record, role, name, remark);
        return Reply.goTo(notebook.at("/review", visit));
    }

    private static Fact.Role role(String words) {
        return Stream.of(Fact.Role.values())
                .filter(role -> role.words().equals(words))
                .findFirst()
                .orElseThrow(() -> new Refusal(400, "Nobody signs as " + words + "."));
    }
}
