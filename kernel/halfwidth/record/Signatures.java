package halfwidth.record;

import halfwidth.job.Fact;
import halfwidth.job.Fingerprint;
import halfwidth.job.Job;
import halfwidth.job.Line;
import halfwidth.job.Visit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Signatures of records: lines of the journal of the job whose folder the record is in. */
public final class Signatures {
    /**
     * A signature under a record.
     *
     * @param line the journal's line
     * @param changed whether the record is no longer what was signed
     */
    public record Signature(Line line, Fact.Signed signed, boolean changed) {}

    private Signatures() {}

    /** The folder of the job that a record belongs to, if it lies in one. */
    public static Optional<Path> job(Path record) {
        Path records = record.toAbsolutePath().normalize().getParent();
        Path folder = records == null ? null : records.getParent();
        return Optional.ofNullable(folder)
                .filter(job -> records.endsWith("records"))
                .filter(job -> Files.isRegularFile(job.resolve("job.csv")));
    }

    /**
     * Whether the journal says that the record was written; if not, it came from elsewhere, or the
     * journal is an older one.
     */
    public static boolean isKnown(Job job, Path record) {
        return written(job, record).findAny().isPresent();
    }

    /** Whether the record is what the journal says was written; true if it says nothing of it. */
    public static boolean isAsWritten(Job job, Path record) {
        String digest = Fingerprint.of(RecordFile.bytes(record));
        return written(job, record).allMatch(fact -> fact.digest().equals(digest));
    }

    private static Stream<Fact.Recorded> written(Job job, Path record) {
        return job.lines().stream()
                .map(Line::fact)
                .filter(Fact.Recorded.class::isInstance)
                .map(Fact.Recorded.class::cast)
                .filter(fact -> fact.file().equals(record.getFileName().toString()));
    }

    /** The signatures under a record, in order. */
    public static List<Signature> of(Job job, Path record) {
        String digest = Fingerprint.of(RecordFile.bytes(record));
        return job.lines().stream()
                .filter(line -> line.fact() instanceof Fact.Signed)
                .map(line -> new Signature(line, (Fact.Signed) line.fact(), false))
                .filter(is -> is.signed().file().equals(record.getFileName().toString()))
                .map(is -> new Signature(is.line(), is.signed(), isOther(is.signed(), digest)))
                .toList();
    }

    private static boolean isOther(Fact.Signed signed, String digest) {
        return !signed.digest().equals(digest);
    }

    /**
     * Signs a record as it is now.
     *
     * @param by who signs
     * @param remark what the signer remarks; may be ""
     * @throws RecordRefused if the record is not as it was written, or the job does not know it
     */
    public static void sign(Job job, Path record, Fact.Role role, String by, String remark) {
        if (!isKnown(job, record)) {
            throw new RecordRefused(
                    record + " is not in the journal of its job; make a new record and sign that");
        }
        byte[] bytes = RecordFile.bytes(record);
        if (!Seal.holds(bytes) || !isAsWritten(job, record)) {
            throw new RecordRefused(
                    record + " was changed after it was written; make a new record and sign that");
        }
        Contents contents = Attached.read(bytes);
        Visit visit = new Visit(contents.facts().get("page"), contents.facts().get("visit"));
        String file = record.getFileName().toString();
        job.state(new Fact.Signed(visit, file, Fingerprint.of(bytes), role, by, remark));
    }
}
