package halfwidth.command;

import halfwidth.approval.Approval;
import halfwidth.approval.Evidence;
import halfwidth.approval.Keyed;
import halfwidth.approval.Rule;
import halfwidth.job.Job;
import halfwidth.job.JournalLink;
import halfwidth.record.OneLine;
import halfwidth.record.ReadRecord;
import halfwidth.record.Signatures;
import halfwidth.record.Signatures.Signature;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the journal of its job says of a record.
 *
 * @param asWritten whether the record is what the journal says was written, if it says anything
 * @param known whether the journal knows it
 */
record JournalCheck(
        Job job, Path file, boolean asWritten, boolean known, List<Signature> signatures) {

    /**
     * Reads it; what is wrong with the journal is said.
     *
     * @return empty for a record that lies in no job folder
     * @throws halfwidth.job.JobRefused if the journal cannot be read
     */
    static Optional<JournalCheck> of(Path file, PrintWriter err) {
        return Signatures.job(file)
                .map(folder -> JobFolder.warned(Job.readOnly(folder), err))
                .map(
                        job ->
                                new JournalCheck(
                                        job,
                                        file,
                                        Signatures.isAsWritten(job, file),
                                        Signatures.isKnown(job, file),
                                        Signatures.of(job, file)));
    }

    /** Says what the journal has on the record, and who signed it. */
    void say(PrintWriter out) {
        if (!job.warnings().isEmpty()) {
            line(out, "  the journal of its job is NOT SOUND; what is wrong stands above");
        }
        if (!asWritten) {
            line(out, "  NOT what the journal says was written");
        }
        if (!known) {
            line(
                    out,
                    "  NOT in the journal of this job: it came from elsewhere, or the journal is an"
                            + " older one");
        }
        signatures.forEach(signature -> say(signature, out));
    }

    private void say(Signature is, PrintWriter out) {
        String remark = is.signed().remark().isEmpty() ? "" : ": " + is.signed().remark();
        String key = is.key().equals(Keyed.WITHOUT) ? "WITHOUT A KEY" : is.key().words();
        line(
                out,
                "  signed here as %s by %s, %s, %s%s%s"
                        .formatted(
                                is.signed().role().words(),
                                is.signed().by(),
                                is.line().time(),
                                key,
                                remark,
                                is.changed() ? " - CHANGED since it was signed" : ""));
        if (Signatures.lacksKey(job, is)) {
            line(out, "    others were signed with a key in this job before it");
        }
        String others = String.join(" and ", Signatures.otherKeys(job, is));
        if (!others.isEmpty()) {
            line(out, "    %s has signed with key %s before".formatted(is.signed().by(), others));
        }
    }

    /** Says whether the journal still has the link that the record names. */
    void say(JournalLink link, PrintWriter out) {
        boolean there = has(Optional.of(link));
        line(
                out,
                there
                        ? "  written behind journal %s, which is still there"
                                .formatted(link.words())
                        : "  written behind journal %s, which is NOT THERE any more: the journal was rewritten, or it is another one"
                                .formatted(link.words()));
    }

    boolean has(Optional<JournalLink> link) {
        return !known || link.stream().allMatch(one -> one.isIn(job.folder()));
    }

    /** Whether nothing in the journal is against the record. */
    boolean holds() {
        return known && against().isEmpty();
    }

    /** What is against relying on the record, and so against running its page, each in words. */
    List<String> against() {
        List<String> against = new ArrayList<>();
        if (!job.warnings().isEmpty()) {
            against.add("the journal of its job is not sound");
        }
        if (!asWritten) {
            against.add("it is not what the journal says was written");
        }
        if (signatures.stream().anyMatch(Signature::changed)) {
            against.add("it was changed since it was signed");
        }
        if (signatures.stream().anyMatch(this::isForged)) {
            against.add(
                    "a signature does not fit its key, or has none where one is to be expected");
        }
        return against;
    }

    private boolean isForged(Signature is) {
        return is.key().isWrong() || Signatures.lacksKey(job, is);
    }

    Rule rule(ReadRecord record, Evidence evidence) {
        return Signatures.standing(job, file, record.visit(), evidence);
    }

    private Approval approval(ReadRecord record) {
        return Signatures.approval(job, file, record.visit(), record.content());
    }

    boolean isAnswered(ReadRecord record) {
        return approval(record).sentBack().isEmpty();
    }

    /** How the record stands, as far as that is known without doing it again. */
    List<String> standing(ReadRecord record) {
        return words(approval(record));
    }

    /** An approval in lines for people. */
    static List<String> words(Approval approval) {
        List<String> lines = new ArrayList<>();
        approval.words().forEach(words -> lines.add("  " + words));
        approval.sentBack()
                .forEach(back -> lines.add("    not answered yet, journal line " + back.line()));
        if (approval.prepared().isEmpty() && approval.checked().isEmpty()) {
            lines.add("  neither prepared nor checked");
        }
        return lines;
    }

    private static void line(PrintWriter out, String words) {
        out.println(OneLine.of(words));
    }
}
