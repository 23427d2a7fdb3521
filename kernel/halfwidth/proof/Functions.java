package halfwidth.proof;

import halfwidth.value.Unit;
import java.util.List;
import java.util.Set;

/** The functions of {@code java.lang.Math}. */
final class Functions {
    private static final Set<String> OF_ANGLE = Set.of("sin", "cos", "tan");
    private static final Set<String> OF_RATIO =
            Set.of("asin", "acos", "atan", "exp", "log", "sinh", "cosh", "tanh", "log1p", "expm1");

    private Functions() {}

    static Value of(String name, List<Value> arguments) {
        for (Value argument : arguments) {
            if (!(argument instanceof Amount)) {
                return argument instanceof Value.Thing
                        ? new Value.Unknown(name + " takes what is no number known here")
                        : argument;
            }
        }
        Amount first = (Amount) arguments.get(0);
        Amount second = arguments.size() > 1 ? (Amount) arguments.get(1) : first;
        if (OF_ANGLE.contains(name)) {
            ratio(first, name + " takes an angle in rad");
            return keep(first);
        }
        if (OF_RATIO.contains(name)) {
            ratio(first, name + " takes a plain ratio");
            return keep(first);
        }
        return switch (name) {
            case "log10" -> {
                ratio(first, name + " takes a plain ratio");
                yield keep(first).asLogarithm();
            }
            case "toRadians" -> first.inRadians();
            case "toDegrees" -> first.inDegrees();
            case "sqrt" -> root(first, 2);
            case "cbrt" -> root(first, 3);
            case "pow" -> power(first, second);
            case "hypot" -> first.plus(second, "is joined at right angles with").plainly();
            case "atan2" -> {
                first.plus(second, "is held against");
                yield Amount.ONE;
            }
            case "min", "max", "IEEEremainder", "floorMod", "copySign" ->
                    first.plus(second, "is compared with");
            case "signum" -> Amount.ONE;
            case "abs", "round", "rint", "floor", "ceil", "toIntExact" -> first;
            default -> new Value.Unknown("the function " + name + " is not known here");
        };
    }

    /** A plain ratio; it stays free, or for each degree, if it was. */
    private static Amount keep(Amount argument) {
        return new Amount(Unit.ONE, List.of(), argument.free(), argument.perDegree(), false);
    }

    private static void ratio(Amount argument, String what) {
        if (!argument.is(Unit.ONE)) {
            throw new Refuted(what + ", and is given one in " + argument.label());
        }
    }

    private static Value root(Amount of, int degree) {
        Amount settled = of.settled();
        return settled.root(degree)
                .map(Value.class::cast)
                .orElseGet(
                        () ->
                                new Value.Unknown(
                                        "a root of " + settled.label() + " has no unit here"));
    }

    private static Value power(Amount base, Amount exponent) {
        if (!exponent.is(Unit.ONE)) {
            throw new Refuted("an exponent must be a plain number, and is in " + exponent.label());
        }
        if (base.free() || base.settled().unit().equals(Unit.ONE)) {
            return new Amount(Unit.ONE, List.of(), base.free() && exponent.free(), false, false);
        }
        if (exponent.free() && !exponent.factors().isEmpty()) {
            double power = exponent.factors().stream().reduce(1.0, (a, b) -> a * b);
            if (power == Math.rint(power) && Math.abs(power) < 9) {
                return base.settled().power((int) power);
            }
        }
        return new Value.Unknown(
                "a power of " + base.label() + " whose exponent is not a whole number");
    }
}
