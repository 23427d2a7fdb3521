package halfwidth.show;

import halfwidth.engine.PageHere;
import halfwidth.formula.Term;
import halfwidth.formula.Terms;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** How many wrong formulas the second reading noticed, by the text and by the terms. */
final class Noticed {
    /** Other names and texts to be tried in one place. */
    private static final int EACH = 2;

    private static final double UNNOTICED = 0.12;

    private static final class Count {
        private int made;
        private int byText;
        private int noticedByText;
        private int noticedByTerms;
        private int refused;
        private final List<String> unnoticed = new ArrayList<>();
    }

    private final Map<Alterations.Kind, Count> counts = new EnumMap<>(Alterations.Kind.class);

    /**
     * Makes each thing in turn wrong that can be in what is shown of a step.
     *
     * @param ofPage the page's steps
     */
    void add(String words, PageHere page, Displayed shown, List<WorkedStep> ofPage) {
        List<Term.Call> calls =
                ofPage.stream()
                        .flatMap(step -> step.formula().stream())
                        .flatMap(Terms::all)
                        .filter(Term.Call.class::isInstance)
                        .map(Term.Call.class::cast)
                        .toList();
        new Alterations(others(page, calls))
                .of(shown.last())
                .forEach(altered -> add(words, page, shown, altered));
    }

    private void add(String words, PageHere page, Displayed shown, Alterations.Altered altered) {
        Count count = counts.computeIfAbsent(altered.kind(), kind -> new Count());
        Displayed wrong = shown.with(altered.term());
        count.made++;
        WorkedAgain.byText(wrong)
                .ifPresent(
                        again -> {
                            count.byText++;
                            count.noticedByText += again.same() ? 0 : 1;
                        });
        try {
            if (WorkedAgain.byTerms(page, wrong).same()) {
                count.unnoticed.add(words + "\n    as " + wrong.text());
            } else {
                count.noticedByTerms++;
            }
        } catch (RuntimeException refused) {
            count.refused++; // what cannot be worked out does not pass, either
        }
    }

    private static Alterations.Others others(PageHere page, List<Term.Call> calls) {
        return new Alterations.Others() {
            @Override
            public List<String> names(String name) {
                Object value = page.values().get(name);
                return value == null
                        ? List.of()
                        : page.values().entrySet().stream()
                                .filter(other -> other.getValue() != null)
                                .filter(other -> other.getValue().getClass() == value.getClass())
                                .filter(other -> !other.getValue().equals(value))
                                .map(Map.Entry::getKey)
                                .sorted()
                                .limit(EACH)
                                .toList();
            }

            @Override
            public List<String> texts(Term.Call call, int argument) {
                String text = text(call, argument);
                return calls.stream()
                        .filter(other -> other.name().equals(call.name()))
                        .map(other -> text(other, argument))
                        .filter(other -> !text.isEmpty() && !other.isEmpty())
                        .filter(other -> !other.equals(text))
                        .distinct()
                        .limit(EACH)
                        .toList();
            }
        };
    }

    /** The text in quotation marks that is an argument; "" if it is none. */
    private static String text(Term.Call call, int argument) {
        return call.arguments().size() > argument
                        && call.arguments().get(argument) instanceof Term.Code code
                        && code.text().startsWith("\"")
                ? code.text()
                : "";
    }

    int made() {
        return counts.values().stream().mapToInt(count -> count.made).sum();
    }

    void print() {
        System.out.printf(
                "%-68s %5s %9s %8s %14s%n", "wrong", "made", "by terms", "refused", "by text");
        counts.forEach(
                (kind, count) ->
                        System.out.printf(
                                "%-68s %5s %9s %8s %14s%n",
                                kind.words,
                                count.made,
                                count.noticedByTerms,
                                count.refused,
                                count.noticedByText + " of " + count.byText));
        counts.forEach(
                (kind, count) ->
                        count.unnoticed.forEach(one -> System.out.println(kind + " " + one)));
    }

    /**
     * The kinds of mistake that go unnoticed too often. With the numbers of the worked example some
     * are none, as a limit that is altered but still not reached, or the size of a positive number.
     */
    String seldom() {
        return counts.entrySet().stream()
                .filter(one -> one.getValue().unnoticed.size() > UNNOTICED * one.getValue().made)
                .map(one -> one.getKey() + ": " + one.getValue().unnoticed.size())
                .collect(Collectors.joining("\n"));
    }
}
