package halfwidth.record;

import halfwidth.approval.Approval;
import halfwidth.approval.Decision;
import halfwidth.approval.Event;
import halfwidth.approval.Evidence;
import halfwidth.approval.Rule;
import halfwidth.job.Fact;
import halfwidth.job.Job;
import halfwidth.job.Visit;
import halfwidth.page.Field;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.page.Result;
import halfwidth.show.Sheet;
import java.util.List;
import java.util.stream.Stream;

/** Sends a visit's sheet back with a remark, and answers to that: lines of the job's journal. */
public final class SendingBack {
    private static final String LINE = "line ";

    private SendingBack() {}

    /**
     * Where a remark can be: the fields, tables and results of a page by name, then the steps by
     * line, as in {@code line 42}.
     */
    public static List<String> places(Sheet sheet) {
        Page page = sheet.page();
        Stream<String> names =
                Stream.of(
                                page.fields().stream().map(Field::name),
                                page.readings().stream().map(Part.Readings::name),
                                page.results().stream().map(Result::name))
                        .flatMap(all -> all);
        Stream<String> lines = sheet.run().steps().stream().map(ran -> place(ran.step().line()));
        return Stream.concat(names, lines).distinct().toList();
    }

    /** How a remark names the step of a line. */
    public static String place(int line) {
        return LINE + line;
    }

    /**
     * Sends a sheet back.
     *
     * @param at one of its {@link #places}, or "" for all of it
     * @param page the page as the job has it now
     * @throws RecordRefused if there is no such place, no name or no remark, or nothing filled in
     */
    public static void send(
            Job job,
            Visit visit,
            Sheet sheet,
            Evidence evidence,
            Page page,
            String by,
            String at,
            String remark) {
        String place = at.strip();
        if (!place.isEmpty() && !places(sheet).contains(place)) {
            throw new RecordRefused(
                    "Not sent back: there is no field, table, result or step %s; name one of: %s"
                            .formatted(place, String.join(", ", places(sheet))));
        }
        synchronized (job) {
            Approval approval = job.approval(visit, evidence.content());
            Rule rule = new Rule(evidence, approval, job.content(page, visit.name()));
            refuse("Not sent back", rule.sendBack(by, remark));
            job.state(
                    new Fact.SentBack(
                            visit, place, by.strip(), evidence.content(), remark.strip()));
        }
    }

    /**
     * Answers to a remark.
     *
     * @param to the remark's line in the journal; 0 for the only one that is not answered
     * @throws RecordRefused if there is no such remark, no name or no text
     */
    public static void answer(Job job, Visit visit, long to, String by, String text) {
        synchronized (job) {
            Approval approval = job.approval(visit, "");
            List<Event.SentBack> open = approval.sentBack();
            long line = to == 0 && open.size() == 1 ? open.get(0).line() : to;
            refuse("Not answered", approval.answer(by, line, text));
            job.state(new Fact.Answered(visit, line, by.strip(), text.strip()));
        }
    }

    private static void refuse(String what, Decision decision) {
        if (!decision.isAllowed()) {
            throw new RecordRefused(what + ": " + String.join("; ", decision.refused()) + ".");
        }
    }
}
