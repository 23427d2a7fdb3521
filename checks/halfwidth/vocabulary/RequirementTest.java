package halfwidth.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.Table;

/** A page refuses what was entered at its field or cell, counted as the crew counts rows. */
class RequirementTest {
    private static final double BLANK = Double.NaN;

    private static Table cuts(double... totals) {
        return Table.create("cuts", DoubleColumn.create("near", totals));
    }

    @Test
    void letsPassWhatHolds() {
        assertTrue(Requirement.require(true, "factor", "must be below 1"));
        Table table = cuts(0, 0.5, 0.5, 2);
        assertSame(table, Requirement.runningTotals(table, "near"));
        assertSame(
                table, Requirement.requireEach(table, "near", cut -> cut >= 0, "must not be less"));
    }

    @Test
    void namesTheFieldWithTheMessageAsItIs() {
        EntryFault fault =
                assertThrows(
                        EntryFault.class,
                        () -> Requirement.require(false, "factor", "must be below 1"));
        assertEquals(new EntryPlace("factor", 0, ""), fault.place());
        assertEquals("must be below 1", fault.getMessage());
    }

    @Test
    void namesTheFirstTotalThatIsBlankOrShrinks() {
        assertEquals(2, rowRefused(cuts(0, BLANK, 1)));
        assertEquals(3, rowRefused(cuts(0, 1, 0.5)));
        assertEquals(1, rowRefused(cuts(BLANK)));
    }

    private static int rowRefused(Table table) {
        return assertThrows(EntryFault.class, () -> Requirement.runningTotals(table, "near"))
                .place()
                .row();
    }

    @Test
    void passesOverBlankCellsOfReadings() {
        EntryFault fault =
                assertThrows(
                        EntryFault.class,
                        () ->
                                Requirement.requireEach(
                                        cuts(1, BLANK, -2), "near", cut -> cut > 0, "is below 0"));
        assertEquals(new EntryPlace("cuts", 3, "near"), fault.place());
    }

    @Test
    void knowsAnInputFromACell() {
        assertThrows(IllegalArgumentException.class, () -> new EntryPlace("cuts", 1, ""));
        assertThrows(IllegalArgumentException.class, () -> new EntryPlace("cuts", 0, "near"));
        assertThrows(IllegalArgumentException.class, () -> new EntryPlace("", 0, ""));
    }
}
