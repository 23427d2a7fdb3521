package halfwidth.value;

import halfwidth.localizer.signal.Ddm;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a DDM by tone, as a ratio, in thousandths or as the indicator current it gives. */
final class DdmReader {
    private static final DdmReader SIGNED =
            new DdmReader("it as in 155 in the 90, -0.155 or -150 µA");
    private static final DdmReader SIZE =
            new DdmReader("a size without tone and sign, as in 0.001, 1 ‰ or 1 µA");

    private static final Pattern BY_TONE =
            Pattern.compile("(.*?) in (?:the )?([\\d.,]+)(?: ?Hz)?", Pattern.CASE_INSENSITIVE);

    /** A thousandth, which receivers show, and one place more. */
    private static final int LEAST_PLACES = 4;

    private static final Unit MICROAMPERE = Unit.of("µA");
    private static final Unit DDM = Unit.of("DDM");

    private final String ways;

    private DdmReader(String ways) {
        this.ways = ways;
    }

    /** Reads which tone predominates and by how much. */
    static Entry read(String typed) {
        String text = Figure.plain(typed);
        double ddm = SIGNED.value(text);
        return new Entry(typed, ddm, SIGNED.understood(ddm, text));
    }

    /** Reads how large a step, a tolerance or an uncertainty is. */
    static Entry size(String typed) {
        String text = Figure.plain(typed);
        if (BY_TONE.matcher(text).matches()) {
            throw SIZE.refused(text + " names a tone");
        }
        if (text.startsWith("-")) {
            throw SIZE.refused(text + " has a minus sign");
        }
        double size = SIZE.value(text);
        String shown = SIZE.shown(size, text) + " DDM";
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
            throw refused(text + " is more than 1");
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
            throw new EntryRefused(
                    text + " may be thousandths or µA; type " + choices(text, figure.value()));
        }
        return figure.value().doubleValue();
    }

    /** What a plain number that is no ratio may stand for, each as one would type it. */
    private String choices(String text, BigDecimal number) {
        String size = number.abs().toPlainString();
        String thousandths =
                this == SIZE
                        ? size + " ‰"
                        : number.signum() < 0
                                ? size + " in the 90"
                                : size + " in the 150, " + size + " in the 90";
        return thousandths + " or " + text + " µA";
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

    private String understood(double ddm, String text) {
        String tone = ddm > 0 ? ", 150 Hz" : ddm < 0 ? ", 90 Hz" : "";
        return shown(ddm, text)
                + " DDM"
                + tone
                + String.format(Locale.ROOT, " (%.1f µA)", Ddm.toMicroamps(ddm));
    }

    /** Of a current, which is no round number of DDM, one place more than was typed. */
    private String shown(double ddm, String text) {
        Matcher byTone = BY_TONE.matcher(text);
        Figure figure = figure(byTone.matches() ? byTone.group(1) : text);
        Optional<Unit> current = Unit.find(figure.rest()).filter(MICROAMPERE::sameQuantity);
        if (current.isEmpty()) {
            return Decimal.brief(ddm);
        }
        double place = Ddm.fromMicroamps(current.get().convert(figure.value().ulp(), MICROAMPERE));
        int places = 1 + (int) Math.ceil(-Math.log10(place));
        return Decimal.rounded(ddm, Math.max(LEAST_PLACES, places));
    }

    private EntryRefused refused(String wrong) {
        return new EntryRefused(wrong + "; type " + ways);
    }
}
