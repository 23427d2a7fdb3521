package halfwidth.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names as symbols: {@code beta} as β, {@code readingLeft} as reading with an index. */
final class Symbols {
    private static final Map<String, String> GREEK =
            Map.ofEntries(
                    Map.entry("alpha", "α"),
                    Map.entry("beta", "β"),
                    Map.entry("gamma", "γ"),
                    Map.entry("delta", "δ"),
                    Map.entry("epsilon", "ε"),
                    Map.entry("eta", "η"),
                    Map.entry("theta", "θ"),
                    Map.entry("lambda", "λ"),
                    Map.entry("mu", "μ"),
                    Map.entry("pi", "π"),
                    Map.entry("rho", "ρ"),
                    Map.entry("sigma", "σ"),
                    Map.entry("tau", "τ"),
                    Map.entry("phi", "φ"),
                    Map.entry("psi", "ψ"),
                    Map.entry("omega", "ω"));

    private static final Pattern WORD = Pattern.compile("[A-Z]+(?![a-z])|[A-Z]?[a-z]+|[0-9]+");

    private Symbols() {}

    static String math(String name) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(name);
        boolean camel = name.matches("[a-z][A-Za-z0-9]*");
        while (camel && word.find()) {
            words.add(word.group());
        }
        if (words.isEmpty()) {
            return identifier(name);
        }
        String first = identifier(GREEK.getOrDefault(words.get(0), words.get(0)));
        if (words.size() == 1) {
            return first;
        }
        String index = String.join(" ", words.subList(1, words.size())).toLowerCase(Locale.ROOT);
        return "<msub>" + first + "<mtext>" + index + "</mtext></msub>";
    }

    private static String identifier(String text) {
        String upright = text.length() > 1 ? " mathvariant=\"normal\"" : "";
        return "<mi" + upright + ">" + escaped(text) + "</mi>";
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
