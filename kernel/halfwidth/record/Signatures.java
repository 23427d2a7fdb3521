package halfwidth.record;

import halfwidth.approval.Approval;
import halfwidth.approval.Decision;
import halfwidth.approval.Event;
import halfwidth.approval.Evidence;
import halfwidth.approval.Keyed;
import halfwidth.approval.Names;
import halfwidth.approval.Role;
import halfwidth.approval.Rule;
import halfwidth.job.Fact;
import halfwidth.job.Fingerprint;
import halfwidth.job.Job;
import halfwidth.job.Line;
import halfwidth.job.SignedText;
import halfwidth.job.Visit;
import halfwidth.key.KeyMark;
import halfwidth.key.KeyRefused;
import halfwidth.key.SigningKey;
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
     * @param key what it was signed with besides the name
     */
    public record Signature(Line line, Fact.Signed signed, boolean changed, Keyed key) {}

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
        Map<Long, Keyed> keys = keys(job);
        return job.lines().stream()
                .filter(line -> line.fact() instanceof Fact.Signed)
                .filter(line -> file(line).equals(record.getFileName().toString()))
                .map(line -> signature(line, digest, keys))
                .toList();
    }

    private static String file(Line line) {
        return ((Fact.Signed) line.fact()).file();
    }

    private static Signature signature(Line line, String digest, Map<Long, Keyed> keys) {
        Fact.Signed signed = (Fact.Signed) line.fact();
        boolean changed = !signed.digest().equals(digest);
        // One that is taken back is no event; nobody but a forger takes back a signature.
        Keyed undone = new Keyed(signed.mark().fingerprint(), false);
        return new Signature(line, signed, changed, keys.getOrDefault(line.number(), undone));
    }

    /** The key of who signs, however the name is typed. */
    private static SigningKey key(String by) {
        try {
            return SigningKey.of(Names.folded(by));
        } catch (KeyRefused refusal) {
            throw new RecordRefused(refusal.getMessage());
        }
    }

    /** What each signature of a job was given with besides the name, by its line. */
    public static Map<Long, Keyed> keys(Job job) {
        return signed(job)
                .collect(
                        Collectors.toMap(
                                Event.Signed::line, Event.Signed::key, (one, other) -> other));
    }

    private static Stream<Event.Signed> signed(Job job) {
        return job.visits().stream()
                .flatMap(visit -> job.events(visit).stream())
                .filter(Event.Signed.class::isInstance)
                .map(Event.Signed.class::cast);
    }

    /**
     * Whether a signature without a key stands behind one with a key in its journal: every program
     * that writes the latter writes no other.
     */
    public static boolean lacksKey(Job job, Signature signature) {
        return signature.key().equals(Keyed.WITHOUT)
                && signed(job)
                        .filter(is -> is.line() < signature.line().number())
                        .anyMatch(is -> is.key().fits());
    }

    /** The other keys that the same person has signed with before in this job. */
    public static List<String> otherKeys(Job job, Signature signature) {
        return signed(job)
                .filter(is -> is.line() < signature.line().number() && is.key().fits())
                .filter(is -> Names.same(is.by(), signature.signed().by()))
                .map(is -> is.key().fingerprint())
                .filter(key -> !key.equals(signature.key().fingerprint()))
                .distinct()
                .toList();
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
        byte[] bytes = RecordFile.bytes(record);
        refuseOther(job, record, bytes);
        Map<String, String> about = Attached.read(bytes).facts();
        Visit visit = new Visit(about.get("page"), about.get("visit"));
        String file = record.getFileName().toString();
        // Together, so that nothing is entered or signed between the decision and its line.
        synchronized (job) {
            Decision decision = decide(job, visit, signing, evidence, page);
            if (!decision.isAllowed()) {
                throw new RecordRefused(refusal(signing.role(), decision));
            }
            SigningKey key = key(signing.by());
            String digest = Fingerprint.of(bytes);
            job.state(now -> facts(visit, file, digest, signing, evidence, decision, key, now));
        }
    }

    /**
     * Sees to it that a record is just what its job has written.
     *
     * @throws RecordRefused if it is not
     */
    static void refuseOther(Job job, Path record, byte[] bytes) {
        if (!isKnown(job, record)) {
            throw new RecordRefused(
                    record + " is not in the journal of its job; make a new record and sign that");
        }
        if (!Seal.holds(bytes) || !isAsWritten(job, record)) {
            throw new RecordRefused(
                    record + " was changed after it was written; make a new record and sign that");
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

    private static List<Fact> facts(
            Visit visit,
            String file,
            String digest,
            Signing signing,
            Evidence evidence,
            Decision decision,
            SigningKey key,
            OffsetDateTime now) {
        List<Fact> facts = new ArrayList<>();
        evidence.difference()
                .filter(difference -> signing.seen())
                .map(seen -> new Fact.Acknowledged(visit, signing.by(), seen.digest()))
                .ifPresent(facts::add);
        String against = String.join("; ", decision.against());
        String reason = decision.against().isEmpty() ? "" : signing.reason(decision);
        Fact.Signed signed =
                new Fact.Signed(
                        visit,
                        file,
                        digest,
                        signing.role(),
                        signing.by(),
                        signing.remark(decision),
                        evidence.content(),
                        KeyMark.NONE);
        facts.add(signed.with(key.sign(SignedText.of(signed, now, against, reason))));
        if (!decision.against().isEmpty()) {
            facts.add(new Fact.Despite(visit, file, signing.by(), against, reason));
        }
        return facts;
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
                        signing.remark(decision),
                        new Keyed(key(signing.by()).fingerprint(), true)));
        return Approval.of(events, evidence.content());
    }

    /**
     * How a record stands by the journal of its job: a signature under this very file is one of
     * what it shows, whatever program made it.
     */
    public static Rule standing(Job job, Path record, Visit visit, Evidence evidence) {
        String content = evidence.content();
        return new Rule(evidence, approval(job, record, visit, content), content);
    }

    /**
     * The same without what the record shows when it is done again.
     *
     * @param content the fingerprint of what it shows
     */
    public static Approval approval(Job job, Path record, Visit visit, String content) {
        String file = record.getFileName().toString();
        List<Event> events =
                job.events(visit).stream()
                        .map(
                                event ->
                                        event instanceof Event.Signed signed
                                                        && signed.record().equals(file)
                                                        && !signed.key().fits()
                                                ? signed.of(content)
                                                : event)
                        .toList();
        return Approval.of(events, content);
    }
}
