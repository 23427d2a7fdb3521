package halfwidth.web;

import halfwidth.approval.Approval;
import halfwidth.approval.Decision;
import halfwidth.approval.Evidence;
import halfwidth.approval.Role;
import halfwidth.job.Job;
import halfwidth.job.Visit;
import halfwidth.record.RecordFile;
import halfwidth.record.RecordRefused;
import halfwidth.record.SendingBack;
import halfwidth.record.Signatures;
import halfwidth.record.Signing;
import halfwidth.show.Sheet;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Signs a sheet, sends it back and answers to that. */
record SigningAnswers(Notebook notebook, ReviewAnswers review) {

    /** Writes a record of the sheet as it is now, and notes the signature. */
    Reply sign(Request request, Visit visit) {
        Form form = request.form();
        Signing signing =
                new Signing(
                        role(form.get("role")),
                        form.get("name"),
                        form.find("remark").orElse(""),
                        form.find("seen").isPresent(),
                        form.find("override").orElse(""));
        Job job = notebook.job();
        Scene scene = notebook.scene(visit, Notebook.Effort.WORKED, List.of());
        Evidence evidence = notebook.evidence(scene);
        Decision decision = Signatures.decide(job, visit, signing, evidence, scene.page());
        if (!decision.isAllowed()) {
            return review.refused(visit, Signatures.refusal(signing.role(), decision));
        }
        Approval approval = Signatures.foreseen(job, visit, signing, evidence, decision);
        Sheet drawn =
                scene.sheet()
                        .headedBy(job.heading(visit, approval))
                        .drawn(step -> notebook.draw(scene.sheet().filled(), step, Desk.ON_PAPER));
        Path record = RecordFile.write(job, drawn, visit.name());
        Signatures.sign(job, record, signing, evidence, scene.page());
        return Reply.goTo(notebook.at("/review", visit));
    }

    private static Role role(String words) {
        return Stream.of(Role.values())
                .filter(role -> role.words().equals(words))
                .findFirst()
                .orElseThrow(() -> new Refusal(400, "Nobody signs as " + words + "."));
    }

    Reply sendBack(Request request, Visit visit) {
        Form form = request.form();
        Scene scene = notebook.scene(visit, Notebook.Effort.ONCE, List.of());
        try {
            SendingBack.send(
                    notebook.job(),
                    visit,
                    scene.sheet(),
                    notebook.evidence(scene),
                    scene.page(),
                    form.get("name"),
                    form.find("at").orElse(""),
                    form.get("remark"));
            return Reply.goTo(notebook.at("/review", visit));
        } catch (RecordRefused refusal) {
            return review.refused(visit, refusal.getMessage());
        }
    }

    /** From either view, and back to that. */
    Reply answer(Request request, Visit visit) {
        Form form = request.form();
        String view = form.find("view").filter("/review"::equals).orElse("/fill");
        try {
            SendingBack.answer(
                    notebook.job(), visit, form.number("to"), form.get("name"), form.get("text"));
            return Reply.goTo(notebook.at(view, visit));
        } catch (RecordRefused refusal) {
            return review.refused(visit, refusal.getMessage());
        }
    }
}
