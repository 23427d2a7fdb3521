package halfwidth.command;

import halfwidth.approval.Keyed;
import halfwidth.job.Fact;
import halfwidth.job.Job;
import halfwidth.job.Line;
import halfwidth.record.Signatures;
import java.io.PrintWriter;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells who changed what and when. */
@Command(
        name = "history",
        description = "Tell who entered, found and signed what in a job, in order.",
        mixinStandardHelpOptions = true)
final class ShowHistory implements Callable<Integer> {
    @Parameters(
            paramLabel = "PAGE",
            arity = "0..1",
            defaultValue = "",
            description = "Of this page only.")
    private String page;

    @Mixin private JobFolder folder;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() {
        Job job = folder.read(spec.commandLine().getErr());
        Set<Long> undone = job.undone();
        Map<Long, Keyed> keys = Signatures.keys(job);
        OffsetDateTime latest = OffsetDateTime.MIN;
        PrintWriter out = spec.commandLine().getOut();
        for (Line line : job.lines()) {
            if (page.isEmpty() || page.equals(line.fact().visit().page())) {
                String mark = undone.contains(line.number()) ? "  (undone)" : "";
                String key =
                        keys.containsKey(line.number())
                                ? ", " + keys.get(line.number()).words()
                                : "";
                String clock = line.time().isBefore(latest) ? "  (clock set back)" : "";
                out.printf(
                        "%6d  %s  %s  %s: %s%s%s%s%n",
                        line.number(),
                        line.time(),
                        line.who(),
                        line.fact().visit(),
                        words(line.fact()),
                        key,
                        mark,
                        clock);
            }
            latest = line.time().isAfter(latest) ? line.time() : latest;
        }
        return CommandLineProgram.RAN;
    }

    private static String words(Fact fact) {
        if (fact instanceof Fact.Value value) {
            String before = value.replaced().isEmpty() ? "" : ", was " + value.replaced();
            String reason = value.reason().isEmpty() ? "" : " (" + value.reason() + ")";
            String typed = value.typed().isEmpty() ? "blank" : value.typed();
            return value.place() + " = " + typed + reason + before;
        }
        if (fact instanceof Fact.Found found) {
            String unit = found.finding().unit().replaceFirst("^1$", "");
            String value = (found.finding().value() + " " + unit).strip();
            return "found " + found.finding().name() + " = " + value;
        }
        if (fact instanceof Fact.Ran ran) {
            return "run: " + ran.outcome().words();
        }
        if (fact instanceof Fact.Undo undo) {
            return "undid line " + undo.undone();
        }
        if (fact instanceof Fact.Choice choice) {
            return choice.input() + " is taken from visit " + choice.from();
        }
        if (fact instanceof Fact.Recorded recorded) {
            return "record " + recorded.file();
        }
        if (fact instanceof Fact.Signed signed) {
            String remark = signed.remark().isEmpty() ? "" : ": " + signed.remark();
            return signed.role().words() + " " + signed.file() + " by " + signed.by() + remark;
        }
        if (fact instanceof Fact.Despite despite) {
            String reason = despite.reason().isEmpty() ? "" : ", override: " + despite.reason();
            return "signed by " + despite.by() + " despite " + despite.against() + reason;
        }
        if (fact instanceof Fact.SentBack back) {
            String at = back.at().isEmpty() ? "" : ", at " + back.at();
            return "sent back by " + back.by() + at + ": " + back.remark();
        }
        if (fact instanceof Fact.Answered answer) {
            return "answer by %s to line %s: %s".formatted(answer.by(), answer.to(), answer.text());
        }
        if (fact instanceof Fact.Acknowledged look) {
            return "difference from the shipped page seen by " + look.by();
        }
        if (fact instanceof Fact.Agreed agreed) {
            return agreed.by() + " agreed that it leaves the bounds: " + agreed.needs();
        }
        return ((Fact.Noted) fact).text();
    }
}
