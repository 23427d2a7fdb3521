package halfwidth.show;

import halfwidth.formula.PlainFormula;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a formula in plain text, with numbers in it, and works it out, knowing nothing of the Java
 * it came from. Each number counts as uncertain by half a unit of its sixth digit; those in the
 * formula that is shown for a method of the page are exact.
 */
final class SecondEvaluator {
    private static final int NONE = -1;

    private final String text;
    private final List<NumbersPut.Defined> methods;
    private final Map<String, Double> bound;
    private final int shifted;
    private final int way;
    private int at;
    private int numbers;

    private SecondEvaluator(
            String text,
            List<NumbersPut.Defined> methods,
            Map<String, Double> bound,
            int shifted,
            int way) {
        this.text = text.replace('−', '-').replace(" ", "");
        this.methods = methods;
        this.bound = bound;
        this.shifted = shifted;
        this.way = way;
    }

    private SecondEvaluator(String text, List<NumbersPut.Defined> methods, int shifted, int way) {
        this(text, methods, Map.of(), shifted, way);
    }

    /** A value and how far the digits that are not printed may move it. */
    record Worked(double value, double within) {}

    /**
     * Works a formula out.
     *
     * @throws IllegalArgumentException if there is more in it than arithmetic and functions that
     *     every reader knows
     */
    static Worked of(String formula) {
        List<Worked> worked = of(formula, List.of());
        if (worked.size() > 1) {
            throw new IllegalArgumentException("not one number: " + formula);
        }
        return worked.get(0);
    }

    /**
     * Works a formula out.
     *
     * @param methods the page's methods whose formula is shown
     * @return one number, or the value and the uncertainty of {@code Estimate(value, uncertainty)}
     * @throws IllegalArgumentException if there is more in it than arithmetic, functions that every
     *     reader knows and these methods
     */
    static List<Worked> of(String formula, List<NumbersPut.Defined> methods) {
        SecondEvaluator first = new SecondEvaluator(formula, methods, NONE, 0);
        List<Double> values = first.whole();
        double[] within = new double[values.size()];
        for (int i = 0; i < first.numbers; i++) {
            List<Double> up = new SecondEvaluator(formula, methods, i, 1).whole();
            List<Double> down = new SecondEvaluator(formula, methods, i, -1).whole();
            for (int j = 0; j < within.length; j++) {
                double value = values.get(j);
                within[j] += Math.max(apart(up.get(j), value), apart(down.get(j), value));
            }
        }
        List<Worked> worked = new ArrayList<>();
        for (int j = 0; j < within.length; j++) {
            worked.add(new Worked(values.get(j), within[j]));
        }
        return worked;
    }

    /**
     * How far half a unit of a number moves the value; not at all for a whole exponent of a
     * negative number, where any other has none.
     */
    private static double apart(double moved, double value) {
        double apart = Math.abs(moved - value);
        return Double.isNaN(apart) ? 0 : apart;
    }

    /** Half a unit of the sixth significant digit. */
    static double halfUnit(double value) {
        return value == 0 ? 0 : 0.5 * Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 5);
    }

    private List<Double> whole() {
        List<Double> values = new ArrayList<>();
        if (take("Estimate(")) {
            values.addAll(arguments());
            if (values.size() != 2) {
                throw new IllegalArgumentException("no value and uncertainty: " + text);
            }
        } else {
            values.add(sum());
        }
        if (at < text.length()) {
            throw new IllegalArgumentException("more than a formula: " + text.substring(at));
        }
        return values;
    }

    /** What stands between brackets, the first of which is taken. */
    private List<Double> arguments() {
        List<Double> values = new ArrayList<>(List.of(sum()));
        while (take(",")) {
            values.add(sum());
        }
        need(")");
        return values;
    }

    private double sum() {
        double value = product();
        while (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
            value += text.charAt(at++) == '+' ? product() : -product();
        }
        return value;
    }

    private double product() {
        double value = signed();
        while (at < text.length()) {
            if (take("·")) {
                value *= signed();
            } else if (take("/")) {
                value /= signed();
            } else if (take("mod")) {
                value %= signed();
            } else {
                break;
            }
        }
        return value;
    }

    private double signed() {
        return take("-") ? -signed() : power();
    }

    private double power() {
        double base = degrees();
        return take("^") ? Math.pow(base, degrees()) : base;
    }

    private double degrees() {
        double value = one();
        return take("°") ? Math.toRadians(value) : value;
    }

    private double one() {
        if (take("(")) {
            double value = sum();
            need(")");
            return value;
        }
        if (take("π")) {
            return Math.PI;
        }
        return at < text.length() && Character.isDigit(text.charAt(at)) ? number() : function();
    }

    private double number() {
        int start = at;
        while (at < text.length() && isOfNumber(at)) {
            at++;
        }
        double value = Double.parseDouble(text.substring(start, at));
        return numbers++ == shifted ? value + way * halfUnit(value) : value;
    }

    private boolean isOfNumber(int place) {
        char letter = text.charAt(place);
        boolean exponent = letter == 'e' || letter == 'E';
        boolean sign = letter == '-' || letter == '+';
        return Character.isDigit(letter)
                || letter == '.'
                || exponent
                || sign && "eE".indexOf(text.charAt(place - 1)) >= 0;
    }

    private double function() {
        int start = at;
        while (at < text.length() && Character.isLetterOrDigit(text.charAt(at))) {
            at++;
        }
        String name = text.substring(start, at);
        if (bound.containsKey(name)) {
            return bound.get(name);
        }
        need("(");
        List<Double> given = arguments();
        for (NumbersPut.Defined method : methods) {
            Map<String, Double> parameters = parameters(method, name, given);
            if (!parameters.isEmpty()) {
                String formula = PlainFormula.of(method.formula());
                return new SecondEvaluator(formula, methods, parameters, NONE, 0).whole().get(0);
            }
        }
        return known(name, given.get(0), given.size() > 1 ? given.get(1) : Double.NaN);
    }

    /** What a method's parameters stand for, by its head as it is shown; empty if not that one. */
    private static Map<String, Double> parameters(
            NumbersPut.Defined method, String name, List<Double> given) {
        String head = PlainFormula.of(method.head());
        String[] names = head.replaceAll("^.*\\(|\\)$", "").split(", ");
        Map<String, Double> parameters = new HashMap<>();
        if (head.startsWith(name + "(") && names.length == given.size()) {
            for (int i = 0; i < names.length; i++) {
                parameters.put(names[i], given.get(i));
            }
        }
        return parameters;
    }

    private static double known(String name, double first, double second) {
        return switch (name) {
            case "sqrt" -> Math.sqrt(first);
            case "cbrt" -> Math.cbrt(first);
            case "exp" -> Math.exp(first);
            case "ln" -> Math.log(first);
            case "log10" -> Math.log10(first);
            case "sin" -> Math.sin(first);
            case "cos" -> Math.cos(first);
            case "tan" -> Math.tan(first);
            case "arcsin" -> Math.asin(first);
            case "arccos" -> Math.acos(first);
            case "arctan" -> Math.atan(first);
            case "arctan2" -> Math.atan2(first, second);
            case "abs" -> Math.abs(first);
            case "sgn" -> Math.signum(first);
            case "min" -> Math.min(first, second);
            case "max" -> Math.max(first, second);
            case "round" -> Math.rint(first);
            case "floor" -> Math.floor(first);
            case "ceil" -> Math.ceil(first);
            case "whole" -> (long) first;
            default -> throw new IllegalArgumentException("function " + name);
        };
    }

    private boolean take(String sign) {
        boolean there = text.startsWith(sign, at);
        at += there ? sign.length() : 0;
        return there;
    }

    private void need(String sign) {
        if (!take(sign)) {
            throw new IllegalArgumentException("no " + sign + " at " + at + " of " + text);
        }
    }
}
