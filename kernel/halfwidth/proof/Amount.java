package halfwidth.proof;

import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A number by its unit.
 *
 * @param unit its unit; radians do not count (SI Brochure, 9th edition, 2.3.4)
 * @param factors the plain numbers that were multiplied in; one of them may be a conversion
 * @param free whether it is made of plain numbers alone, so that it may be of any unit
 * @param perDegree whether it is made of the radian measure of a plain number of degrees, which may
 *     be meant as so much for each degree
 * @param logarithm whether it is a decimal logarithm, or a multiple of one
 */
record Amount(Unit unit, List<Double> factors, boolean free, boolean perDegree, boolean logarithm)
        implements Value {
    private static final Unit DEGREE = Unit.of("°");
    private static final Unit RADIAN = Unit.of("rad");
    private static final Unit DECIBEL = Unit.of("dB");
    private static final Unit DDM = Unit.of("DDM");
    private static final double EXACT = 1e-12;

    /** A count, or a ratio. */
    static final Amount ONE = of(Unit.ONE);

    Amount {
        factors = List.copyOf(factors);
    }

    static Amount of(Unit unit) {
        return new Amount(without(RADIAN, unit), List.of(), false, false, false);
    }

    static Amount plain(double number) {
        return new Amount(Unit.ONE, List.of(number), true, false, false);
    }

    private static Unit without(Unit symbol, Unit unit) {
        return unit.over(symbol.power(unit.powerOf(symbol)));
    }

    private Amount with(Unit other, List<Double> others) {
        return new Amount(without(RADIAN, other), others, free, perDegree, logarithm);
    }

    Amount times(Amount other) {
        List<Double> all = new ArrayList<>(factors);
        all.addAll(other.factors);
        return new Amount(
                unit.times(other.unit),
                all,
                free && other.free,
                perDegree || other.perDegree,
                logarithm || other.logarithm);
    }

    Amount over(Amount other) {
        List<Double> inverse = other.factors.stream().map(factor -> 1 / factor).toList();
        return times(new Amount(other.unit.power(-1), inverse, other.free, other.perDegree, false));
    }

    /** The sum of both, or one of both. */
    Amount plus(Amount other, String how) {
        if (free || other.free) {
            Amount unit = free ? other : this;
            return new Amount(
                    unit.settled().unit,
                    List.of(),
                    free && other.free,
                    perDegree && other.perDegree,
                    logarithm && other.logarithm);
        }
        for (Amount one : List.of(other.settled(), settled(), other, this)) {
            if (is(one.unit) && other.is(one.unit)) {
                return Amount.of(one.unit);
            }
        }
        throw new Refuted("an amount in %s %s one in %s".formatted(label(), how, other.label()));
    }

    /** The same as a plain ratio, where a factor such as 1/100 makes it one. */
    Amount settled() {
        return !unit.equals(Unit.ONE) && !logarithm && is(Unit.ONE)
                ? of(Unit.ONE)
                : with(unit, List.of());
    }

    /** The same amount in another form, in which no factor can be a conversion any more. */
    Amount plainly() {
        return with(unit, List.of());
    }

    Amount inDegrees() {
        return with(unit.times(DEGREE), factors);
    }

    /** In radians, of degrees. */
    Amount inRadians() {
        return new Amount(
                free ? Unit.ONE : unit.over(DEGREE), factors, free, free || perDegree, logarithm);
    }

    Amount asLogarithm() {
        return new Amount(unit, List.of(), free, false, true);
    }

    Amount power(int exponent) {
        return with(unit.power(exponent), List.of());
    }

    Optional<Amount> root(int degree) {
        return unit.root(degree).map(root -> with(root, List.of()));
    }

    String label() {
        return unit.label();
    }

    /** Whether the unit follows: it is the same, or a factor converts exactly into it. */
    boolean is(Unit wanted) {
        Unit gap = gap(wanted);
        if (free || gap.equals(Unit.ONE) || perDegree && gap.equals(DEGREE.power(-1))) {
            return true;
        }
        if (logarithm && gap.equals(DECIBEL)) {
            return hasFactor(10) || hasFactor(20);
        }
        if (unit.equals(DECIBEL) && gap.equals(DECIBEL.power(-1))) {
            return hasFactor(0.1) || hasFactor(0.05);
        }
        int degrees = gap.powerOf(DEGREE);
        Unit rest = without(DEGREE, gap);
        if (!rest.sameDimension(Unit.ONE) || Math.abs(degrees) > 1) {
            return false;
        }
        double ratio = 1 / rest.convert(1, Unit.ONE);
        if (degrees == 0) {
            return hasFactor(ratio);
        }
        return hasFactor(ratio * Math.pow(360, degrees))
                || hasFactor(ratio * Math.pow(180 / Math.PI, degrees));
    }

    /** What has to be multiplied in; a DDM is the ratio that it is. */
    private Unit gap(Unit wanted) {
        return without(DDM, without(RADIAN, wanted.over(unit)));
    }

    private boolean hasFactor(double wanted) {
        if (Math.abs(wanted - 1) < EXACT) {
            return true;
        }
        int many = Math.min(factors.size(), 10);
        for (int chosen = 1; chosen < 1 << many; chosen++) {
            double product = 1;
            for (int i = 0; i < many; i++) {
                product *= (chosen >> i & 1) == 1 ? Math.abs(factors.get(i)) : 1;
            }
            if (Math.abs(product / wanted - 1) < EXACT) {
                return true;
            }
        }
        return false;
    }
}
