package halfwidth.value;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A unit of measurement: the product of powers of known symbols, as in {@code in}, {@code °/m} or
 * {@code W/m²}.
 *
 * <p>Two units are equal if they are the same product of the same symbols. As in the SI, ratios,
 * angles and DDM have no dimension. Levels in dB, dBm and dBµV have dimensions of their own, so
 * that they are never taken for each other or for what they are the logarithm of.
 */
public final class Unit {
    /** The unit of a plain number. */
    public static final Unit ONE = new Unit(new EnumMap<>(Symbol.class));

    private static final List<Unit> USUAL = usual();

    /** Never changed after construction. */
    private final EnumMap<Symbol, Integer> powers;

    private Unit(EnumMap<Symbol, Integer> powers) {
        this.powers = powers;
    }

    /**
     * Reads a label; {@code 1} is a plain number.
     *
     * @throws IllegalArgumentException if a symbol in it is not known
     */
    public static Unit of(String label) {
        return find(label)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "unit "
                                                + label
                                                + " is not known; known are 1, "
                                                + known()));
    }

    /** Reads a label, if every symbol in it is known. */
    public static Optional<Unit> find(String label) {
        return UnitLabel.read(label).map(powers -> new Unit(new EnumMap<>(powers)));
    }

    private static String known() {
        return Stream.of(Symbol.values())
                        .map(symbol -> symbol.label)
                        .collect(Collectors.joining(", "))
                + ", and their products and quotients, as in °/m";
    }

    /** How it is written, in one way for equal units. */
    public String label() {
        return UnitLabel.write(powers);
    }

    /** The product of both. */
    public Unit times(Unit other) {
        EnumMap<Symbol, Integer> product = new EnumMap<>(powers);
        other.powers.forEach((symbol, power) -> product.merge(symbol, power, Integer::sum));
        product.values().removeIf(power -> power == 0);
        return new Unit(product);
    }

    /** The quotient of both. */
    public Unit over(Unit other) {
        return times(other.power(-1));
    }

    /** This unit raised to a whole power. */
    public Unit power(int exponent) {
        return exponent == 0 ? ONE : each(power -> Math.multiplyExact(power, exponent));
    }

    /**
     * The root of this unit.
     *
     * @param degree at least 1; 2 for the square root
     * @return empty if the root is no product of whole powers
     */
    public Optional<Unit> root(int degree) {
        if (degree < 1) {
            throw new IllegalArgumentException("degree " + degree + " must be >= 1");
        }
        return powers.values().stream().allMatch(power -> power % degree == 0)
                ? Optional.of(each(power -> power / degree))
                : Optional.empty();
    }

    private Unit each(IntUnaryOperator change) {
        EnumMap<Symbol, Integer> changed = new EnumMap<>(powers);
        changed.replaceAll((symbol, power) -> change.applyAsInt(power));
        return new Unit(changed);
    }

    /** The power in which a unit of one symbol, as in {@code °}, stands in this one. */
    public int powerOf(Unit symbol) {
        return symbol.powers.keySet().stream().mapToInt(one -> powers.getOrDefault(one, 0)).sum();
    }

    /** Whether both have the same dimension, so that one converts to the other. */
    public boolean sameDimension(Unit other) {
        return equals(other)
                || levels().equals(other.levels())
                        && Measures.of(powers).isCompatible(Measures.of(other.powers));
    }

    private Map<Symbol, Integer> levels() {
        Map<Symbol, Integer> levels = new EnumMap<>(powers);
        levels.keySet().removeIf(symbol -> !symbol.isLevel());
        return levels;
    }

    /**
     * Whether a person may type the one where the other is expected: of the same dimension, and
     * neither an angle for a ratio nor a ratio for a DDM.
     */
    public boolean sameQuantity(Unit other) {
        return quantities().equals(other.quantities());
    }

    private Map<Symbol.Quantity, Integer> quantities() {
        Map<Symbol.Quantity, Integer> sums = new EnumMap<>(Symbol.Quantity.class);
        powers.forEach((symbol, power) -> sums.merge(symbol.quantity, power, Integer::sum));
        sums.remove(Symbol.Quantity.RATIO);
        sums.values().removeIf(power -> power == 0);
        return sums;
    }

    /** Whether both mean the same, as V·A and W do, so that no value changes between them. */
    public boolean sameSize(Unit other) {
        return sameDimension(other) && convert(1, other) == 1;
    }

    /**
     * Converts a value from this unit to another.
     *
     * @param value a finite number, in this unit
     * @return the value in the unit {@code to}
     * @throws IllegalArgumentException if the units are not of the same dimension, or {@code value}
     *     is NaN or infinite or becomes so
     */
    public double convert(double value, Unit to) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value " + value + " must be finite");
        }
        return equals(to) ? value : convert(BigDecimal.valueOf(value), to);
    }

    double convert(BigDecimal value, Unit to) {
        if (!sameDimension(to)) {
            throw new IllegalArgumentException(
                    "unit " + label() + " must be of the dimension of " + to.label());
        }
        double converted =
                equals(to) ? value.doubleValue() : Measures.convert(value, powers, to.powers);
        if (!Double.isFinite(converted)) {
            throw new IllegalArgumentException(
                    "value " + value + " " + label() + " is too large in " + to.label());
        }
        return converted;
    }

    private static List<Unit> usual() {
        Stream<String> symbols = Stream.of(Symbol.values()).map(symbol -> symbol.label);
        Stream<String> products =
                Stream.of(
                        "°/m", "°/in", "°/ft", "°/mm", "DDM/m", "DDM/°", "ppm/°C", "µV/m", "mV/m",
                        "V/m");
        return Stream.concat(symbols, products).map(Unit::of).toList();
    }

    /** The usual labels for this quantity, its own first. */
    List<String> alternatives() {
        return Stream.concat(Stream.of(this), USUAL.stream().filter(this::sameQuantity))
                .filter(unit -> !unit.equals(ONE))
                .map(Unit::label)
                .distinct()
                .toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Unit unit && powers.equals(unit.powers);
    }

    @Override
    public int hashCode() {
        return powers.hashCode();
    }

    @Override
    public String toString() {
        return label();
    }
}
