package halfwidth.show;

import halfwidth.page.Page;
import halfwidth.page.Result;
import halfwidth.page.ShownWhen;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import halfwidth.vocabulary.Action;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A result of a page after a run, and the verdict on it.
 *
 * @param result how the page declares it
 * @param value what it came to, empty if it was not computed; {@link Shown.Nothing} if it was, and
 *     there is none
 * @param uncertainty its standard uncertainty, in its unit
 * @param limits its limits as numbers
 * @param ruling whether it keeps them, and why
 */
public record Answer(
        Result result,
        Optional<Shown> value,
        Optional<Double> uncertainty,
        Limits limits,
        Ruling ruling) {

    /** Enough to show the smallest difference that is judged. */
    private static final int MORE_DECIMALS = 15;

    /** The answers to all results that a page declares, in its order. */
    public static List<Answer> of(Page page, Run run) {
        return page.results().stream().map(result -> new Judge(result, run).answer()).toList();
    }

    /** Whether any of these results has a limit, without which no verdict is worth a column. */
    static boolean anyLimits(List<Answer> answers) {
        return answers.stream().anyMatch(answer -> answer.limits().declared());
    }

    /** The value unrounded, if it is a number. */
    public Optional<Double> number() {
        return value.flatMap(Limits::number);
    }

    /**
     * The value as shown: at the declared decimals, or more where these would belie the verdict.
     */
    public String shownValue() {
        return value.map(this::shown).orElse("");
    }

    private String shown(Shown computed) {
        if (computed instanceof Shown.Whole whole) {
            return Long.toString(whole.value());
        }
        return Limits.number(computed)
                .map(number -> Numbers.fixed(number, decimals()))
                .orElseGet(() -> Values.words(computed));
    }

    /** Its unit as shown beside the value; "" where the value is no number. */
    public String shownUnit() {
        return number().isPresent() ? Values.unit(result.unit()) : "";
    }

    /** What to do next, if that is what it says. */
    public Optional<Action> action() {
        return value.filter(Shown.Advice.class::isInstance)
                .map(advice -> ((Shown.Advice) advice).action());
    }

    /** Whether it is a text, which may be a whole sentence. */
    boolean isText() {
        return value.filter(Shown.Words.class::isInstance).isPresent() || action().isPresent();
    }

    /** The standard uncertainty as shown: never rounded to nothing; "" where there is no number. */
    public String shownUncertainty() {
        if (uncertainty.isEmpty() || number().isEmpty()) {
            return "";
        }
        double size = uncertainty.get();
        int decimals = decimals();
        while (size > 0 && Numbers.rounded(size, decimals).signum() == 0 && decimals < 30) {
            decimals++;
        }
        return Numbers.fixed(size, decimals);
    }

    /** The limits in words, as in {@code at least 0.175} or {@code 2 to 6}; "" if it has none. */
    public String shownLimits() {
        Optional<String> least = limits.least().map(limit -> limit.shown(decimals()));
        Optional<String> most = limits.most().map(limit -> limit.shown(decimals()));
        if (least.isPresent() && most.isPresent()) {
            return least.get() + " to " + most.get();
        }
        return least.map(at -> "at least " + at)
                .or(() -> most.map(at -> "at most " + at))
                .orElse("");
    }

    public Verdict verdict() {
        return ruling.verdict();
    }

    public boolean hasLimits() {
        return limits.declared();
    }

    /** The inputs and tables that it, its limits or what it is shown with wait for in this run. */
    public Set<String> awaited(Run run) {
        Optional<String> condition = result.shown().map(ShownWhen::name);
        return Stream.of(Optional.of(result.name()), result.least(), result.most(), condition)
                .flatMap(Optional::stream)
                .flatMap(name -> Absence.awaited(name, run).stream())
                .collect(Collectors.toSet());
    }

    private int decimals() {
        return number().map(this::decimals).orElse(result.decimals());
    }

    /** The fewest decimals, from the declared ones up, at which what is shown bears the verdict. */
    private int decimals(double number) {
        boolean judged = verdict() == Verdict.MET || verdict() == Verdict.NOT_MET;
        int decimals = result.decimals();
        int most = decimals + MORE_DECIMALS;
        while (judged
                && decimals < most
                && limits.seemMet(number, decimals) != (verdict() == Verdict.MET)) {
            decimals++;
        }
        return decimals;
    }
}
