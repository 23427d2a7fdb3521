package halfwidth.record;

import halfwidth.approval.Evidence;
import halfwidth.approval.PageDifference;
import halfwidth.job.Fingerprint;
import halfwidth.job.Place;
import halfwidth.page.Part;
import halfwidth.run.Outcome;
import halfwidth.run.Outcome.Failed;
import halfwidth.run.Run;
import halfwidth.run.Run.Ran;
import halfwidth.show.Answer;
import halfwidth.show.Sheet;
import halfwidth.show.Verdict;
import halfwidth.value.Entry;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a sheet shows to whoever signs it.
 *
 * @param sheet the page as it was run with the values
 * @param example the page's run on its worked example, for which alone its checks hold
 * @param reasons why there is no value, at each blank for which somebody said so
 */
public record SheetEvidence(Sheet sheet, Run example, Map<Place, String> reasons) {
    private static final int LONGEST_NOTE = 60;

    /**
     * The evidence.
     *
     * @param filledIn whether anything is filled in
     * @param difference what the page has otherwise than the shipped one; empty if it is that
     */
    public Evidence evidence(boolean filledIn, Optional<PageDifference> difference) {
        return new Evidence(
                Fingerprint.of(sheet.filled(), reasons),
                filledIn,
                example.checks().stream()
                        .filter(ran -> !(ran.outcome() instanceof Outcome.Done))
                        .map(SheetEvidence::check)
                        .toList(),
                sheet.run().steps().stream()
                        .filter(ran -> ran.outcome() instanceof Failed)
                        .map(ran -> "line " + ((Failed) ran.outcome()).line())
                        .toList(),
                sheet.answers().stream()
                        .filter(answer -> answer.verdict() == Verdict.NOT_MET)
                        .map(SheetEvidence::known)
                        .toList(),
                sheet.answers().stream()
                        .filter(answer -> answer.verdict() == Verdict.NOT_JUDGED)
                        .filter(answer -> answer.hasLimits() && !isExplained(answer))
                        .map(answer -> known(answer) + " (" + answer.ruling().reason() + ")")
                        .toList(),
                difference);
    }

    private static String check(Ran ran) {
        String note = ran.step().note().strip();
        boolean brief = !note.isEmpty() && note.length() <= LONGEST_NOTE;
        return "line " + ran.step().line() + (brief ? " (" + note + ")" : "");
    }

    private static String known(Answer answer) {
        String group = answer.result().group();
        return (group.isEmpty() ? "" : group + ", ") + answer.result().label();
    }

    /**
     * Whether all that is missing is blank for a stated reason. Where the page waits for nothing by
     * name, any blank may be what is missing.
     */
    private boolean isExplained(Answer answer) {
        Set<String> awaited = answer.awaited(sheet.run());
        if (!awaited.isEmpty()) {
            return awaited.stream().allMatch(this::isExplained);
        }
        boolean failed =
                sheet.run().steps().stream().anyMatch(ran -> ran.outcome() instanceof Failed);
        return !failed
                && !reasons.isEmpty()
                && sheet.page().readings().stream().noneMatch(this::hasUnexplained);
    }

    private boolean isExplained(String name) {
        boolean stated = reasons.keySet().stream().anyMatch(place -> place.name().equals(name));
        return stated
                && sheet.page().readings().stream()
                        .filter(table -> table.name().equals(name))
                        .noneMatch(this::hasUnexplained);
    }

    /** Rows gathered from other visits have their reasons there, so they explain nothing here. */
    private boolean hasUnexplained(Part.Readings table) {
        List<List<Optional<Entry>>> rows =
                sheet.filled().readings().getOrDefault(table.name(), List.of());
        for (int row = 0; row < rows.size(); row++) {
            for (int i = 0; i < table.columns().size(); i++) {
                Place place = Place.cell(table.name(), row + 1, table.columns().get(i).name());
                boolean stated = !table.gathered() && reasons.containsKey(place);
                if (rows.get(row).get(i).isEmpty() && !stated) {
                    return true;
                }
            }
        }
        return false;
    }
}
