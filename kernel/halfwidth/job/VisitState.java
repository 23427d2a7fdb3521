package halfwidth.job;

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
    private final Map<String, Map<Fact.Role, Line>> signed = new HashMap<>();
    private Line ran;

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
        } else if (fact instanceof Fact.Recorded record && ran != null) {
            recorded.put(record.file(), ((Fact.Ran) ran.fact()).madeFrom());
        } else if (fact instanceof Fact.Signed signature) {
            signed.computeIfAbsent(recorded.get(signature.file()), first -> new HashMap<>())
                    .put(signature.role(), line);
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

    /**
     * The last signature in each role under a record of what was run from just these values.
     *
     * @param madeFrom the digest of the page's text and values
     */
    Map<Fact.Role, Line> signed(String madeFrom) {
        return signed.getOrDefault(madeFrom, Map.of());
    }

    Optional<Line> ran() {
        return Optional.ofNullable(ran);
    }
}
