package halfwidth.show;

import halfwidth.formula.Function;
import halfwidth.formula.Operation;
import java.util.List;

/** What the signs and the functions stand for that every reader knows. */
final class Arithmetic {
    private Arithmetic() {}

    static double joined(Operation operation, double left, double right) {
        return switch (operation) {
            case PLUS -> left + right;
            case MINUS -> left - right;
            case TIMES -> left * right;
            case OVER -> left / right;
            default -> left % right;
        };
    }

    static double value(Function function, List<Double> arguments) {
        double first = arguments.get(0);
        double second = arguments.size() > 1 ? arguments.get(1) : Double.NaN;
        return switch (function) {
            case SQRT -> Math.sqrt(first);
            case CBRT -> Math.cbrt(first);
            case POW -> Math.pow(first, second);
            case HYPOT -> Math.hypot(first, second);
            case EXP -> Math.exp(first);
            case LOG -> Math.log(first);
            case LOG10 -> Math.log10(first);
            case SIN -> Math.sin(first);
            case COS -> Math.cos(first);
            case TAN -> Math.tan(first);
            case ASIN -> Math.asin(first);
            case ACOS -> Math.acos(first);
            case ATAN -> Math.atan(first);
            case ATAN2 -> Math.atan2(first, second);
            case TO_RADIANS -> Math.toRadians(first);
            case TO_DEGREES -> Math.toDegrees(first);
            case ABS -> Math.abs(first);
            case SIGNUM -> Math.signum(first);
            case MIN -> Math.min(first, second);
            case MAX -> Math.max(first, second);
            case ROUND, RINT -> Math.rint(first);
            case FLOOR -> Math.floor(first);
            case CEIL -> Math.ceil(first);
            case WHOLE -> (double) (long) first;
        };
    }
}
