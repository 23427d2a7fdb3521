package halfwidth.value;

import static halfwidth.value.Symbol.Quantity.*;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A unit with a symbol of its own, and the other ways in which people write it. */
enum Symbol {
    PERCENT("%", RATIO, "percent"),
    PER_MILLE("‰", RATIO, "thousandth", "thousandths"),
    PER_MILLION("ppm", RATIO),
    DEPTH_DIFFERENCE("DDM", DDM),
    RADIAN("rad", ANGLE),
    DEGREE("°", ANGLE, "deg", "degree", "degrees", "º", "˚"),
    DECIBEL("dB", LEVEL),
    DECIBEL_MILLIWATT("dBm", POWER_LEVEL),
    DECIBEL_MICROVOLT("dBµV", VOLTAGE_LEVEL, "dBuV"),
    KILOWATT("kW", POWER),
    WATT("W", POWER),
    MILLIWATT("mW", POWER),
    VOLT("V", VOLTAGE),
    MILLIVOLT("mV", VOLTAGE),
    MICROVOLT("µV", VOLTAGE, "uV"),
    AMPERE("A", CURRENT),
    MILLIAMPERE("mA", CURRENT),
    MICROAMPERE("µA", CURRENT, "uA"),
    OHM("Ω", RESISTANCE, "ohm", "ohms"),
    KILOHM("kΩ", RESISTANCE, "kohm"),
    METRE("m", LENGTH, "metre", "metres", "meter", "meters"),
    MILLIMETRE("mm", LENGTH),
    CENTIMETRE("cm", LENGTH),
    KILOMETRE("km", LENGTH),
    INCH("in", LENGTH, "inch", "inches", "\"", "″", "”", "''"),
    FOOT("ft", LENGTH, "foot", "feet", "'", "′", "’"),
    NAUTICAL_MILE("NM", LENGTH),
    HERTZ("Hz", FREQUENCY),
    KILOHERTZ("kHz", FREQUENCY),
    MEGAHERTZ("MHz", FREQUENCY),
    GIGAHERTZ("GHz", FREQUENCY),
    SECOND("s", TIME),
    MILLISECOND("ms", TIME),
    MICROSECOND("µs", TIME, "us"),
    NANOSECOND("ns", TIME),
    MINUTE("min", TIME),
    HOUR("h", TIME),
    DAY("d", TIME, "day", "days"),
    YEAR("a", TIME, "year", "years"),
    CELSIUS("°C", TEMPERATURE, "degC"),
    KELVIN("K", TEMPERATURE);

    /** What a unit measures, in a stricter sense than its dimension: an angle is not a ratio. */
    enum Quantity {
        RATIO,
        DDM,
        ANGLE,
        LEVEL,
        POWER_LEVEL,
        VOLTAGE_LEVEL,
        POWER,
        VOLTAGE,
        CURRENT,
        RESISTANCE,
        LENGTH,
        FREQUENCY,
        TIME,
        TEMPERATURE
    }

    private static final Map<String, Symbol> WRITTEN = new HashMap<>();

    static {
        for (Symbol symbol : values()) {
            WRITTEN.put(symbol.label, symbol);
            symbol.aliases.forEach(alias -> WRITTEN.put(alias, symbol));
        }
    }

    final String label;
    final Quantity quantity;
    private final List<String> aliases;

    Symbol(String label, Quantity quantity, String... aliases) {
        this.label = label;
        this.quantity = quantity;
        this.aliases = List.of(aliases);
    }

    /** Whether it is the logarithm of a ratio or of a quantity. */
    boolean isLevel() {
        return label.startsWith("dB");
    }

    static Optional<Symbol> written(String text) {
        // The Greek mu and the ohm sign look like the micro sign and the capital omega.
        return Optional.ofNullable(
                WRITTEN.get(text.replace('\u03bc', '\u00b5').replace('\u2126', '\u03a9')));
    }
}
