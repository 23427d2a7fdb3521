package halfwidth.record;

import halfwidth.approval.Evidence;
import halfwidth.approval.PageDifference;
import halfwidth.job.Finding;
import halfwidth.job.Fingerprint;
import halfwidth.job.Place;
import halfwidth.job.Visit;
import halfwidth.page.Filled;
import halfwidth.page.PageRefused;
import halfwidth.run.OpenPage;
import halfwidth.run.PageLost;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.Sheet;
import halfwidth.show.Stamp;
import halfwidth.value.EntryRefused;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A record done again from what it holds itself.
 *
 * @param about what the record says of itself, by name
 * @param sealed whether every byte is as it was written
 * @param results how many results it has
 * @param exact whether every number came out to the last digit
 * @param differences each result that did not come out again, in words; none if all did
 * @param shows what it shows when it is done again
 */
public record Verification(
        Map<String, String> about,
        boolean sealed,
        int results,
        boolean exact,
        List<String> differences,
        SheetEvidence shows) {

    /**
     * Two numbers are equal if they differ by less than this part of the larger. Another Java may
     * compute a sine differently in its last digits; a result is read to four or five.
     */
    static final double ROUNDING = 1e-9;

    public Verification {
        differences = differences.stream().map(OneLine::of).toList();
    }

    /** Whether the file is as it was written and came out again. */
    public boolean holds() {
        return sealed && differences.isEmpty();
    }

    /** The visit of which it is. */
    public Visit visit() {
        return new Visit(about.getOrDefault("page", ""), about.getOrDefault("visit", ""));
    }

    /** The page that it holds, with the values. */
    public Filled filled() {
        return shows.sheet().filled();
    }

    /** Whether it says that its page was the one that its program shipped. */
    public boolean saysShipped() {
        return RecordFile.SHIPPED.equals(about.get("page text"));
    }

    /**
     * What it shows to whoever signs it.
     *
     * @param difference what its page has otherwise than the shipped one; empty if it is that
     */
    public Evidence evidence(Optional<PageDifference> difference) {
        boolean filledIn = !filled().entries().isEmpty() || !filled().readings().isEmpty();
        return shows.evidence(filledIn, difference);
    }

    /**
     * Does a record again.
     *
     * @throws RecordRefused if the file is no record, or what it holds is not understood
     */
    public static Verification of(Path file, Workshop workshop) {
        byte[] bytes = RecordFile.bytes(file);
        try {
            Contents contents = Attached.read(bytes);
            Filled filled = contents.filled();
            Map<String, Finding> before = byName(contents.findings());
            SheetEvidence shows = again(filled, contents.reasons(), workshop);
            Map<String, Finding> after = byName(Findings.of(shows.sheet()));
            List<String> differences = new ArrayList<>();
            String madeFrom = contents.facts().getOrDefault("made from", "");
            if (!Fingerprint.isOf(madeFrom, filled, contents.reasons())) {
                differences.add("the page or the values attached are not those that were run");
            }
            TreeSet<String> names = new TreeSet<>(before.keySet());
            names.addAll(after.keySet());
            names.forEach(name -> compare(name, before.get(name), after.get(name), differences));
            return new Verification(
                    contents.facts(),
                    Seal.holds(bytes),
                    before.size(),
                    before.equals(after),
                    differences,
                    shows);
        } catch (RecordRefused
                | PageRefused
                | EntryRefused
                | PageLost
                | NoSuchElementException wrong) {
            throw refused(file, wrong, bytes);
        }
    }

    private static RecordRefused refused(Path file, RuntimeException wrong, byte[] bytes) {
        if (!Seal.isThere(bytes)) {
            return new RecordRefused(
                    file
                            + " is no record: it has no seal. Name an HTML file in the folder"
                            + " records of a job.");
        }
        String how =
                Seal.holds(bytes)
                        ? " cannot be done again: "
                        : " was changed, and cannot be read: ";
        return new RecordRefused(file + how + wrong.getMessage());
    }

    private static SheetEvidence again(
            Filled filled, Map<Place, String> reasons, Workshop workshop) {
        try (OpenPage page = workshop.open(Script.of(filled.page()))) {
            Run run = page.run(Values.of(filled));
            Run example = page.run(Values.of(Filled.example(filled.page())));
            Stamp stamp = Stamp.of("", ZonedDateTime.now(), new byte[0]);
            Sheet sheet = new Sheet(filled, run, Map.of(), stamp);
            return new SheetEvidence(sheet, example, reasons);
        }
    }

    private static Map<String, Finding> byName(List<Finding> findings) {
        Map<String, Finding> byName = new LinkedHashMap<>();
        findings.forEach(finding -> byName.put(finding.name(), finding.withoutLook()));
        return byName;
    }

    private static void compare(
            String name, Finding before, Finding after, List<String> differences) {
        if (before == null || after == null) {
            differences.add(name + " is in one of the two only");
            return;
        }
        differ(name, before.value(), after.value(), differences);
        differ(name + ", unit", before.unit(), after.unit(), differences);
        differ(name + ", uncertainty", before.uncertainty(), after.uncertainty(), differences);
        differ(name + ", verdict", before.verdict(), after.verdict(), differences);
    }

    private static void differ(String what, String before, String after, List<String> differences) {
        if (!isEqual(before, after)) {
            differences.add(
                    String.format("%s is %s in the record and %s again", what, before, after));
        }
    }

    static boolean isEqual(String before, String after) {
        if (before.equals(after)) {
            return true;
        }
        try {
            double one = Double.parseDouble(before);
            double other = Double.parseDouble(after);
            return Double.isFinite(one)
                    && Double.isFinite(other)
                    && Math.abs(one - other) <= ROUNDING * Math.max(Math.abs(one), Math.abs(other));
        } catch (NumberFormatException words) {
            return false;
        }
    }
}
