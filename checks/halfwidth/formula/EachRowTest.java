package halfwidth.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a statement computes row by row, and where its notes are put. */
class EachRowTest {
    private static FormulaReader.Reading read(String statement) {
        return new FormulaReader("notes").read(List.of(statement)).get(0);
    }

    @Test
    void readsTheRuleThatIsHandedToAMethod() {
        FormulaReader.Reading read = read("double[] half = each(n -> a[n] / 2);");

        EachRow rule = read.rows().get(0);
        assertEquals(List.of("n"), rule.of());
        assertEquals("a[n]/2", PlainFormula.of(rule.parts().get(0).term()));
        assertEquals(
                "double[] half = each(n -> notes.row(0, notes.of(notes.begin(), n), notes.at(1,"
                        + " a[notes.at(2, n)]) / 2));",
                read.noting().get(0));
    }

    @Test
    void readsWhatALoopKeepsAddsAndAppends() {
        EachRow loop =
                read("""
                                void fill() {
                                    for (int n = 0; n < 3; n++) {
                                        double x = 2 * n;
                                        if (n > 1) {
                                            sum += x;
                                        }
                                        column.append(x / 3);
                                        values[n] = x;
                                    }
                                }""")
                        .rows()
                        .get(0);

        assertEquals(List.of("n"), loop.of());
        assertEquals(
                List.of("x", "added to sum", "column", "values"),
                loop.parts().stream().map(EachRow.Part::name).toList());
        assertEquals("2·n", PlainFormula.of(loop.parts().get(0).term()));
    }

    @Test
    void keepsEveryLineWhereItWas() {
        String method = "void f() {\n    for (double x : all)\n        sum += x;\n}";

        String noting = read(method).noting().get(0);

        assertEquals(
                "void f() {\n    {for (double x : all)\n        {notes.turn(0);notes.of(x);sum += notes.at(1,"
                        + " x);}notes.end(0);}\n}",
                noting);
    }

    @Test
    void leavesRowsOutOfTheSecondChoice() {
        List<String> noting = read("double x = b * max(n -> n + 1);").noting();

        assertEquals(2, noting.size());
        assertTrue(noting.get(0).contains("notes.row("), noting.get(0));
        assertEquals("double x = notes.at(0, b) * notes.at(1, max(n -> n + 1));", noting.get(1));
    }

    @Test
    void passesOverALoopThatOnlyAsksARule() {
        EachRow loop =
                read("void f() { for (int n = 0; n < 3; n++) { v[n] = rule.applyAsDouble(n); } }")
                        .rows()
                        .get(0);

        assertTrue(!loop.computes());
    }
}
