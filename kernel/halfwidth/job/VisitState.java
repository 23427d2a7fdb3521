package halfwidth.job;

import halfwidth.approval.Event;
import halfwidth.approval.Keyed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the journal comes to for one visit, as its lines are added one by one. */
final class VisitState {
    private final Map<Place, Line> values = new LinkedHashMap<>();
    private final Map<String, String> choices = new HashMap<>();
    private final Map<String, Finding> findings = new LinkedHashMap<>();
    private final Map<String, String> recorded = new HashMap<>();
    private final List<Event> events = new ArrayList<>();
    private Line ran;

    /** What was signed last. */
    private Fact.Signed signed;

    void add(Line line) {
        Fact fact = line.fact();
        if (fact instanceof Fact.Value value) {
            values.put(value.place(), line);
        } else if (fact instanceof Fact.Choice choice) {
            choices.put(choice.input(), choice.from());
        } else if (fact instanceof Fact.Ran) {
            ran = line;
            findings.clear();
        } else if (fact instanceof Fact.Found found) {
            findings.put(found.finding().name(), found.finding());
        } else if (fact instanceof Fact.Recorded record) {
            recorded.put(record.file(), content(record));
        } else {
            approve(line, fact);
        }
    }

    /** Older programs did not say what a record shows, but ran the page just before. */
    private String content(Fact.Recorded record) {
        boolean older = record.content().isEmpty() && ran != null;
        return older ? ((Fact.Ran) ran.fact()).madeFrom() : record.content();
    }

    private void approve(Line line, Fact fact) {
        if (fact instanceof Fact.Signed is) {
            events.add(
                    new Event.Signed(
                            line.number(),
                            line.time(),
                            is.by(),
                            is.role(),
                            is.mark().isThere()
                                    ? is.content()
                                    : recorded.getOrDefault(is.file(), ""),
                            is.file(),
                            "",
                            "",
                            is.remark(),
                            SignedText.keyed(is, line.time(), "", "")));
            signed = is;
        } else if (fact instanceof Fact.Despite despite) {
            int last = events.size() - 1;
            if (last >= 0 && events.get(last) instanceof Event.Signed event) {
                String against = despite.against();
                String reason = despite.reason();
                Keyed key = SignedText.keyed(signed, event.time(), against, reason);
                events.set(last, event.despite(against, reason, key));
            }
        } else if (fact instanceof Fact.SentBack is) {
            events.add(
                    new Event.SentBack(
                            line.number(),
                            line.time(),
                            is.by(),
                            is.content(),
                            is.at(),
                            is.remark()));
        } else if (fact instanceof Fact.Answered is) {
            events.add(new Event.Answered(line.number(), line.time(), is.by(), is.to(), is.text()));
        } else if (fact instanceof Fact.Acknowledged is) {
            events.add(
                    new Event.Acknowledged(line.number(), line.time(), is.by(), is.difference()));
        }
    }

    /** The last line about each place, in the order in which they were first filled in. */
    Map<Place, Line> values() {
        return values;
    }

    String typed(Place place) {
        return Optional.ofNullable(values.get(place))
                .map(line -> ((Fact.Value) line.fact()).typed())
                .orElse("");
    }

    Optional<String> choice(String input) {
        return Optional.ofNullable(choices.get(input));
    }

    Optional<Finding> finding(String name) {
        return Optional.ofNullable(findings.get(name));
    }

    Map<String, Finding> findings() {
        return findings;
    }

    /** Whether its last run was this one. */
    boolean has(Fact run, List<Finding> found) {
        return ran != null
                && ran.fact().equals(run)
                && List.copyOf(findings.values()).equals(found);
    }

    /** What was said by name about the sheet, in order. */
    List<Event> events() {
        return List.copyOf(events);
    }

    /** Whether there is a value, or why there is none, at any place. */
    boolean isFilledIn() {
        return values.values().stream()
                .map(line -> (Fact.Value) line.fact())
                .anyMatch(value -> !value.typed().isEmpty() || !value.reason().isEmpty());
    }

    /** Why there is no value, at each blank for which somebody said so. */
    Map<Place, String> reasons() {
        Map<Place, String> reasons = new LinkedHashMap<>();
        values.forEach(
                (place, line) -> {
                    String reason = ((Fact.Value) line.fact()).reason();
                    if (!reason.isEmpty()) {
                        reasons.put(place, reason);
                    }
                });
        return reasons;
    }

    Optional<Line> ran() {
        return Optional.ofNullable(ran);
    }
}
