package halfwidth.show;

import halfwidth.method.MethodSource;
import halfwidth.method.MethodSources;
import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Part;
import halfwidth.run.Drawn;
import halfwidth.run.InputQuantity;
import halfwidth.run.Propagation;
import halfwidth.run.Response;
import halfwidth.run.Run.Ran;
import halfwidth.run.Step;
import halfwidth.run.Trace;
import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A sheet with where its values come from and how uncertain that makes them.
 *
 * @param propagation what its inputs do to its steps and results
 * @param methods the library methods that its steps call
 */
public record Traced(Sheet sheet, Propagation propagation, MethodSources methods) {

    /**
     * A result with its trace.
     *
     * @param answer as the page gives it
     * @param value the number
     */
    record Of(Answer answer, double value, Trace trace, FirstOrder firstOrder) {
        String name() {
            return answer.result().name();
        }

        String unit() {
            return answer.result().unit();
        }
    }

    /** Every result that is a number and has a trace, in the page's order. */
    List<Of> results() {
        return sheet.answers().stream()
                .flatMap(
                        answer ->
                                Stream.ofNullable(propagation.results().get(answer.result().name()))
                                        .map(trace -> of(answer, trace)))
                .toList();
    }

    private Of of(Answer answer, Trace trace) {
        return new Of(
                answer, answer.number().orElseThrow(), trace, FirstOrder.of(trace, propagation));
    }

    /**
     * The uncertainty of an answer: the page's own, else to first order. None where the page states
     * one that did not come out.
     */
    public Optional<Double> uncertainty(Answer answer) {
        return answer.uncertainty().isPresent() || answer.result().uncertainty().isPresent()
                ? answer.uncertainty()
                : uncertainty(answer.result().name());
    }

    /** The uncertainty of a result to first order, where there is one. */
    Optional<Double> uncertainty(String result) {
        return Optional.ofNullable(propagation.results().get(result))
                .flatMap(trace -> FirstOrder.of(trace, propagation).standardUncertainty());
    }

    /** The uncertainty of a step in words; "" where no input that it follows has one. */
    public String uncertainty(Step step) {
        Trace trace = propagation.steps().get(step.index());
        if (trace == null) {
            return "";
        }
        FirstOrder found = FirstOrder.of(trace, propagation);
        return found.standardUncertainty()
                .map(
                        size ->
                                "u = "
                                        + Values.withUnit(Numbers.ofUncertainty(size), step.unit())
                                        + " to first order, mostly from "
                                        + found.largest()
                                        + (found.bent() ? ", roughly" : "")
                                        + ".")
                .orElse("");
    }

    /** The uncertain inputs and columns, each with its uncertainty in words. */
    Map<String, String> uncertainInputs() {
        Map<String, List<InputQuantity>> bySource = new LinkedHashMap<>();
        propagation.inputs().stream()
                .filter(input -> input.standardUncertainty() > 0)
                .forEach(
                        input ->
                                bySource.computeIfAbsent(input.source(), s -> new ArrayList<>())
                                        .add(input));
        Map<String, String> words = new LinkedHashMap<>();
        bySource.forEach((source, inputs) -> words.put(source, stated(inputs)));
        return words;
    }

    private String stated(List<InputQuantity> inputs) {
        InputQuantity first = inputs.get(0);
        if (first.column().isEmpty()) {
            String both = Numbers.measured(first.value(), first.standardUncertainty());
            return inUnit(both, unit(first));
        }
        double least = least(inputs.stream().map(InputQuantity::standardUncertainty));
        double most = -least(inputs.stream().map(input -> -input.standardUncertainty()));
        String size =
                least == most
                        ? Numbers.ofUncertainty(least)
                        : Numbers.ofUncertainty(least) + " to " + Numbers.ofUncertainty(most);
        return "%s, each ± %s"
                .formatted(
                        Counted.of(inputs.size(), "reading"), Values.withUnit(size, unit(first)));
    }

    private static double least(Stream<Double> numbers) {
        return numbers.mapToDouble(Double::doubleValue).min().orElse(0);
    }

    private static String inUnit(String both, String unit) {
        String shown = Values.unit(unit);
        return shown.isEmpty() ? both : "(" + both + ") " + shown;
    }

    /** The unit of an input or of a cell's column. */
    String unit(InputQuantity input) {
        if (input.column().isEmpty()) {
            return sheet.page().fields().stream()
                    .filter(field -> field.name().equals(input.name()))
                    .map(Field::unit)
                    .findFirst()
                    .orElse("");
        }
        return sheet.page().readings().stream()
                .filter(table -> table.name().equals(input.name()))
                .map(Part.Readings::columns)
                .flatMap(List::stream)
                .filter(column -> column.name().equals(input.column()))
                .map(Column::unit)
                .findFirst()
                .orElse("");
    }

    /**
     * How a value follows an input or the cells of a column.
     *
     * @param sensitivity in words, with its unit
     * @param amount what it adds to the uncertainty (unit of the value); 0 for nothing known
     * @param remark what is to be known of it; may be ""
     */
    record Influence(String source, String sensitivity, double amount, String remark) {}

    /** What moves a result, inputs first as the page has them. */
    List<Influence> influences(Of result) {
        Map<String, List<Response>> bySource = new LinkedHashMap<>();
        for (Response response : result.trace().responses()) {
            bySource.computeIfAbsent(input(response).source(), s -> new ArrayList<>())
                    .add(response);
        }
        List<Influence> all = new ArrayList<>();
        bySource.forEach((source, responses) -> all.add(influence(result, source, responses)));
        return all;
    }

    private InputQuantity input(Response response) {
        return propagation.inputs().get(response.input());
    }

    private Influence influence(Of result, String source, List<Response> responses) {
        double amount =
                result.firstOrder().shares().stream()
                        .filter(share -> share.source().equals(source))
                        .mapToDouble(FirstOrder.Share::amount)
                        .findFirst()
                        .orElse(0);
        String unit = per(result.unit(), unit(input(responses.get(0))));
        return new Influence(source, sensitivity(responses, unit), amount, remark(responses));
    }

    private String sensitivity(List<Response> responses, String unit) {
        double[] known =
                responses.stream()
                        .mapToDouble(Response::sensitivity)
                        .filter(Double::isFinite)
                        .sorted()
                        .toArray();
        if (known.length == 0) {
            return "not known";
        }
        String least = Numbers.ofSensitivity(known[0]);
        String most = Numbers.ofSensitivity(known[known.length - 1]);
        boolean cells = !input(responses.get(0)).column().isEmpty();
        String range = least.equals(most) ? least : least + " to " + most;
        return (cells ? "each " : "") + Values.withUnit(range, unit);
    }

    private String remark(List<Response> responses) {
        Optional<Response> worst =
                responses.stream()
                        .filter(one -> one.manner() != Response.Manner.STRAIGHT)
                        .max((a, b) -> a.manner().compareTo(b.manner()));
        return worst.map(this::remark).orElse("");
    }

    /** What is to be known of a response that is not straight. */
    String remark(Response response) {
        return switch (response.manner()) {
            case STRAIGHT -> "";
            case BENT ->
                    "not straight: %s when it rises by %s, %s when it falls"
                            .formatted(
                                    Numbers.signed(response.up()),
                                    step(response),
                                    Numbers.signed(response.down()));
            case TURNS ->
                    "a decision falls otherwise (%s), so first order tells nothing"
                            .formatted(turns(response));
            case ENDS ->
                    "there is no value when it %s by %s"
                            .formatted(
                                    Double.isNaN(response.up())
                                            ? Double.isNaN(response.down())
                                                    ? "rises or falls"
                                                    : "rises"
                                            : "falls",
                                    step(response));
        };
    }

    private String step(Response response) {
        InputQuantity input = input(response);
        return Values.withUnit(Numbers.ofSensitivity(input.step()), unit(input));
    }

    private String turns(Response response) {
        List<String> places = new ArrayList<>();
        for (Propagation.Turn turn : propagation.turns()) {
            if (turn.input() == response.input()) {
                places.add(
                        "line %s at %s%s"
                                .formatted(
                                        line(turn.step()), turn.up() ? "+" : "-", step(response)));
            }
        }
        return String.join(", ", places);
    }

    /** The line where a step starts. */
    int line(int step) {
        return step(step).map(Step::line).orElse(0);
    }

    Optional<Step> step(int index) {
        return sheet.run().steps().stream()
                .map(Ran::step)
                .filter(step -> step.index() == index)
                .findFirst();
    }

    /** The unit of a sensitivity. */
    static String per(String value, String input) {
        Optional<Unit> above = Unit.find(value);
        Optional<Unit> below = Unit.find(input);
        return above.isPresent() && below.isPresent() ? above.get().over(below.get()).label() : "";
    }

    /** The inputs that a result's steps name and that do not move it here, or are no measures. */
    List<String> still(Of result) {
        List<String> moving =
                result.trace().responses().stream().map(one -> input(one).name()).toList();
        List<String> left = left().stream().map(InputQuantity::name).toList();
        return result.trace().inputs().stream()
                .filter(name -> !moving.contains(name) && !left.contains(name))
                .toList();
    }

    /** The numbers that were not changed, for want of time. */
    private List<InputQuantity> left() {
        return propagation.inputs().subList(propagation.moved(), propagation.inputs().size());
    }

    /** What to say of an input or column that is not known to move any result. */
    String movesNothing(String source) {
        return left().stream().anyMatch(input -> input.source().equals(source))
                ? "not looked at in time"
                : "no result";
    }

    /** The library methods that a result rests on, each once, in the order of the steps. */
    List<String> methods(Of result) {
        return result.trace().steps().stream()
                .flatMap(index -> step(index).stream())
                .flatMap(step -> methods.calledBy(step).stream())
                .map(Traced::name)
                .distinct()
                .toList();
    }

    private static String name(MethodSource method) {
        return method.type().substring(method.type().lastIndexOf('.') + 1)
                + "."
                + method.signature();
    }

    /** The lines of the steps that a result rests on. */
    List<Integer> lines(Of result) {
        return result.trace().steps().stream()
                .flatMap(index -> step(index).stream())
                .map(Step::line)
                .distinct()
                .toList();
    }

    /** For each input or column that moves a result, the results that it moves. */
    Map<String, Map<Of, Influence>> forward() {
        Map<String, Map<Of, Influence>> all = new LinkedHashMap<>();
        propagation.inputs().forEach(input -> all.put(input.source(), new LinkedHashMap<>()));
        for (Of result : results()) {
            influences(result)
                    .forEach(influence -> all.get(influence.source()).put(result, influence));
        }
        return all;
    }

    Optional<Drawn> drawn(Of result) {
        return Optional.ofNullable(propagation.draws().get(result.name()));
    }

    /** Whether first order agrees with the draws, in words. */
    String verdict(Of result, Drawn drawn) {
        return result.firstOrder()
                .standardUncertainty()
                .map(size -> DrawnCheck.of(result.value(), size, drawn).words())
                .orElse("no first order to compare");
    }

    /** What to say where not everything was done; "" if it was. */
    String shortfall() {
        if (!propagation.complete()) {
            return "Only %s of %s numbers were changed before the time was over."
                    .formatted(propagation.moved(), propagation.inputs().size());
        }
        return propagation.drawsMade() == propagation.drawsAsked()
                ? ""
                : "Only %s of %s draws were made before the time was over."
                        .formatted(propagation.drawsMade(), propagation.drawsAsked());
    }
}
