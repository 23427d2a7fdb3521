package halfwidth.value;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and writes the label of a unit: symbols with powers, joined by · and /. */
final class UnitLabel {
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final Pattern FACTOR = Pattern.compile("([·*/]?)([^·*/]+)");
    private static final Pattern POWER = Pattern.compile("([^^]+?)\\s*(?:\\^(-?[1-9]))?");
    private static final int LONGEST = 40;

    private UnitLabel() {}

    static Optional<Map<Symbol, Integer>> read(String label) {
        Map<Symbol, Integer> powers = new EnumMap<>(Symbol.class);
        String text = lowered(label.strip());
        Matcher factor = FACTOR.matcher(text);
        int end = 0;
        while (text.length() <= LONGEST && end < text.length() && factor.lookingAt()) {
            boolean first = end == 0;
            if (first != factor.group(1).isEmpty() || !add(factor, powers)) {
                return Optional.empty();
            }
            end = factor.end();
            factor.region(end, text.length());
        }
        powers.values().removeIf(power -> power == 0);
        return end > 0 && end == text.length() ? Optional.of(powers) : Optional.empty();
    }

    private static boolean add(Matcher factor, Map<Symbol, Integer> powers) {
        Matcher power = POWER.matcher(factor.group(2).strip());
        if (!power.matches()) {
            return false;
        }
        if (power.group().equals("1")) {
            return true;
        }
        int size = power.group(2) == null ? 1 : Integer.parseInt(power.group(2));
        int signed = factor.group(1).equals("/") ? -size : size;
        Optional<Symbol> symbol = Symbol.written(power.group(1));
        symbol.ifPresent(known -> powers.merge(known, signed, Integer::sum));
        return symbol.isPresent();
    }

    /** Turns {@code m²} into {@code m^2}. */
    private static String lowered(String label) {
        StringBuilder text = new StringBuilder();
        boolean raised = false;
        for (char letter : label.toCharArray()) {
            int digit = letter == '⁻' ? 10 : RAISED.indexOf(letter);
            if (digit >= 0 && !raised) {
                text.append('^');
            }
            raised = digit >= 0;
            text.append(raised ? "0123456789-".charAt(digit) : letter);
        }
        return text.toString();
    }

    static String write(Map<Symbol, Integer> powers) {
        StringBuilder above = new StringBuilder();
        StringBuilder below = new StringBuilder();
        powers.forEach(
                (symbol, power) -> {
                    StringBuilder side = power > 0 ? above : below;
                    side.append(power < 0 ? "/" : side.isEmpty() ? "" : "·");
                    side.append(symbol.label).append(raised(Math.abs(power)));
                });
        return (above.isEmpty() ? "1" : above.toString()) + below;
    }

    private static String raised(int power) {
        StringBuilder text = new StringBuilder();
        if (power > 1) {
            for (char digit : Integer.toString(power).toCharArray()) {
                text.append(RAISED.charAt(digit - '0'));
            }
        }
        return text.toString();
    }
}
