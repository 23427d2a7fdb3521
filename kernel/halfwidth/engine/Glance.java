package halfwidth.engine;

import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import halfwidth.run.Worked;
import java.io.Serializable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A run as far as two runs of a page with nearby inputs are compared.
 *
 * @param steps the value of each numeric step, by index
 * @param results the value of each numeric result, by name
 * @param decisions what each step decided, by index: which conditions held and what it says in
 *     words, whatever the numbers in them
 */
record Glance(
        Map<Integer, Double> steps, Map<String, Double> results, Map<Integer, String> decisions) {

    static Glance of(Run run) {
        Map<Integer, Double> steps = new TreeMap<>();
        Map<Integer, String> decisions = new TreeMap<>();
        for (Run.Ran ran : run.steps()) {
            int index = ran.step().index();
            if (ran.outcome() instanceof Outcome.Done done) {
                number(done.value()).ifPresent(value -> steps.put(index, value));
                decisions.put(index, decided(done.value()) + conditions(run.worked().get(index)));
            } else {
                decisions.put(index, ran.outcome().getClass().getSimpleName());
            }
        }
        return new Glance(steps, results(run), decisions);
    }

    /** The value of each numeric result of a run, by name. */
    static Map<String, Double> results(Run run) {
        Map<String, Double> results = new TreeMap<>();
        run.finals()
                .forEach(
                        (name, value) ->
                                number(value).ifPresent(found -> results.put(name, found)));
        return results;
    }

    private static Optional<Double> number(Shown value) {
        if (value instanceof Shown.Real real && Double.isFinite(real.value())) {
            return Optional.of(real.value());
        }
        return value instanceof Shown.Measured measured
                ? Optional.of(measured.value())
                : Optional.empty();
    }

    private static String decided(Shown value) {
        if (value instanceof Shown.Words words) {
            return letters(words.text());
        }
        if (value instanceof Shown.Advice advice) {
            return advice.action().state() + letters(advice.action().words());
        }
        if (value instanceof Shown.Grid grid) {
            StringBuilder said = new StringBuilder().append(grid.rows().size() + grid.left());
            for (List<Serializable> row : grid.rows()) {
                row.stream()
                        .filter(String.class::isInstance)
                        .forEach(cell -> said.append(letters((String) cell)));
            }
            return said.toString();
        }
        boolean decision = value instanceof Shown.Flag || value instanceof Shown.Whole;
        return decision ? value.toString() : value.getClass().getSimpleName();
    }

    private static String letters(String text) {
        return text.replaceAll("\\P{L}+", " ");
    }

    private static String conditions(Worked worked) {
        Map<Integer, Boolean> held = new TreeMap<>();
        Map<Integer, Shown> used = worked == null ? new HashMap<>() : worked.used();
        used.forEach(
                (place, value) -> {
                    if (value instanceof Shown.Flag flag) {
                        held.put(place, flag.value());
                    }
                });
        return held.toString();
    }
}
