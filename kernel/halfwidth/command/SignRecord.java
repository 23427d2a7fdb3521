package halfwidth.command;

import halfwidth.approval.Approval;
import halfwidth.approval.Decision;
import halfwidth.approval.Evidence;
import halfwidth.approval.Role;
import halfwidth.job.Job;
import halfwidth.job.Visit;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.record.PaperPlots;
import halfwidth.record.ReadRecord;
import halfwidth.record.RecordFile;
import halfwidth.record.SendingBack;
import halfwidth.record.Signatures;
import halfwidth.record.Signing;
import halfwidth.record.Verification;
import halfwidth.run.OpenPage;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.OwnCopy;
import halfwidth.show.Sheet;
import halfwidth.show.Stamp;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Signs a record, or sends its sheet back. */
@Command(
        name = "sign",
        description = {
            "Sign a record as who prepared or checked it, send its sheet back, or answer to that.",
            "Checked is refused while a check fails, a limit is not met or cannot be judged, an"
                    + " adapted page is not looked at, nobody has prepared the sheet, it was changed"
                    + " since, or the same person prepared it.",
            "The signature is a line of the job's journal. It says who was named at this machine;"
                    + " it is not an electronic signature in law."
        },
        mixinStandardHelpOptions = true)
final class SignRecord implements Callable<Integer> {
    /** What can be done with a record by name. */
    enum As {
        PREPARED,
        CHECKED,
        SENT_BACK,
        ANSWERED;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    @Parameters(paramLabel = "RECORD", description = "The record's HTML file, in its job folder.")
    private Path record;

    @Option(names = "--name", required = true, description = "Who signs.")
    private String name;

    @Option(
            names = "--as",
            required = true,
            paramLabel = "ROLE",
            description = "One of: ${COMPLETION-CANDIDATES}.")
    private As as;

    @Option(
            names = "--at",
            paramLabel = "PLACE",
            defaultValue = "",
            description =
                    "What is sent back: a field, table or result by name, or a step by its line as"
                            + " in \"line 42\"; the whole sheet, if it is not given.")
    private String at;

    @Option(
            names = "--to",
            paramLabel = "LINE",
            defaultValue = "0",
            description = "Which remark is answered, by its journal line as verify prints it.")
    private long to;

    @Option(
            names = "--remark",
            paramLabel = "TEXT",
            defaultValue = "",
            description = "What is to be remarked, or the answer.")
    private String remark;

    @Option(
            names = "--difference-seen",
            description = "You have looked at what an adapted page has otherwise than the shipped.")
    private boolean seen;

    @Option(
            names = "--override",
            paramLabel = "REASON",
            defaultValue = "",
            description =
                    "Sign as checked whatever stands against it, and why: a sentence, which heads"
                            + " the record.")
    private String override;

    @Mixin private Notebooks notebooks;
    @Mixin private Allowance allowance;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        Path folder =
                Signatures.job(record)
                        .orElseThrow(
                                () ->
                                        new Refused(
                                                record
                                                        + " is not in the folder records of a job;"
                                                        + " sign it there."));
        if (as != As.CHECKED && !override.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--override belongs to --as checked.");
        }
        if (as != As.SENT_BACK && !at.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--at belongs to --as sent-back.");
        }
        try (Job job = JobFolder.warned(Job.open(folder, name), spec.commandLine().getErr());
                Workshop workshop = Workshop.withoutSpare(allowance.budget())) {
            // Before anything of it runs: it is what this job has written, and nobody else.
            ReadRecord read = ReadRecord.ofJob(job, record);
            if (as == As.ANSWERED) {
                SendingBack.answer(job, read.visit(), to, name, remark);
            } else {
                sign(job, Verification.of(read, workshop), workshop);
            }
            spec.commandLine().getOut().printf("%s by %s%n", as, name);
        }
        return CommandLineProgram.RAN;
    }

    private void sign(Job job, Verification verified, Workshop workshop) {
        Visit visit = verified.record().visit();
        Page page = Notebooks.page(job.pages(notebooks.pages()), visit.page());
        Evidence evidence =
                verified.evidence(PageText.of(verified.record(), notebooks.found()).difference())
                        .filledIn(job.isFilledIn(visit));
        if (as == As.SENT_BACK) {
            Sheet sheet = verified.shows().sheet();
            SendingBack.send(job, visit, sheet, evidence, page, name, at, remark);
            return;
        }
        Role role = as == As.PREPARED ? Role.PREPARED : Role.CHECKED;
        Signing signing = new Signing(role, name, remark, seen, override);
        Decision decision = Signatures.decide(job, visit, signing, evidence, page);
        decision.against()
                .forEach(against -> spec.commandLine().getOut().println("Despite " + against));
        boolean overridden = role == Role.CHECKED && !decision.against().isEmpty();
        Path signed = record;
        if (overridden) {
            Approval approval = Signatures.foreseen(job, visit, signing, evidence, decision);
            signed = headed(job, verified, job.heading(visit, approval), workshop);
        }
        Signatures.sign(job, signed, signing, evidence, page);
    }

    /** The same record with this in its heading, since none is ever written over. */
    private Path headed(
            Job job, Verification verified, Map<String, String> heading, Workshop workshop) {
        Filled filled = verified.record().filled();
        Optional<OwnCopy> copy =
                verified.record().saysShipped()
                        ? Optional.empty()
                        : Optional.of(
                                OwnCopy.of(
                                        notebooks.pages().has(filled.page().name()),
                                        verified.shows().example(),
                                        verified.record()
                                                .about()
                                                .getOrDefault("outside the bounds", "")));
        try (OpenPage open = workshop.open(Script.of(filled.page()))) {
            Run run = open.work(Values.of(filled));
            Stamp stamp = Stamp.now(Version.text(), filled.page());
            Sheet sheet = new Sheet(filled, run, heading, stamp, copy);
            Path file =
                    RecordFile.write(
                            job, PaperPlots.drawn(sheet, open), verified.record().visit().name());
            spec.commandLine().getOut().println("Record with the override: " + file);
            return file;
        }
    }
}
