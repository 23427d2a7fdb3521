package halfwidth.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class EntryLawsTest {
    private static final Kind SIZE = new Kind.DdmSize();
    private static final List<Kind> KINDS =
            List.of(
                    new Kind.Number(),
                    new Kind.Count(),
                    new Kind.Ddm(),
                    new Kind.DdmSize(),
                    new Kind.Array(true),
                    new Kind.Choice(List.of("CSB", "SBO")),
                    new Kind.Text(),
                    new Kind.Date());

    @Law
    void aPrintedNumberReadsBackTheSame(Draw draw) {
        double value = doubles(draw);
        String unit = labels(draw);
        String printed = Decimal.print(value) + (unit.equals("1") ? "" : " " + unit);
        assertEquals(value + 0.0, Entry.read(new Kind.Number(), unit, printed).value());
    }

    @Law
    void aPrintedNumberReadsBackTheSameWithADecimalComma(Draw draw) {
        double value = fractions(draw);
        String printed = Decimal.print(value).replace('.', ',');
        assertEquals(value + 0.0, Entry.read(new Kind.Number(), "1", printed).value());
    }

    @Law
    void sixteenthsReadBackTheSame(Draw draw) {
        int whole = draw.whole(0, 500);
        int parts = draw.whole(1, 15);
        Entry entry = Entry.read(new Kind.Number(), "in", whole + " " + parts + "/16 in");
        assertEquals(whole + parts / 16.0, entry.value());
    }

    @Law
    void aPrintedDdmReadsBackTheSame(Draw draw) {
        double ddm = fractions(draw);
        String printed = Decimal.print(ddm) + " DDM";
        assertEquals(ddm + 0.0, Entry.read(new Kind.Ddm(), "DDM", printed).value());
    }

    @Test
    void toneAndSignAgreeForEveryThousandth() {
        Kind ddm = new Kind.Ddm();
        for (int thousandths = 1; thousandths <= 1000; thousandths++) {
            assertEquals(
                    Entry.read(ddm, "DDM", thousandths + " ‰").value(),
                    Entry.read(ddm, "DDM", thousandths + " in the 150").value());
            assertEquals(
                    Entry.read(ddm, "DDM", -thousandths + " ‰").value(),
                    Entry.read(ddm, "DDM", thousandths + " in the 90").value());
        }
    }

    @Law
    void aPrintedSizeReadsBackTheSame(Draw draw) {
        double size = sizes(draw);
        Entry entry = Entry.read(SIZE, "DDM", Decimal.print(size) + " DDM");
        assertEquals(size + 0.0, entry.value());
        // It is shown with ten digits.
        double again = (double) Entry.read(SIZE, "DDM", entry.understood()).value();
        assertEquals(size, again, size * 5e-10);
    }

    @Law
    void aSizeReadsAsTheDdmOfTheSameWords(Draw draw) {
        double size = sizes(draw);
        String unit = ddmUnits(draw);
        boolean comma = draw.flag();
        String number = (comma ? Decimal.print(size).replace('.', ',') : Decimal.print(size));
        String typed = number + unit;
        assertEquals(
                Entry.read(new Kind.Ddm(), "DDM", typed).value(),
                Entry.read(SIZE, "DDM", typed).value());
    }

    @Law
    void aSizeNeverHasAToneOrAMinusSign(Draw draw) {
        double size = sizes(draw);
        String unit = ddmUnits(draw);
        String side = sides(draw);
        String number = Decimal.print(size) + unit;
        for (String typed : List.of(number + side, "-" + number, "\u2212" + number)) {
            EntryRefused refusal =
                    assertThrows(EntryRefused.class, () -> Entry.read(SIZE, "DDM", typed));
            assertTrue(refusal.getMessage().contains("size"), refusal::getMessage);
        }
    }

    @Law
    void aCountReadsBackTheSame(Draw draw) {
        int value = draw.whole(Integer.MIN_VALUE, Integer.MAX_VALUE);
        assertEquals(value, Entry.read(new Kind.Count(), "1", "" + value).value());
    }

    @Law
    void whatWasUnderstoodWithoutConversionReadsTheSame(Draw draw) {
        double value = doubles(draw);
        String unit = labels(draw);
        Entry entry = Entry.read(new Kind.Number(), unit, Decimal.print(value));
        assertEquals(
                entry.value(), Entry.read(new Kind.Number(), unit, entry.understood()).value());
    }

    @Law(tries = 3_000)
    void garbageIsOnlyEverRefused(Draw draw) {
        String typed = garbage(draw);
        Kind kind = kinds(draw);
        for (String unit : List.of("1", "in", "°", "µA", "ppm/°C", "dBm")) {
            try {
                Entry entry = Entry.read(kind, unit, typed);
                assertEquals(typed, entry.typed());
                assertFalse(entry.understood().isBlank());
                assertTrue(!(entry.value() instanceof Double number) || Double.isFinite(number));
            } catch (EntryRefused refusal) {
                assertTrue(refusal.getMessage().contains("type "), refusal::getMessage);
            }
        }
    }

    private static final List<String> PIECES =
            List.of(
                    "1",
                    "0",
                    "15",
                    ".",
                    ",",
                    "-",
                    "\u2212",
                    "+",
                    "/",
                    " ",
                    "'",
                    "\"",
                    "e",
                    "E9",
                    "in",
                    "ft",
                    "mm",
                    "%",
                    "°",
                    "µA",
                    "DDM",
                    "in the 90",
                    "NaN",
                    "^",
                    "·",
                    "²",
                    "2026",
                    "Nov",
                    "CSB",
                    "\u00a0",
                    "\u0000",
                    "²⁻",
                    "\ud83d",
                    "dB",
                    "\n",
                    "1/16");

    private static String garbage(Draw draw) {
        return draw.flag()
                ? String.join("", draw.list(0, 8, () -> draw.of(PIECES)))
                : draw.anyText(120);
    }

    private static double doubles(Draw draw) {
        return draw.flag() ? draw.finite() : draw.between(-1e6, 1e6);
    }

    private static double fractions(Draw draw) {
        return draw.anyLong() / (double) (1L << 62) / 2;
    }

    /** Below what a DDM can be in any of the units. */
    private static double sizes(Draw draw) {
        return Math.abs(draw.anyLong() / (double) (1L << 62) / 2.1);
    }

    private static String ddmUnits(Draw draw) {
        return draw.of("", " DDM", " %", " ‰", " thousandths", " µA", " uA", " mA");
    }

    private static String sides(Draw draw) {
        return draw.of(" in the 150", " in the 90", " in 150 Hz", " in 90", " in the 60");
    }

    private static String labels(Draw draw) {
        return draw.of("1", "in", "°", "MHz", "dBm", "µV/m", "°/in", "ppm/°C", "W/m²", "a");
    }

    private static Kind kinds(Draw draw) {
        return draw.of(KINDS);
    }

    @Law
    void aDateReadsBackTheSame(Draw draw) {
        int day = draw.whole(-25_000, 83_000);
        LocalDate date = LocalDate.ofEpochDay(day);
        assertEquals(date, Entry.read(new Kind.Date(), "", date.toString()).value());
        String dotted = date.getDayOfMonth() + "." + date.getMonthValue() + "." + date.getYear();
        assertEquals(date, Entry.read(new Kind.Date(), "", dotted).value());
    }
}
