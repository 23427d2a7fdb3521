package halfwidth.show;

import halfwidth.formula.PlainFormula;
import halfwidth.formula.Term;
import halfwidth.formula.Terms;
import halfwidth.method.MethodSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A step's call of a library method.
 *
 * @param method the method
 * @param arguments what it was called with; empty where the call stands within something that has
 *     no formula
 */
record LibraryCall(MethodSource method, List<String> arguments) {

    /** The calls that a step makes. */
    static List<LibraryCall> of(WorkedStep worked, List<MethodSource> called) {
        return called.stream().map(method -> of(worked, method)).toList();
    }

    private static LibraryCall of(WorkedStep worked, MethodSource method) {
        Optional<Term.Call> call =
                worked.formula().stream()
                        .flatMap(Terms::all)
                        .filter(Term.Call.class::isInstance)
                        .map(Term.Call.class::cast)
                        .filter(one -> isOf(one, method))
                        .findFirst();
        List<String> arguments = new ArrayList<>();
        for (int i = 0; call.isPresent() && i < method.parameters().size(); i++) {
            arguments.add(
                    argument(worked, method.parameters().get(i), call.get().arguments().get(i)));
        }
        return new LibraryCall(method, arguments);
    }

    private static boolean isOf(Term.Call call, MethodSource method) {
        return call.method().equals(method.name())
                && call.arguments().size() == method.parameters().size();
    }

    /** As in {@code fraction = firstFraction = 0.8 (ratio)}. */
    private static String argument(
            WorkedStep worked, MethodSource.Parameter parameter, Term argument) {
        List<String> forms = new ArrayList<>(List.of(parameter.name()));
        forms.add(PlainFormula.of(argument));
        worked.put().in(argument).map(PlainFormula::of).ifPresent(forms::add);
        String unit = parameter.unit().isEmpty() ? "" : " (" + parameter.unit() + ")";
        return String.join(" = ", forms.stream().distinct().toList()) + unit;
    }
}
