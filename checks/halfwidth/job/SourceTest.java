package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.page.Field;
import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import halfwidth.value.Kind;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a field makes of another page's result: its unit is never dropped. */
class SourceTest {
    private static final Optional<String> LINK = Optional.of("a/b#c");

    private static Entry taken(Kind kind, String unit, String value, String foundIn) {
        return taken(kind, unit, value, foundIn, "");
    }

    private static Entry taken(Kind kind, String unit, String value, String foundIn, String u) {
        return taken(kind, unit, new Finding("c", value, foundIn, u, "no limit"));
    }

    private static Entry taken(Kind kind, String unit, Finding finding) {
        Optional<Double> free = Optional.empty();
        Field field =
                new Field(
                        1,
                        "f",
                        kind,
                        unit,
                        "",
                        Optional.empty(),
                        LINK,
                        free,
                        free,
                        "F",
                        Optional.empty());
        return new Source(Optional.empty(), Optional.of(finding), "from a/b").entry(field);
    }

    @Test
    void aSizeInDdmKeepsTheUnitOfItsResultAndHasNoTone() {
        assertEquals(0.002, taken(new Kind.DdmSize(), "DDM", "0.2", "%").value());
        Entry clearance = taken(new Kind.DdmSize(), "DDM", "0.194", "DDM");
        assertEquals(0.194, clearance.value());
        assertEquals("0.194 DDM", clearance.understood());
    }

    private static Entry shown(String value, String u, String shown) {
        return taken(new Kind.Number(), "°", new Finding("c", value, "°", u, "no limit", shown));
    }

    @Test
    void aResultIsShownAsItsPageShowsItAndTakenInFull() {
        Entry entry = shown("4.080132456789012", "", "4.080");
        assertEquals("4.08 °", entry.understood());
        assertEquals(4.080132456789012, entry.value());
        assertEquals("4.080132456789012 °", entry.typed());
    }

    @Test
    void aResultOfAnOlderJournalIsShownAsFarAsItsUncertaintyBears() {
        assertEquals(
                "4.08 ° ± 0.012 ° (standard uncertainty)",
                shown("4.080132456789012", "0.0123456", "").understood());
        assertEquals("4.08013 °", shown("4.080132456789012", "", "").understood());
    }

    @Test
    void aSizeInDdmRefusesANegativeResult() {
        assertThrows(EntryRefused.class, () -> taken(new Kind.DdmSize(), "DDM", "-0.194", "DDM"));
    }

    @Test
    void aResultIsTakenWithItsUncertaintyInTheUnitOfTheField() {
        Entry entry = taken(new Kind.Number(), "in", "25.4", "mm", "2.54");
        assertEquals(1.0, entry.value());
        assertEquals(0.1, entry.uncertainty().orElseThrow(), 1e-12);
        Entry again = Entry.read(new Kind.Number(), "in", entry.typed());
        assertEquals(entry.uncertainty(), again.uncertainty(), "what a record keeps");
        assertEquals(
                Optional.empty(), taken(new Kind.Number(), "in", "1", "in", "0").uncertainty());
    }
}
