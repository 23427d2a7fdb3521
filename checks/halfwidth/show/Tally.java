package halfwidth.show;

import halfwidth.engine.PageHere;
import halfwidth.formula.FormulaReader;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** How numbers were worked out again from what is shown of them, and which were not. */
final class Tally {
    private int all;
    private int byText;
    private int byTerms;
    private int byHandingOn;
    private int byObjects;
    private int byMethods;
    private final Map<String, Integer> objects = new TreeMap<>();
    private final Map<String, Integer> numbers = new TreeMap<>();
    private final Map<String, List<String>> not = new TreeMap<>();
    private int without;
    private final List<String> wrong = new ArrayList<>();

    void add(String words, PageHere page, Optional<Displayed> displayed) {
        all++;
        if (displayed.isEmpty()) {
            leave(words, "it is shown without a formula");
            return;
        }
        Optional<WorkedAgain> text = WorkedAgain.byText(displayed.get());
        text.ifPresent(again -> judge(words, "by its text", again));
        try {
            WorkedAgain terms = WorkedAgain.byTerms(page, displayed.get());
            judge(words, "by its terms", terms);
            if (text.isEmpty()) {
                count(terms);
            }
        } catch (RuntimeException why) {
            if (text.isEmpty()) {
                leave(words, why.getMessage());
            }
        }
        byText += text.isPresent() ? 1 : 0;
    }

    private void leave(String words, String why) {
        without++;
        not.computeIfAbsent(why, reason -> new ArrayList<>()).add(words);
    }

    private void judge(String words, String how, WorkedAgain again) {
        if (!again.same()) {
            wrong.add("%s%n    %s: %s".formatted(words, how, again.found()));
        }
    }

    private void count(WorkedAgain again) {
        Set<Method> called = again.asTheyAre();
        if (called.stream().anyMatch(Tally::givesNumber)) {
            byMethods++;
            called.stream()
                    .filter(Tally::givesNumber)
                    .forEach(method -> numbers.merge(method.getName(), 1, Integer::sum));
        } else if (!called.isEmpty()) {
            byObjects++;
            called.forEach(method -> objects.merge(method.getName(), 1, Integer::sum));
        } else if (!again.handingOn().isEmpty()) {
            byHandingOn++;
        } else {
            byTerms++;
        }
    }

    private static boolean givesNumber(Method method) {
        String type = method.getGenericReturnType().getTypeName();
        return FormulaReader.isNumber(type.replaceAll("[a-z.]+\\.(?=[A-Z])", ""));
    }

    /** How many rest on a method of the page that gives a number and has no formula. */
    int byMethods() {
        return byMethods;
    }

    /** How many were worked out. */
    int again() {
        return all - without;
    }

    /** Those that were worked out and came to something else. */
    String wrong() {
        return lines(wrong);
    }

    /** Those of which too little is shown, by what is missing. */
    String not() {
        return lines(
                not.entrySet().stream()
                        .map(
                                one ->
                                        "%6s %s, as in%n           %s"
                                                .formatted(
                                                        one.getValue().size(),
                                                        one.getKey(),
                                                        one.getValue().get(0)))
                        .toList());
    }

    private static String lines(Collection<String> lines) {
        return String.join("\n", lines);
    }

    void print(String what) {
        System.out.printf(
                """
                %s of %s %s worked out again from what is shown:
                %6s by the text alone
                %6s by the terms, on the page's values, with all methods by their shown formula
                %6s by the terms, through a method of the page that only hands on to another
                %6s by the terms, where a method of the page that has no formula finds an object:
                       %s
                %6s by the terms, where a method of the page that has no formula gives a number:
                       %s
                %6s not:
                %s
                """,
                again(),
                all,
                what,
                byText,
                byTerms,
                byHandingOn,
                byObjects,
                objects,
                byMethods,
                numbers,
                without,
                not());
    }
}
