package halfwidth.record;

import halfwidth.approval.Evidence;
import halfwidth.approval.PageDifference;
import halfwidth.job.Finding;
import halfwidth.page.Filled;
import halfwidth.page.PageRefused;
import halfwidth.run.OpenPage;
import halfwidth.run.PageLost;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.Sheet;
import halfwidth.value.EntryRefused;
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
 * @param record as it was read
 * @param results how many results it has
 * @param exact whether every number came out to the last digit
 * @param differences each result that did not come out again, in words; none if all did
 * @param shown how the sheet that it shows compares with what it comes to
 * @param shows what it shows when it is done again
 */
public record Verification(
        ReadRecord record,
        int results,
        boolean exact,
        List<String> differences,
        ShownSheet shown,
        SheetEvidence shows) {

    /**
     * Two numbers are equal if they differ by less than this part of the larger. Another Java may
     * compute a sine differently in its last digits; a result is read to four or five.
     */
    static final double ROUNDING = 1e-9;

    public Verification {
        differences = differences.stream().map(OneLine::of).toList();
    }

    /** Whether the file is as it was written and came out again, as far as it was compared. */
    public boolean holds() {
        return record.sealed() && differences.isEmpty() && shown.how() != ShownSheet.How.DIFFERENT;
    }

    /**
     * What it shows to whoever signs it.
     *
     * @param difference what its page has otherwise than the shipped one; empty if it is that
     */
    public Evidence evidence(Optional<PageDifference> difference) {
        Filled filled = record.filled();
        boolean filledIn = !filled.entries().isEmpty() || !filled.readings().isEmpty();
        return shows.evidence(filledIn, difference);
    }

    /**
     * Does a record again: this runs the page that it holds, within the bounds of page code.
     *
     * @throws RecordRefused if the page cannot be run at all
     */
    public static Verification of(ReadRecord record, Workshop workshop) {
        try {
            SheetEvidence shows = again(record, workshop);
            Map<String, Finding> before = byName(record.contents().findings());
            Map<String, Finding> after = byName(Findings.of(shows.sheet()));
            List<String> differences = new ArrayList<>();
            if (!record.isMadeFromThese()) {
                differences.add("the page or the values attached are not those that were run");
            }
            TreeSet<String> names = new TreeSet<>(before.keySet());
            names.addAll(after.keySet());
            names.forEach(name -> compare(name, before.get(name), after.get(name), differences));
            return new Verification(
                    record,
                    before.size(),
                    before.equals(after),
                    differences,
                    ShownSheet.of(record, shows.sheet()),
                    shows);
        } catch (PageRefused | EntryRefused | PageLost | NoSuchElementException wrong) {
            throw new RecordRefused(record.file() + " cannot be done again: " + wrong.getMessage());
        }
    }

    private static SheetEvidence again(ReadRecord record, Workshop workshop) {
        Filled filled = record.filled();
        try (OpenPage page = workshop.open(Script.of(filled.page()))) {
            Run run = page.work(Values.of(filled));
            Sheet plain = new Sheet(filled, run, record.contents().headings(), record.stamp());
            Sheet drawn = PaperPlots.drawn(plain, page);
            Run example = page.run(Values.of(Filled.example(filled.page())));
            Sheet sheet = record.ownCopy(example).map(drawn::ofOwnCopy).orElse(drawn);
            return new SheetEvidence(sheet, example, record.contents().reasons());
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
