package halfwidth.command;

import halfwidth.job.Fact;
import halfwidth.job.Job;
import halfwidth.job.Line;
import halfwidth.job.Visit;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes back what was entered last. */
@Command(
        name = "undo",
        description = "Take back what was entered last in a job. The journal keeps both.",
        mixinStandardHelpOptions = true)
final class UndoEntry implements Callable<Integer> {
    @Parameters(
            paramLabel = "PAGE",
            arity = "0..1",
            description = "Only what was entered on this page.")
    private String page;

    @Mixin private VisitName visit;
    @Mixin private JobFolder folder;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        try (Job job = folder.write(spec.commandLine().getErr())) {
            Optional<Visit> of =
                    Optional.ofNullable(page).map(name -> new Visit(name, visit.name()));
            List<Line> undone = job.undo(of);
            PrintWriter out = spec.commandLine().getOut();
            out.println(undone.isEmpty() ? "There is nothing to undo." : "Undone:");
            undone.forEach(line -> out.println("  " + words(line)));
        }
        return CommandLineProgram.RAN;
    }

    private static String words(Line line) {
        if (line.fact() instanceof Fact.Value value) {
            return String.format(
                    "%s: %s = %s, entered %s by %s",
                    value.visit(), value.place(), value.typed(), line.time(), line.who());
        }
        return line.fact().visit() + ", line " + line.number();
    }
}
