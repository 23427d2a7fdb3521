package halfwidth.json;

import halfwidth.approval.Evidence;
import halfwidth.approval.Rule;
import halfwidth.record.ShownSheet;
import halfwidth.record.Signatures;
import halfwidth.record.Verification;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How records came out when they were done again. */
public final class VerifyJson {
    private final List<Map<String, Object>> records = new ArrayList<>();
    private String file;
    private Members again;
    private Members signed;
    private Optional<String> refused;
    private List<String> notRun;

    /** Begins a record; what is added after is said of it. */
    public void begin(String record) {
        file = record;
        again = null;
        signed = null;
        refused = Optional.empty();
        notRun = List.of();
    }

    /** Adds why it could not be done again, or its job not be read. */
    public void refused(String why) {
        refused = Optional.of(why);
    }

    /** Adds why its page did not run. */
    public void notRun(List<String> why) {
        notRun = why;
    }

    /**
     * Adds how it came out.
     *
     * @param madeWith which text of its page it was made with, in words
     */
    public void again(Verification verified, Evidence evidence, String madeWith) {
        Map<String, String> about = verified.record().about();
        again =
                new Members()
                        .put("page", about.get("page"))
                        .put("visit", verified.record().visit().name())
                        .put("ran", about.get("ran"))
                        .put("program", about.get("program"))
                        .put("java", about.get("java"))
                        .put("outside the bounds", about.get("outside the bounds"))
                        .put("made with", madeWith)
                        .put("unchanged", verified.record().sealed())
                        .put("results", verified.results())
                        .put("to the last digit", verified.exact())
                        .put("differences", verified.differences())
                        .put("sheet", sheet(verified.shown().how()))
                        .put("checks", verified.shows().example().checks().size())
                        .put("checks that fail", evidence.checks())
                        .put("steps that fail", evidence.steps())
                        .put("limits not met", evidence.limits())
                        .put("limits not judged", evidence.unjudged());
    }

    private static String sheet(ShownSheet.How how) {
        return how.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Adds what the journal of its job says of it. */
    public void inJob(boolean asWritten, boolean known, List<Signatures.Signature> signatures) {
        signed =
                new Members()
                        .put("as written", asWritten)
                        .put("in the journal", known)
                        .put("signatures", signatures.stream().map(VerifyJson::signature).toList())
                        .put("approval", List.of())
                        .put("not answered", List.of())
                        .put("does not count", List.of());
    }

    private static Map<String, Object> signature(Signatures.Signature is) {
        return new Members()
                .put("as", is.signed().role().words())
                .put("by", is.signed().by())
                .put("time", is.line().time())
                .put("key", is.key().words())
                .put("remark", is.signed().remark())
                .put("changed since", is.changed())
                .all();
    }

    /** Adds whether what was signed counts. */
    public void counts(Rule rule) {
        signed.put("approval", rule.approval().words())
                .put(
                        "not answered",
                        rule.approval().sentBack().stream().map(back -> back.words()).toList())
                .put("does not count", rule.doubts());
    }

    /** Ends a record. */
    public void end(boolean holds) {
        records.add(
                new Members()
                        .put("record", file)
                        .put("holds", holds)
                        .put("refused", refused)
                        .put("not run", notRun)
                        .put("again", again == null ? null : again.all())
                        .put("job", signed == null ? null : signed.all())
                        .all());
    }

    /** Each record that was added, as an object of its own. */
    public List<Map<String, Object>> records() {
        return List.copyOf(records);
    }

    /** All records that were added. */
    public String text(int status) {
        return JsonText.of(
                new Members()
                        .put("format", "halfwidth verify 1")
                        .put("status", status)
                        .put("records", records)
                        .all());
    }
}
