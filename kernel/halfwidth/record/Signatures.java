package halfwidth.record;

import halfwidth.approval.Approval;
import halfwidth.approval.Decision;
import halfwidth.approval.Event;
import halfwidth.approval.Evidence;
import halfwidth.approval.Role;
import halfwidth.approval.Rule;
import halfwidth.job.Fact;
import halfwidth.job.Fingerprint;
import halfwidth.job.Job;
import halfwidth.job.Line;
import halfwidth.job.Visit;
import halfwidth.page.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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
     * @param evidence what the record shows
     * @param page the page as the job has it now
     * @throws RecordRefused if that may not be, with all that is against it; or if the record is
     *     not as it was written, or the job does not know it
     */
    public static void sign(Job job, Path record, Signing signing, Evidence evidence, Page page) {
        if (!isKnown(job, record)) {
            throw new RecordRefused(
                    record + " is not in the journal of its job; make a new record and sign that");
        }
        byte[] bytes = RecordFile.bytes(record);
        if (!Seal.holds(bytes) || !isAsWritten(job, record)) {
            throw new RecordRefused(
                    record + " was changed after it was written; make a new record and sign that");
        }
        Map<String, String> about = Attached.read(bytes).facts();
        Visit visit = new Visit(about.get("page"), about.get("visit"));
        String file = record.getFileName().toString();
        // Together, so that nothing is entered or signed between the decision and its line.
        synchronized (job) {
            Decision decision = decide(job, visit, signing, evidence, page);
            if (!decision.isAllowed()) {
                throw new RecordRefused(refusal(signing.role(), decision));
            }
            job.state(facts(visit, file, Fingerprint.of(bytes), signing, evidence, decision));
        }
    }

    /** Whether a sheet may be signed so, as things are now. */
    public static Decision decide(
            Job job, Visit visit, Signing signing, Evidence evidence, Page page) {
        Approval approval = job.approval(visit, evidence.content());
        Rule rule = new Rule(evidence, approval, job.content(page, visit.name()));
        return signing.role() == Role.PREPARED
                ? rule.prepare(signing.by())
                : rule.check(signing.by(), signing.seen(), signing.override());
    }

    /** Why something is not signed, and what to do, for people. */
    public static String refusal(Role role, Decision decision) {
        String override =
                decision.overridable()
                        ? "\nMend that, or override it with a reason of three words or more."
                        : "";
        return decision.refused().stream()
                        .map(why -> "- " + why)
                        .collect(
                                Collectors.joining(
                                        "\n", "Not signed as " + role.words() + ":\n", ""))
                + override;
    }

    private static Fact[] facts(
            Visit visit,
            String file,
            String digest,
            Signing signing,
            Evidence evidence,
            Decision decision) {
        List<Fact> facts = new ArrayList<>();
        evidence.difference()
                .filter(difference -> signing.seen())
                .map(seen -> new Fact.Acknowledged(visit, signing.by(), seen.digest()))
                .ifPresent(facts::add);
        String remark = signing.remark(decision);
        facts.add(new Fact.Signed(visit, file, digest, signing.role(), signing.by(), remark));
        if (!decision.against().isEmpty()) {
            String against = String.join("; ", decision.against());
            String reason = signing.reason(decision);
            facts.add(new Fact.Despite(visit, file, signing.by(), against, reason));
        }
        return facts.toArray(Fact[]::new);
    }

    /** How a sheet stands once it is signed so. */
    public static Approval foreseen(
            Job job, Visit visit, Signing signing, Evidence evidence, Decision decision) {
        List<Event> events = new ArrayList<>(job.events(visit));
        events.add(
                new Event.Signed(
                        job.last() + 1,
                        OffsetDateTime.now(),
                        signing.by(),
                        signing.role(),
                        evidence.content(),
                        "",
                        String.join("; ", decision.against()),
                        signing.reason(decision),
                        signing.remark(decision)));
        return Approval.of(events, evidence.content());
    }

    /**
     * How a record stands by the journal of its job: a signature under this very file is one of
     * what it shows, whatever program made it.
     */
    public static Rule standing(Job job, Path record, Visit visit, Evidence evidence) {
        String file = record.getFileName().toString();
        String content = evidence.content();
        List<Event> events =
                job.events(visit).stream()
                        .map(
                                event ->
                                        event instanceof Event.Signed signed
                                                        && signed.record().equals(file)
                                                ? signed.of(content)
                                                : event)
                        .toList();
        return new Rule(evidence, Approval.of(events, content), content);
    }
}
