package halfwidth.command;

import halfwidth.json.RunJson;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.record.PaperPlots;
import halfwidth.record.RecordFile;
import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.OwnCopy;
import halfwidth.show.Sheet;
import halfwidth.show.Stamp;
import halfwidth.show.TextSheet;
import halfwidth.show.TraceText;
import halfwidth.show.Traced;
import halfwidth.show.Verdict;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Write results.csv, page.html and, for the reviewer, review.html into this"
                            + " folder.")
    private Path out;

    @Option(
            names = "--record",
            description =
                    "Write the run as a record into the job's folder records, to be signed and"
                            + " done again at any time.")
    private boolean record;

    @Mixin private CsvReader csvFor;
    @Mixin private AsJson json;
    @Mixin private Tracing tracing;
    @Mixin private Entered entered;
    @Mixin private WithinJob job;
    @Mixin private Notebooks notebooks;
    @Mixin private Allowance allowance;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        if (json.wanted() && tracing.wanted()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--json has no budget: leave out --budget and --draws, or --json.");
        }
        // First, since the worker gets ready while the page is read.
        try (Workshop workshop = Workshop.withoutSpare(allowance.budget());
                WithinJob kept = job) {
            kept.open(spec.commandLine().getErr());
            if (record && !kept.keeps()) {
                throw new Refused("A record belongs to a job that can be written: name --job DIR.");
            }
            Pages pages = kept.pages(notebooks.pages());
            Page page = Notebooks.page(pages, name);
            Filled filled = kept.filled(page, entered, pages, spec.commandLine().getErr());
            try (OpenPage open = kept.opened(page, workshop, spec.commandLine().getErr())) {
                Progress progress = Progress.begin(spec.commandLine().getErr(), () -> words(open));
                try {
                    return run(kept, filled, open);
                } finally {
                    progress.close();
                }
            }
        }
    }

    private int run(WithinJob kept, Filled filled, OpenPage open) {
        Values values = Values.of(filled);
        boolean shown = out != null || record;
        // First, since what is drawn is the last run's.
        Optional<OwnCopy> copy = kept.ownCopy(filled.page(), notebooks.pages(), open);
        Run run = shown ? open.work(values) : open.run(values);
        Sheet sheet = sheet(filled, run, copy);
        print(sheet);
        boolean published = kept.publish(sheet, spec.commandLine().getErr());
        Sheet drawn = shown ? PaperPlots.drawn(sheet, open) : sheet;
        int status = published ? status(sheet) : CommandLineProgram.FAILED;
        if (out != null || tracing.wanted() || json.wanted()) {
            trace(tracing.of(drawn, open), status);
        }
        if (record) {
            written(RecordFile.write(job.job().orElseThrow(), drawn, job.visit()));
        }
        return status;
    }

    private static String words(OpenPage open) {
        OptionalInt at = open.at();
        return at.isEmpty()
                ? "The page is being compiled."
                : "Computing: step " + (at.getAsInt() + 1) + ".";
    }

    private Sheet sheet(Filled filled, Run run, Optional<OwnCopy> copy) {
        Stamp stamp = Stamp.now(Version.text(), filled.page());
        return new Sheet(filled, run, job.heading(filled), stamp, copy);
    }

    private void trace(Traced traced, int status) {
        if (tracing.wanted()) {
            words().print(TraceText.of(traced));
        }
        if (json.wanted()) {
            spec.commandLine().getOut().print(RunJson.of(traced, job.visit(), status));
        }
        if (out != null) {
            new OutFolder(out).write(traced, csvFor.reader());
            written(out.resolve("page.html"));
        }
    }

    private PrintWriter words() {
        return json.words(spec.commandLine().getOut());
    }

    private void written(Path file) {
        words().printf("%nWritten: %s%n", file.toAbsolutePath());
    }

    private void print(Sheet sheet) {
        words().print(TextSheet.of(sheet));
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
