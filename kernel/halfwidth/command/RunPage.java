package halfwidth.command;

import halfwidth.job.Job;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.Sheet;
import halfwidth.show.Stamp;
import halfwidth.show.TextSheet;
import halfwidth.show.Verdict;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs one page and shows what came of it. */
@Command(
        name = "run",
        description = {
            "Run a page and print its results.",
            "Without a job or values it runs the page's worked example, and says so."
        },
        mixinStandardHelpOptions = true)
final class RunPage implements Callable<Integer> {
    @Parameters(
            paramLabel = "PAGE",
            description = "The page's place under notebooks, as in transmit/feed-trim.")
    private String name;

    @Option(
            names = "--job",
            paramLabel = "DIR",
            description =
                    "Take the values entered so far from this job folder, and keep new ones there.")
    private Path jobFolder;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Write results.csv and page.html into this folder.")
    private Path out;

    @Mixin private Entered entered;
    @Mixin private Notebooks notebooks;
    @Mixin private Allowance allowance;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        // First, since the worker gets ready while the page is read.
        try (Workshop workshop = Workshop.withoutSpare(allowance.budget())) {
            Page page = notebooks.page(name);
            Optional<Job> job = Optional.ofNullable(jobFolder).map(Job::open);
            Filled filled = filled(page, job);
            try (OpenPage open = workshop.open(Script.of(page))) {
                Run run = open.run(Values.of(filled));
                Sheet sheet = sheet(filled, run, job);
                print(sheet);
                if (out != null) {
                    new OutFolder(out).write(sheet, open);
                    spec.commandLine()
                            .getOut()
                            .printf("%nWritten: %s%n", out.resolve("page.html").toAbsolutePath());
                }
                return status(sheet);
            }
        }
    }

    private Filled filled(Page page, Optional<Job> job) {
        if (job.isEmpty() && entered.isEmpty()) {
            return Filled.example(page);
        }
        Filled known = job.map(kept -> kept.filled(page, "").filled()).orElseGet(() -> Filled.none(page));
        Filled filled = entered.into(known);
        job.ifPresent(kept -> kept.keep(filled, ""));
        return filled;
    }

    private static Sheet sheet(Filled filled, Run run, Optional<Job> job) {
        try {
            return new Sheet(
                    filled,
                    run,
                    job.map(Job::heading).orElse(Map.of()),
                    Stamp.of(
                            Version.text(),
                            ZonedDateTime.now(),
                            Files.readAllBytes(filled.page().file())));
        } catch (IOException e) {
            throw new Refused(filled.page().file() + " can no longer be read: " + e.getMessage());
        }
    }

    private void print(Sheet sheet) {
        spec.commandLine().getOut().print(TextSheet.of(sheet));
        spec.commandLine().getOut().flush();
        PrintWriter err = spec.commandLine().getErr();
        sheet.run().steps().stream()
                .filter(ran -> ran.outcome() instanceof Outcome.Failed)
                .forEach(ran -> err.println(Faults.of(sheet.page(), ran)));
        sheet.run().checks().stream()
                .filter(ran -> !(ran.outcome() instanceof Outcome.Done))
                .forEach(ran -> err.println(Faults.of(sheet.page(), ran)));
        err.flush();
    }

    private static int status(Sheet sheet) {
        boolean failed =
                sheet.run().steps().stream().anyMatch(r -> r.outcome() instanceof Outcome.Failed)
                        || sheet.run().checks().stream()
                                .anyMatch(r -> !(r.outcome() instanceof Outcome.Done));
        boolean notMet = sheet.answers().stream().anyMatch(a -> a.verdict() == Verdict.NOT_MET);
        return failed
                ? CommandLineProgram.FAILED
                : notMet ? CommandLineProgram.LIMIT_NOT_MET : CommandLineProgram.RAN;
    }
}
