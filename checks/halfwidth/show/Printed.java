package halfwidth.show;

import halfwidth.formula.Term;
import halfwidth.localizer.uncertainty.Estimate;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is printed in a formula where a value was put in, read back from its characters alone. */
final class Printed {
    /** What is printed for an empty optional. */
    enum None {
        NONE
    }

    private static final Pattern MEASURED = Pattern.compile("\\((.+) ± (.+)\\)");

    private Printed() {}

    /**
     * The value that is printed.
     *
     * @return {@code Boolean}, {@code Double}, {@link Estimate} or {@link None}
     * @throws IllegalArgumentException if it is none of these
     */
    static Object value(Term.Literal literal) {
        return moved(literal, 0, 0);
    }

    /**
     * The same with one of its numbers moved by half a unit of its last digit.
     *
     * @param number which, from 0
     * @param way 1 up, -1 down, 0 for not at all
     */
    static Object moved(Term.Literal literal, int number, int way) {
        String text = literal.digits().replace('−', '-');
        if (text.equals("true") || text.equals("false")) {
            return Boolean.valueOf(text);
        }
        if (text.equals(Values.NONE)) {
            return None.NONE;
        }
        Matcher measured = MEASURED.matcher(text);
        if (measured.matches()) {
            return new Estimate(
                    number(measured.group(1), number == 0 ? way : 0),
                    number(measured.group(2), number == 1 ? way : 0));
        }
        double value = Double.parseDouble(text);
        return value + way * SecondEvaluator.halfUnit(value);
    }

    /** Of a value with its uncertainty, the digits printed show how far it is rounded. */
    private static double number(String digits, int way) {
        BigDecimal printed = new BigDecimal(digits);
        double half = 0.5 * Math.pow(10, -printed.scale());
        return printed.doubleValue() + way * half;
    }

    /** How many numbers are printed in it that may have more digits than are printed. */
    static int numbers(Term.Literal literal) {
        Object value = value(literal);
        if (value instanceof Estimate) {
            return 2;
        }
        return value instanceof Double ? 1 : 0;
    }

    /** The places of the numbers in some literals: which literal, and which number of it. */
    static List<Place> places(List<Term.Literal> literals) {
        List<Place> places = new ArrayList<>();
        for (Term.Literal literal : literals) {
            for (int number = 0; number < numbers(literal); number++) {
                places.add(new Place(literal, number));
            }
        }
        return places;
    }

    /** One printed number. */
    record Place(Term.Literal literal, int number) {}
}
