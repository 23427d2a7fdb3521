package halfwidth.show;

/**
 * Reads a formula in plain text, with numbers in it, and works it out, knowing nothing of the Java
 * it came from. Each number counts as uncertain by half a unit of its sixth digit.
 */
final class SecondEvaluator {
    private final String text;
    private final int shifted;
    private final int way;
    private int at;
    private int numbers;

    private SecondEvaluator(String text, int shifted, int way) {
        this.text = text.replace('−', '-').replace(" ", "");
        this.shifted = shifted;
        this.way = way;
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
        SecondEvaluator first = new SecondEvaluator(formula, -1, 0);
        double value = first.whole();
        double within = 0;
        for (int i = 0; i < first.numbers; i++) {
            within += Math.max(moved(formula, i, 1, value), moved(formula, i, -1, value));
        }
        return new Worked(value, within);
    }

    /**
     * How far half a unit of a number moves the value; not at all for a whole exponent of a
     * negative number, where any other has none.
     */
    private static double moved(String formula, int number, int way, double value) {
        double moved = Math.abs(new SecondEvaluator(formula, number, way).whole() - value);
        return Double.isNaN(moved) ? 0 : moved;
    }

    /** Half a unit of the sixth significant digit. */
    static double halfUnit(double value) {
        return value == 0 ? 0 : 0.5 * Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 5);
    }

    private double whole() {
        double value = sum();
        if (at < text.length()) {
            throw new IllegalArgumentException("more than a formula: " + text.substring(at));
        }
        return value;
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
        need("(");
        double first = sum();
        double second = take(",") ? sum() : Double.NaN;
        need(")");
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
