package halfwidth.value;

import static javax.measure.MetricPrefix.*;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import tech.units.indriya.unit.Units;

/**
 * The units as Indriya knows them. Nothing else touches that library, and this class only where
 * units differ: loading it takes about a tenth of a second.
 */
final class Measures {
    private static final Unit<?> ONE = Units.PERCENT.getSystemUnit();
    private static final Map<Symbol, Unit<?>> UNITS = new EnumMap<>(Symbol.class);

    static {
        ratios();
        electric();
        lengths();
        times();
    }

    private Measures() {}

    /** The product of the symbols, each raised to its power; the levels are left out. */
    static Unit<?> of(Map<Symbol, Integer> powers) {
        if (powers.equals(Map.of(Symbol.CELSIUS, 1))) {
            return Units.CELSIUS;
        }
        Unit<?> product = ONE;
        for (Map.Entry<Symbol, Integer> factor : powers.entrySet()) {
            Unit<?> symbol = UNITS.getOrDefault(factor.getKey(), ONE);
            product = product.multiply(symbol.pow(factor.getValue()));
        }
        return product;
    }

    static double convert(BigDecimal value, Map<Symbol, Integer> from, Map<Symbol, Integer> to) {
        try {
            return of(from).getConverterToAny(of(to)).convert(value).doubleValue();
        } catch (IncommensurableException differ) {
            throw new IllegalStateException("units were compared before", differ);
        }
    }

    private static void ratios() {
        UNITS.put(Symbol.PERCENT, ONE.divide(100));
        UNITS.put(Symbol.PER_MILLE, ONE.divide(1000));
        UNITS.put(Symbol.PER_MILLION, ONE.divide(1_000_000));
        UNITS.put(Symbol.DEPTH_DIFFERENCE, ONE);
        // The radian is the number 1 (SI Brochure, 9th edition, 2.3.4).
        UNITS.put(Symbol.RADIAN, ONE);
        UNITS.put(Symbol.DEGREE, ONE.multiply(Math.PI).divide(180));
    }

    private static void electric() {
        UNITS.put(Symbol.KILOWATT, KILO(Units.WATT));
        UNITS.put(Symbol.WATT, Units.WATT);
        UNITS.put(Symbol.MILLIWATT, MILLI(Units.WATT));
        UNITS.put(Symbol.VOLT, Units.VOLT);
        UNITS.put(Symbol.MILLIVOLT, MILLI(Units.VOLT));
        UNITS.put(Symbol.MICROVOLT, MICRO(Units.VOLT));
        UNITS.put(Symbol.AMPERE, Units.AMPERE);
        UNITS.put(Symbol.MILLIAMPERE, MILLI(Units.AMPERE));
        UNITS.put(Symbol.MICROAMPERE, MICRO(Units.AMPERE));
        UNITS.put(Symbol.OHM, Units.OHM);
        UNITS.put(Symbol.KILOHM, KILO(Units.OHM));
    }

    private static void lengths() {
        UNITS.put(Symbol.METRE, Units.METRE);
        UNITS.put(Symbol.MILLIMETRE, MILLI(Units.METRE));
        UNITS.put(Symbol.CENTIMETRE, CENTI(Units.METRE));
        UNITS.put(Symbol.KILOMETRE, KILO(Units.METRE));
        // Exact: NIST Special Publication 811 (2008), appendix B.
        UNITS.put(Symbol.INCH, Units.METRE.multiply(254).divide(10_000));
        UNITS.put(Symbol.FOOT, Units.METRE.multiply(3048).divide(10_000));
        UNITS.put(Symbol.NAUTICAL_MILE, Units.METRE.multiply(1852));
    }

    private static void times() {
        UNITS.put(Symbol.HERTZ, Units.HERTZ);
        UNITS.put(Symbol.KILOHERTZ, KILO(Units.HERTZ));
        UNITS.put(Symbol.MEGAHERTZ, MEGA(Units.HERTZ));
        UNITS.put(Symbol.GIGAHERTZ, GIGA(Units.HERTZ));
        UNITS.put(Symbol.SECOND, Units.SECOND);
        UNITS.put(Symbol.MILLISECOND, MILLI(Units.SECOND));
        UNITS.put(Symbol.MICROSECOND, MICRO(Units.SECOND));
        UNITS.put(Symbol.NANOSECOND, NANO(Units.SECOND));
        UNITS.put(Symbol.MINUTE, Units.MINUTE);
        UNITS.put(Symbol.HOUR, Units.HOUR);
        UNITS.put(Symbol.DAY, Units.DAY);
        // The mean Gregorian year of 365.2425 days.
        UNITS.put(Symbol.YEAR, Units.YEAR);
        // Within a product a degree Celsius is a difference, which is a kelvin.
        UNITS.put(Symbol.CELSIUS, Units.KELVIN);
        UNITS.put(Symbol.KELVIN, Units.KELVIN);
    }
}
