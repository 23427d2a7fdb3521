package halfwidth.command;

import halfwidth.job.Job;
import halfwidth.json.CheckJson;
import halfwidth.json.VerifyJson;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.PageRefused;
import halfwidth.page.Pages;
import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.Proofs;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Reruns pages on their worked examples and tells whether every step and check holds; of a job,
 * whether all that its folder keeps is sound.
 */
@Command(
        name = "check",
        description = {
            "Rerun every step and check of pages on their worked examples.",
            "With --job, look through that job as well: its journal, every record in it as verify"
                    + " does, and the pages that it uses."
        },
        mixinStandardHelpOptions = true)
final class CheckPages implements Callable<Integer> {
    @Parameters(
            paramLabel = "PAGE",
            description = "Pages to check; if none is named all, or all that the job uses.")
    private List<String> names = new ArrayList<>();

    @Option(names = "--job", paramLabel = "DIR", description = "Look through this job's folder.")
    private Path folder;

    @ArgGroup private RunningOptions running = new RunningOptions();

    @Mixin private AsJson json;
    @Mixin private Notebooks notebooks;
    @Mixin private Allowance allowance;
    @Spec private CommandSpec spec;

    private final CheckJson found = new CheckJson();
    private final VerifyJson records = new VerifyJson();

    @Override
    public Integer call() {
        long start = System.nanoTime();
        int failures = 0;
        try (Workshop workshop = Workshop.withoutSpare(allowance.budget())) {
            Pages pages = notebooks.pages();
            List<String> checked = names.isEmpty() ? pages.names() : names;
            if (folder != null) {
                Job job = JobFolder.warned(Job.readOnly(folder), spec.commandLine().getErr());
                JobCheck check = check(job);
                pages = job.pages(pages);
                checked = names.isEmpty() ? check.pages(pages) : names;
                failures += check.journal() + check.records(workshop);
                found.journal(job.warnings());
            }
            for (String name : checked) {
                failures += check(pages, name, workshop);
            }
            out().printf(
                            "%d %s checked in %.1f s, %s%n",
                            checked.size(),
                            checked.size() == 1 ? "page" : "pages",
                            (System.nanoTime() - start) / 1e9,
                            failures == 0 ? "all hold" : failures + " at fault");
        }
        int status = failures == 0 ? CommandLineProgram.RAN : CommandLineProgram.FAILED;
        if (json.wanted()) {
            spec.commandLine().getOut().print(found.text(status, records.records()));
        }
        return status;
    }

    private JobCheck check(Job job) {
        return new JobCheck(job, notebooks, running, out(), spec.commandLine().getErr(), records);
    }

    private PrintWriter out() {
        return json.words(spec.commandLine().getOut());
    }

    /** A malformed page is a fault of its own, and no reason to leave the others unchecked. */
    private int check(Pages pages, String name, Workshop workshop) {
        try {
            return check(Notebooks.page(pages, name), workshop);
        } catch (PageRefused malformed) {
            out().printf("%-28s malformed%n", name);
            found.malformed(name, malformed);
            spec.commandLine().getErr().println(malformed.getMessage());
            return malformed.problems().size();
        }
    }

    /** Checks a page, prints what it came to, and returns how many of its steps are at fault. */
    private int check(Page page, Workshop workshop) {
        long start = System.nanoTime();
        Run run;
        try (OpenPage open = workshop.open(Script.of(page))) {
            run = open.work(Values.of(Filled.example(page)));
        }
        List<Run.Ran> faults =
                Stream.concat(run.steps().stream(), run.checks().stream())
                        .filter(ran -> !(ran.outcome() instanceof Outcome.Done))
                        .toList();
        found.ran(page.name(), run);
        PrintWriter out = out();
        out.printf(
                "%-28s %3d steps %3d checks %6.0f ms  %-13s  units of %s proved%n",
                page.name(),
                run.steps().size(),
                run.checks().size(),
                (System.nanoTime() - start) / 1e6,
                faults.isEmpty() ? "holds" : "does not hold",
                Proofs.words(run));
        out.flush();
        faults.forEach(fault -> spec.commandLine().getErr().println(Faults.of(page, fault)));
        return faults.size();
    }
}
