package halfwidth.localizer.signal;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A DDM as crews speak it: so many thousandths in one of the tones.
 *
 * @param thousandths the size of the DDM (thousandths), 0 to 1000
 * @param tone the tone that predominates; either one for a reading of 0
 */
public record ToneReading(double thousandths, Tone tone) {
    private static final Range SIZES = new Range(0, 1000);
    private static final Pattern SPOKEN =
            Pattern.compile("\\s*(\\d+(?:\\.\\d+)?|\\.\\d+)\\s+in\\s+(?:the\\s+)?(90|150)\\s*");

    /**
     * @throws IllegalArgumentException if {@code thousandths} is outside 0 to 1000
     */
    public ToneReading {
        Require.within("DDM", thousandths, SIZES, "thousandths");
    }

    /**
     * Returns the spoken form of a DDM.
     *
     * @param ddm the DDM (DDM), -1 to 1
     * @return the reading; a DDM of 0 is given to the 150
     * @throws IllegalArgumentException if {@code ddm} is not -1 to 1
     */
    public static ToneReading of(double ddm) {
        Require.within("DDM", ddm, new Range(-1, 1), "");
        return new ToneReading(Math.abs(ddm) * 1000, ddm < 0 ? Tone.HZ_90 : Tone.HZ_150);
    }

    /**
     * Reads what a crew says, like "155 in the 150" or "3 in 90".
     *
     * @param text thousandths, "in", and the tone
     * @return the reading
     * @throws IllegalArgumentException if {@code text} is of another form: a number without its
     *     tone is ambiguous
     */
    public static ToneReading parse(String text) {
        Matcher matcher = SPOKEN.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "DDM \""
                            + text
                            + "\" must be thousandths and the tone, like 155 in the 150 or 3 in"
                            + " the 90");
        }
        return new ToneReading(
                Double.parseDouble(matcher.group(1)),
                matcher.group(2).equals("90") ? Tone.HZ_90 : Tone.HZ_150);
    }

    /**
     * Returns the DDM.
     *
     * @return the DDM (DDM), positive where 150 Hz predominates
     */
    public double ddm() {
        // Not -0, which would print as a negative reading.
        return thousandths == 0 ? 0 : tone.sign() * thousandths / 1000;
    }

    /**
     * Returns the form a crew would say, to a tenth of a thousandth.
     *
     * @return for example "155 in the 150", or "0" where neither predominates
     */
    public String spoken() {
        double tenths = Math.round(thousandths * 10) / 10.0;
        if (tenths == 0) {
            return "0";
        }
        String number =
                tenths == Math.rint(tenths)
                        ? Long.toString((long) tenths)
                        : Double.toString(tenths);
        return number + " in the " + tone.spoken();
    }
}
