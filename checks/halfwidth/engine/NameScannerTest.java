package halfwidth.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NameScannerTest {
    private static NameScanner.Names names(String text) {
        return NameScanner.names(new NameScanner.Source(text, false));
    }

    @Test
    void findsWhatAnInitializerUses() {
        NameScanner.Names names = names("double cut = fraction * aim / phaseConstant;");
        assertEquals(Set.of("fraction", "aim", "phaseConstant"), names.used());
        assertEquals(Set.of("cut"), names.declared());
        assertEquals(Set.of(), names.changed());
    }

    @Test
    void findsWhatAnExpressionAloneUses() {
        assertEquals(Set.of("aim", "cut"), names("aim + cut;").used());
    }

    @Test
    void aMembersNameIsNotAUse() {
        assertEquals(Set.of("table"), names("int n = table.rowCount();").used());
    }

    @Test
    void assignmentsOfEveryKindChange() {
        assertEquals(Set.of("a"), names("a = 1;").assigned());
        assertEquals(Set.of("a"), names("a += b;").assigned());
        assertEquals(Set.of("a"), names("if (b > 0) { a++; }").assigned());
        assertEquals(Set.of("a"), names("a[2].x = b;").changed());
    }

    @Test
    void callMadeForItsEffectChangesItsReceiverAndArguments() {
        assertEquals(Set.of("table", "column"), names("table.addColumns(column);").changed());
        assertEquals(Set.of("table"), names("table.row(3).first().set(k + 1);").changed());
        assertEquals(Set.of("array"), names("fill(array, 2 * k);").changed());
    }

    @Test
    void readsMembers() {
        NameScanner.Names method =
                NameScanner.namesOfEach(
                                List.of(
                                        new NameScanner.Source("double a = 1;", false),
                                        new NameScanner.Source(
                                                "double twice(double x) { return x * factor; }",
                                                true)))
                        .get(1);
        assertTrue(method.used().contains("factor"));
        assertTrue(method.declared().contains("twice"));
    }
}
