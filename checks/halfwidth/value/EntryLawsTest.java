package halfwidth.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

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

    @Property
    void aPrintedNumberReadsBackTheSame(
            @ForAll("doubles") double value, @ForAll("labels") String unit) {
        String printed = Decimal.print(value) + (unit.equals("1") ? "" : " " + unit);
        assertEquals(value + 0.0, Entry.read(new Kind.Number(), unit, printed).value());
    }

    @Property
    void aPrintedNumberReadsBackTheSameWithADecimalComma(@ForAll("fractions") double value) {
        String printed = Decimal.print(value).replace('.', ',');
        assertEquals(value + 0.0, Entry.read(new Kind.Number(), "1", printed).value());
    }

    @Property
    void sixteenthsReadBackTheSame(
            @ForAll @IntRange(min = 0, max = 500) int whole,
            @ForAll @IntRange(min = 1, max = 15) int parts) {
        Entry entry = Entry.read(new Kind.Number(), "in", whole + " " + parts + "/16 in");
        assertEquals(whole + parts / 16.0, entry.value());
    }

    @Property
    void aPrintedDdmReadsBackTheSame(@ForAll("fractions") double ddm) {
        String printed = Decimal.print(ddm) + " DDM";
        assertEquals(ddm + 0.0, Entry.read(new Kind.Ddm(), "DDM", printed).value());
    }

    @Property
    void toneAndSignAgree(@ForAll @IntRange(min = 1, max = 1000) int thousandths) {
        Kind ddm = new Kind.Ddm();
        assertEquals(
                Entry.read(ddm, "DDM", thousandths + " ‰").value(),
                Entry.read(ddm, "DDM", thousandths + " in the 150").value());
        assertEquals(
                Entry.read(ddm, "DDM", -thousandths + " ‰").value(),
                Entry.read(ddm, "DDM", thousandths + " in the 90").value());
    }

    @Property
    void aPrintedSizeReadsBackTheSame(@ForAll("sizes") double size) {
        Entry entry = Entry.read(SIZE, "DDM", Decimal.print(size) + " DDM");
        assertEquals(size + 0.0, entry.value());
        // It is shown with ten digits.
        double again = (double) Entry.read(SIZE, "DDM", entry.understood()).value();
        assertEquals(size, again, size * 5e-10);
    }

    @Property
    void aSizeReadsAsTheDdmOfTheSameWords(
            @ForAll("sizes") double size, @ForAll("ddmUnits") String unit, @ForAll boolean comma) {
        String number = (comma ? Decimal.print(size).replace('.', ',') : Decimal.print(size));
        String typed = number + unit;
        assertEquals(
                Entry.read(new Kind.Ddm(), "DDM", typed).value(),
                Entry.read(SIZE, "DDM", typed).value());
    }

    @Property
    void aSizeNeverHasAToneOrAMinusSign(
            @ForAll("sizes") double size,
            @ForAll("ddmUnits") String unit,
            @ForAll("sides") String side) {
        String number = Decimal.print(size) + unit;
        for (String typed : List.of(number + side, "-" + number, "\u2212" + number)) {
            EntryRefused refusal =
                    assertThrows(EntryRefused.class, () -> Entry.read(SIZE, "DDM", typed));
            assertTrue(refusal.getMessage().contains("size"), refusal::getMessage);
        }
    }

    @Property
    void aCountReadsBackTheSame(@ForAll int value) {
        assertEquals(value, Entry.read(new Kind.Count(), "1", "" + value).value());
    }

    @Property
    void whatWasUnderstoodWithoutConversionReadsTheSame(
            @ForAll("doubles") double value, @ForAll("labels") String unit) {
        Entry entry = Entry.read(new Kind.Number(), unit, Decimal.print(value));
        assertEquals(
                entry.value(), Entry.read(new Kind.Number(), unit, entry.understood()).value());
    }

    @Property(tries = 3_000)
    void garbageIsOnlyEverRefused(@ForAll("garbage") String typed, @ForAll("kinds") Kind kind) {
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

    @Provide
    Arbitrary<String> garbage() {
        Arbitrary<String> pieces =
                Arbitraries.of(
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
                                "1/16")
                        .list()
                        .ofMaxSize(8)
                        .map(list -> String.join("", list));
        return Arbitraries.oneOf(pieces, Arbitraries.strings().ofMaxLength(120));
    }

    /** Any finite double: jqwik's own have two decimals. */
    @Provide
    Arbitrary<Double> doubles() {
        Arbitrary<Double> bits =
                Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite);
        return Arbitraries.oneOf(bits, Arbitraries.doubles().between(-1e6, 1e6).ofScale(4));
    }

    @Provide
    Arbitrary<Double> fractions() {
        return Arbitraries.longs().map(bits -> bits / (double) (1L << 62) / 2);
    }

    /** Below what a DDM can be in any of the units. */
    @Provide
    Arbitrary<Double> sizes() {
        return Arbitraries.longs().map(bits -> Math.abs(bits / (double) (1L << 62) / 2.1));
    }

    @Provide
    Arbitrary<String> ddmUnits() {
        return Arbitraries.of("", " DDM", " %", " ‰", " thousandths", " µA", " uA", " mA");
    }

    @Provide
    Arbitrary<String> sides() {
        return Arbitraries.of(" in the 150", " in the 90", " in 150 Hz", " in 90", " in the 60");
    }

    @Provide
    Arbitrary<String> labels() {
        return Arbitraries.of("1", "in", "°", "MHz", "dBm", "µV/m", "°/in", "ppm/°C", "W/m²", "a");
    }

    @Provide
    Arbitrary<Kind> kinds() {
        return Arbitraries.of(KINDS);
    }

    @Property
    void aDateReadsBackTheSame(@ForAll @IntRange(min = -25_000, max = 83_000) int day) {
        LocalDate date = LocalDate.ofEpochDay(day);
        assertEquals(date, Entry.read(new Kind.Date(), "", date.toString()).value());
        String dotted = date.getDayOfMonth() + "." + date.getMonthValue() + "." + date.getYear();
        assertEquals(date, Entry.read(new Kind.Date(), "", dotted).value());
    }
}
