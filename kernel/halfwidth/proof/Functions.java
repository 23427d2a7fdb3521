package halfwidth.proof;

import halfwidth.value.Unit;
import java.util.List;
import java.util.Set;

/** What methods of numbers give, be they functions, or methods of a column or a sample. */
final class Functions {
    /** Those of several numbers; all others are of the first alone. */
    private static final Set<Effect> OF_SEVERAL =
            Set.of(
                    Effect.SUM,
                    Effect.HYPOT,
                    Effect.PRODUCT,
                    Effect.QUOTIENT,
                    Effect.POWER,
                    Effect.BEARING);

    private Functions() {}

    /**
     * The value of a method.
     *
     * @param name for messages
     * @param numbers what it is called on, if anything, then its arguments
     */
    static Value of(Effect effect, String name, List<Value> numbers) {
        List<Value> taken = OF_SEVERAL.contains(effect) ? numbers : numbers.subList(0, 1);
        for (Value number : taken) {
            if (!(number instanceof Amount)) {
                return number instanceof Value.Unknown || number instanceof Value.Nothing
                        ? number
                        : new Value.Unknown(name + " takes what is no number known here");
            }
        }
        return of(effect, name, taken, (Amount) taken.get(0));
    }

    private static Value of(Effect effect, String name, List<Value> taken, Amount first) {
        Amount last = (Amount) taken.get(taken.size() - 1);
        return switch (effect) {
            case ANGLE -> keep(ratio(first, name + " takes an angle in rad"));
            case RATIO -> keep(ratio(first, name + " takes a plain ratio"));
            case LOGARITHM -> keep(ratio(first, name + " takes a plain ratio")).asLogarithm();
            case RADIANS -> first.inRadians();
            case DEGREES -> first.inDegrees();
            case ROOT -> root(first, 2);
            case CUBE_ROOT -> root(first, 3);
            case SQUARE -> first.settled().power(2);
            case CUBE -> first.settled().power(3);
            case RECIPROCAL -> Amount.ONE.over(first);
            case POWER -> power(first, last);
            case PRODUCT -> first.times(last);
            case QUOTIENT -> first.over(last);
            case SUM -> sum(taken, "stands beside");
            case HYPOT -> sum(taken, "is joined at right angles with").plainly();
            case BEARING -> {
                first.plus(last, "is held against");
                yield Amount.ONE;
            }
            case PLAIN ->
                    first.settled().unit().equals(Unit.ONE)
                            ? keep(first)
                            : new Value.Unknown(
                                    "the unit that %s gives depends on how many numbers there are"
                                            .formatted(name));
            default -> throw new IllegalArgumentException(effect + " is no function of numbers");
        };
    }

    private static Amount sum(List<Value> numbers, String how) {
        return numbers.stream()
                .map(Amount.class::cast)
                .reduce((one, other) -> one.plus(other, how))
                .orElseThrow();
    }

    /** A plain ratio; it stays free, or for each degree, if it was. */
    private static Amount keep(Amount argument) {
        return new Amount(Unit.ONE, List.of(), argument.free(), argument.perDegree(), false);
    }

    private static Amount ratio(Amount argument, String what) {
        if (!argument.is(Unit.ONE)) {
            throw new Refuted(what + ", and is given one in " + argument.label());
        }
        return argument;
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
