package halfwidth.job;

import halfwidth.page.Field;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Finds what an input takes its value from: of the other page's visits the one that was chosen,
 * else the one of the same name, else the only one; among several, somebody has to choose.
 */
record Sources(Moment moment, Visit visit) {
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    Source of(Field field) {
        String from = field.from().orElseThrow();
        String page = from.substring(0, from.indexOf('#'));
        List<Visit> run =
                moment.visits().stream()
                        .filter(other -> other.page().equals(page) && !other.equals(visit))
                        .filter(other -> moment.of(other).orElseThrow().ran().isPresent())
                        .toList();
        Optional<Visit> chosen = chosen(field, page, run);
        if (chosen.isEmpty()) {
            return new Source(
                    Optional.empty(),
                    Optional.empty(),
                    run.isEmpty()
                            ? "waits for a run of " + page
                            : "choose one of several visits of " + page + ": " + names(run));
        }
        return taken(chosen.get(), from);
    }

    private Optional<Visit> chosen(Field field, String page, List<Visit> run) {
        Optional<Visit> named =
                moment.of(visit)
                        .flatMap(state -> state.choice(field.name()))
                        .map(name -> new Visit(page, name));
        Optional<Visit> same = Optional.of(new Visit(page, visit.name())).filter(run::contains);
        Optional<Visit> only = run.size() == 1 ? Optional.of(run.get(0)) : Optional.empty();
        return named.or(() -> same).or(() -> only);
    }

    private static String names(List<Visit> run) {
        return run.stream()
                .map(visit -> visit.name().isEmpty() ? "(no name)" : visit.name())
                .collect(Collectors.joining("; "));
    }

    private Source taken(Visit from, String result) {
        String name = result.substring(result.indexOf('#') + 1);
        Optional<VisitState> state = moment.of(from);
        Optional<Line> ran = state.flatMap(VisitState::ran);
        if (ran.isEmpty()) {
            return new Source(Optional.of(from), Optional.empty(), "waits for a run of " + from);
        }
        Optional<Finding> finding = state.orElseThrow().finding(name);
        String place = result + (from.name().isEmpty() ? "" : ", " + from.name());
        String when = WHEN.format(ran.get().time());
        boolean has = finding.isPresent() && !finding.get().value().isEmpty();
        return new Source(
                Optional.of(from),
                finding.filter(is -> has),
                has
                        ? "from " + place + ", " + when
                        : "the run of " + from + " on " + when + " gave no " + name);
    }
}
