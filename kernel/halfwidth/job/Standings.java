package halfwidth.job;

import halfwidth.approval.Approval;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.PageRefused;
import halfwidth.page.Pages;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Works out how visits stand: whether all that a run was made from is still as it was. */
final class Standings {
    static final String OUT_OF_DATE = "out of date";

    private final Moment moment;
    private final Pages pages;
    private final Set<String> names;
    private final Map<String, Optional<Page>> read = new HashMap<>();
    private final Map<Visit, Standing> known = new LinkedHashMap<>();
    private final List<Visit> path = new ArrayList<>();

    Standings(Moment moment, Pages pages) {
        this.moment = moment;
        this.pages = pages;
        this.names = Set.copyOf(pages.names());
    }

    Map<Visit, Standing> all() {
        Map<Visit, Standing> all = new LinkedHashMap<>();
        moment.visits().forEach(visit -> all.put(visit, orRefused(visit)));
        return all;
    }

    private Standing orRefused(Visit visit) {
        try {
            return of(visit);
        } catch (JobRefused ring) {
            return Standing.refused(ring.getMessage());
        }
    }

    private Optional<Page> page(String name) {
        return read.computeIfAbsent(
                name,
                wanted ->
                        names.contains(wanted)
                                ? Optional.of(pages.find(wanted))
                                : Optional.empty());
    }

    /**
     * How a visit stands.
     *
     * @throws JobRefused if its values come from itself, naming the ring
     */
    Standing of(Visit visit) {
        Standing standing = known.get(visit);
        if (standing == null) {
            standing = worked(visit);
            known.put(visit, standing);
        }
        return standing;
    }

    private Standing worked(Visit visit) {
        int ring = path.indexOf(visit);
        if (ring >= 0) {
            throw new JobRefused(ring(path.subList(ring, path.size())));
        }
        path.add(visit);
        try {
            return standing(visit);
        } finally {
            path.remove(path.size() - 1);
        }
    }

    private static String ring(List<Visit> ring) {
        StringBuilder words = new StringBuilder();
        ring.forEach(visit -> words.append(visit).append(" takes a value from "));
        return words.append(ring.get(0))
                + ": a value cannot come from itself; type one of these values";
    }

    private Standing standing(Visit visit) {
        VisitState state = moment.of(visit).orElseGet(VisitState::new);
        Optional<Page> page;
        try {
            page = page(visit.page());
        } catch (PageRefused malformed) {
            return Standing.refused(malformed.getMessage());
        }
        if (page.isEmpty()) {
            return Standing.refused("there is no such page");
        }
        List<String> because = stale(visit, page.get());
        Filled filled = new Filler(moment, page.get(), visit).fill().filled();
        Approval approval = Approval.of(state.events(), Fingerprint.of(filled, state.reasons()));
        if (state.ran().isEmpty()) {
            String words = state.values().isEmpty() ? "not started" : "not run";
            return new Standing(words, List.of(), Optional.empty(), approval);
        }
        Fact.Ran ran = (Fact.Ran) state.ran().get().fact();
        if (!Fingerprint.isOf(ran.madeFrom(), filled, state.reasons())) {
            because.add(0, "its page, values or array were changed since it was run");
        }
        String words = because.isEmpty() ? ran.outcome().words() : OUT_OF_DATE;
        return new Standing(words, because, Optional.of(ran.outcome()), approval);
    }

    /** The visits that this one takes values from and that are out of date. */
    private List<String> stale(Visit visit, Page page) {
        VisitState state = moment.of(visit).orElseGet(VisitState::new);
        Set<Visit> sources = new LinkedHashSet<>();
        for (Field field : page.fields()) {
            boolean typed = !state.typed(Place.input(field.name())).isEmpty();
            if (field.from().isPresent() && !typed) {
                sources.add(source(field, visit));
            }
        }
        List<String> stale = new ArrayList<>();
        for (Visit source : sources) {
            if (of(source).words().equals(OUT_OF_DATE)) {
                stale.add(source + " is out of date");
            }
        }
        return stale;
    }

    /** Where a value comes from, or would if that were run: a ring is found before it is closed. */
    private Visit source(Field field, Visit visit) {
        String from = field.from().orElseThrow();
        return new Sources(moment, visit)
                .of(field)
                .visit()
                .orElseGet(() -> new Visit(from.substring(0, from.indexOf('#')), visit.name()));
    }
}
