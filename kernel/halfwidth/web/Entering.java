package halfwidth.web;

import halfwidth.job.Change;
import halfwidth.job.ChangedMeanwhile;
import halfwidth.job.Job;
import halfwidth.job.Place;
import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import halfwidth.value.Kind;
import halfwidth.value.NewEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Enters the values that the page understands; the others stay on the screen, with the reason. */
final class Entering {
    /** What may be typed into a cell that has no reading, to say why. */
    private static final List<String> REASONS =
            List.of("lost mark", "out of service", "not reached");

    /** Any other reason, which its parentheses tell from a reading that is mistyped. */
    private static final Pattern OTHER_REASON = Pattern.compile("\\((\\p{L}[^()]{0,59})\\)");

    private final Job job;
    private final Page page;
    private final String visit;
    private final List<Trouble> troubles = new ArrayList<>();

    Entering(Job job, Page page, String visit) {
        this.job = job;
        this.page = page;
        this.visit = visit;
    }

    List<Trouble> enter(List<Change> changes) {
        List<Change> sound = new ArrayList<>();
        Map<Place, String> tooFarDown = job.tooFarDown(page, visit, changes);
        for (Change change : changes) {
            Change plain = reasoned(change);
            try {
                Optional.ofNullable(tooFarDown.get(plain.place()))
                        .ifPresent(
                                why -> {
                                    throw new EntryRefused(why);
                                });
                understood(page, plain.place(), plain.typed());
                sound.add(plain);
            } catch (EntryRefused refusal) {
                troubles.add(
                        new Trouble(change.place(), change.typed(), why(change, refusal), false));
            }
        }
        while (!sound.isEmpty() && !entered(sound)) {
            // The one that was changed meanwhile is taken out; the others may still be entered.
        }
        return troubles;
    }

    /** Why it is refused, or of words in a cell of numbers what words may stand there. */
    private static String why(Change change, EntryRefused refusal) {
        boolean words = !change.place().column().isEmpty() && change.typed().matches("[^\\d]+");
        return words
                ? "“%s” is no reading; type one, or why it is missing: %s, or as in (under water)"
                        .formatted(change.typed().strip(), String.join(", ", REASONS))
                : refusal.getMessage();
    }

    private boolean entered(List<Change> sound) {
        try {
            job.enter(page, visit, sound);
            return true;
        } catch (ChangedMeanwhile meanwhile) {
            Change mine =
                    sound.stream()
                            .filter(change -> change.place().equals(meanwhile.place()))
                            .findFirst()
                            .orElseThrow(() -> meanwhile);
            sound.remove(mine);
            String now = meanwhile.now().isEmpty() ? "taken back" : "“" + meanwhile.now() + "”";
            troubles.add(
                    new Trouble(
                            mine.place(),
                            mine.typed(),
                            "Changed meanwhile in another window: it is %s now. You typed “%s”."
                                    .formatted(now, mine.typed()),
                            true));
            return false;
        }
    }

    /** A reason typed into a cell of numbers makes it a blank with that reason. */
    private Change reasoned(Change change) {
        String reason = reason(page, change.place(), change.typed());
        return reason.isEmpty()
                ? change
                : new Change(change.place(), "", change.believed(), reason);
    }

    /** The reason for a missing reading that is typed into a cell of numbers; "" if none is. */
    private static String reason(Page page, Place place, String typed) {
        if (column(page, place).map(c -> c.kind() instanceof Kind.Text).orElse(true)) {
            return "";
        }
        String word = typed.strip().toLowerCase(Locale.ROOT);
        Matcher other = OTHER_REASON.matcher(typed.strip());
        return REASONS.contains(word) ? word : other.matches() ? other.group(1).strip() : "";
    }

    /**
     * How the page would understand something; "" for a blank.
     *
     * @throws EntryRefused if it would not
     */
    static String understood(Page page, Place place, String typed) {
        if (typed.isBlank()) {
            return "";
        }
        Optional<Column> column = column(page, place);
        NewEntry.check(column.isPresent() ? column.get().kind() : field(page, place).kind(), typed);
        String reason = reason(page, place, typed);
        if (!reason.isEmpty()) {
            return "no reading: " + reason;
        }
        return column.isPresent()
                ? column.get().read(typed).map(Entry::understood).orElse("")
                : field(page, place).read(typed).understood();
    }

    private static Field field(Page page, Place place) {
        return page.fields().stream()
                .filter(field -> place.equals(Place.input(field.name())))
                .findFirst()
                .orElseThrow(() -> new Refusal(409, "The page has no " + place + " any more."));
    }

    private static Optional<Column> column(Page page, Place place) {
        for (Part.Readings table : page.readings()) {
            for (Column column : table.columns()) {
                if (table.name().equals(place.name()) && column.name().equals(place.column())) {
                    return Optional.of(column);
                }
            }
        }
        return Optional.empty();
    }
}
