package halfwidth.value;

import halfwidth.localizer.signal.Ddm;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a DDM by tone, as a ratio, in thousandths or as the indicator current it gives. */
final class DdmReader {
    private static final DdmReader SIGNED =
            new DdmReader(
                    "thousandths by tone, as in 155 in the 150 or 155 in the 90;"
                            + " a ratio below 1, as in 0.155 or -0.155 (positive where 150 Hz"
                            + " predominates); thousandths, as in -155 ‰; or the current, as in"
                            + " -150 µA");
    private static final DdmReader SIZE =
            new DdmReader(
                    "it without tone and sign: a ratio below 1, as in 0.001; thousandths, as in"
                            + " 1 ‰; or the current, as in 1 µA");

    private static final Pattern BY_TONE =
            Pattern.compile("(.*?) in (?:the )?([\\d.,]+)(?: ?Hz)?", Pattern.CASE_INSENSITIVE);
    private static final Unit MICROAMPERE = Unit.of("µA");
    private static final Unit DDM = Unit.of("DDM");

    private final String ways;

    private DdmReader(String ways) {
        this.ways = ways;
    }

    /** Reads which tone predominates and by how much. */
    static Entry read(String typed) {
        double ddm = SIGNED.value(Figure.plain(typed));
        return new Entry(typed, ddm, understood(ddm));
    }

    /** Reads how large a step, a tolerance or an uncertainty is. */
    static Entry size(String typed) {
        String text = Figure.plain(typed);
        if (BY_TONE.matcher(text).matches()) {
            throw SIZE.refused(text + " names a tone, and a size has none");
        }
        if (text.startsWith("-")) {
            throw SIZE.refused(text + " has a minus sign, and a size is never negative");
        }
        double size = SIZE.value(text);
        String shown = Decimal.brief(size) + " DDM";
        boolean asTyped = Unit.find(SIZE.figure(text).rest()).map(DDM::equals).orElse(true);
        return new Entry(typed, size, asTyped ? shown : shown + " (" + text + " typed)");
    }

    private double value(String text) {
        Matcher byTone = BY_TONE.matcher(text);
        double ddm =
                byTone.matches()
                        ? byTone(text, byTone.group(1), byTone.group(2))
                        : signed(text, figure(text));
        if (Math.abs(ddm) > 1) {
            throw refused(text + " is more than 1, the most a DDM can be");
        }
        return ddm;
    }

    private Figure figure(String text) {
        Figure figure = Figure.first(text, () -> ways);
        if (figure.fraction()) {
            throw refused(text + " is a common fraction");
        }
        return figure;
    }

    private double byTone(String text, String amount, String tone) {
        if (!tone.equals("150") && !tone.equals("90")) {
            throw refused("tone " + tone + " in " + text + " must be 150 or 90 [Hz]");
        }
        Figure figure = figure(amount);
        if (figure.signed()) {
            throw refused(text + " has both a sign and a tone");
        }
        boolean bare = figure.rest().isEmpty();
        if (bare && figure.value().signum() != 0 && figure.value().compareTo(BigDecimal.ONE) < 0) {
            throw refused(text + " may be a ratio or thousandths");
        }
        double size = bare ? thousandths(figure) : withUnit(text, figure);
        return tone.equals("150") || size == 0 ? size : -size;
    }

    private double signed(String text, Figure figure) {
        if (!figure.rest().isEmpty()) {
            return withUnit(text, figure);
        }
        if (figure.value().abs().compareTo(BigDecimal.ONE) >= 0) {
            throw refused(text + " may be thousandths or µA, and a ratio is below 1");
        }
        return figure.value().doubleValue();
    }

    private static double thousandths(Figure figure) {
        return figure.value().movePointLeft(3).doubleValue();
    }

    private double withUnit(String text, Figure figure) {
        Unit unit =
                Unit.find(figure.rest())
                        .orElseThrow(() -> refused(figure.rest() + " in " + text + " is unknown"));
        if (unit.sameQuantity(MICROAMPERE)) {
            return Ddm.fromMicroamps(unit.convert(figure.value(), MICROAMPERE));
        }
        if (unit.equals(Unit.of("‰"))) {
            return thousandths(figure);
        }
        if (unit.equals(Unit.of("%"))) {
            return figure.value().movePointLeft(2).doubleValue();
        }
        if (unit.equals(DDM)) {
            return figure.value().doubleValue();
        }
        throw refused(figure.rest() + " is typed where DDM is expected");
    }

    private static String understood(double ddm) {
        String tone = ddm > 0 ? ", 150 Hz" : ddm < 0 ? ", 90 Hz" : "";
        return Decimal.brief(ddm)
                + " DDM"
                + tone
                + String.format(Locale.ROOT, " (%.1f µA)", Ddm.toMicroamps(ddm));
    }

    private EntryRefused refused(String wrong) {
        return new EntryRefused(wrong + "; type " + ways);
    }
}
