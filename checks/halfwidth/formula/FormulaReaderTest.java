package halfwidth.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FormulaReaderTest {
    private static FormulaReader.Reading read(String statement) {
        return new FormulaReader("note").read(List.of(statement)).get(0);
    }

    private static String plain(String statement) {
        return PlainFormula.of(read(statement).formula().orElseThrow().term());
    }

    @Test
    void writesBracketsOnlyWhereTheyAreNeeded() {
        assertEquals("a·(b + c)/d", plain("double x = (a * (b + c)) / (d);"));
        assertEquals("a − (b − c)", plain("double x = a - (b - c);"));
        assertEquals("a/(b·c)", plain("double x = a / (b * c);"));
        assertEquals("(−a)^2", plain("double x = pow(-a, 2);"));
        assertEquals("a if (b ≤ 2) = c, else d", plain("double x = b <= 2 == c ? a : d;"));
    }

    @Test
    void writesFunctionsByTheirTradeNames() {
        assertEquals("d·tan(t°)", plain("double x = d * tan(toRadians(t));"));
        assertEquals("arcsin(q)·180/π", plain("double x = toDegrees(asin(q));"));
        assertEquals("sqrt(a^2 + b^2)", plain("double x = Math.hypot(a, b);"));
        assertEquals("u(slope(line))", plain("double x = line.slope().standardUncertainty();"));
    }

    @Test
    void notesWhatIsUsedOnTheSameLines() {
        String noting = read("double x = a\n    * b[i] + f(2);").noting().get(0);

        assertEquals(
                "double x = note.at(0, a)\n    * note.at(1, b[note.at(2, i)]) + note.at(3, f(2));",
                noting);
    }

    @Test
    void putsNumbersInAndTakesTheBranchThatWasTaken() {
        Term term = read("double x = a > 2 ? a / b : 0;").formula().orElseThrow().term();
        Map<Integer, String> noted = Map.of(0, "true", 2, "-3.5", 3, "4");

        Term numbers = PutIn.numbers(term, place -> Optional.ofNullable(noted.get(place)));

        assertEquals("(−3.5)/4", PlainFormula.of(numbers));
    }

    @Test
    void readsACaseOfASwitchAsAChoiceAndNotesWhichItWas() {
        String statement =
                """
                double x = switch (rule) {
                    case "one", "two" -> a;
                    case THREE -> b;
                    default -> c.orElseThrow(() -> new IllegalStateException("no " + c));
                };""";
        FormulaReader.Reading reading = read(statement);

        assertEquals(
                "a if rule = \"one\" or rule = \"two\", else b if rule = THREE, else c",
                plain(statement));
        assertTrue(
                reading.noting()
                        .get(0)
                        .contains(
                                "THREE -> {note.at(0, false);note.at(2, true);yield note.at(3, b);}"),
                reading.noting().get(0));
        Map<Integer, String> noted = Map.of(0, "false", 2, "true", 3, "4");
        Term term = reading.formula().orElseThrow().term();
        Term numbers = PutIn.numbers(term, place -> Optional.ofNullable(noted.get(place)));
        assertEquals("4", PlainFormula.of(numbers));
    }

    @Test
    void tellsOfWhichVariableAMethodIsHandedOn() {
        assertEquals(
                "sum(mapToDouble(rows, column.getDouble), abs, next)",
                plain(
                        "double x = rows.mapToDouble(column::getDouble).sum(Math::abs, this::next);"));
    }

    @Test
    void putsAMethodsOwnVariablesInFull() {
        assertEquals(
                "0 if a^2 + b^2 = 0, else a/(a^2 + b^2)",
                plain(
                        """
                        double share(double a, double b) {
                            if (a < 0) {
                                throw new IllegalArgumentException("below 0");
                            }
                            double squares = pow(a, 2) + pow(b, 2);
                            return squares == 0 ? 0 : a / squares;
                        }"""));
    }

    @Test
    void leavesAMethodThatReturnsFromSeveralPlacesInJava() {
        assertTrue(
                read("double f(double a) { if (a < 0) { return 0; } return a; }")
                        .formula()
                        .isEmpty());
    }

    @Test
    void leavesASwitchThatDoesMoreAsItIs() {
        String statement =
                "double x = switch (rule) { case 1 -> { f(); yield a; } default -> b; };";

        assertTrue(!read(statement).formula().orElseThrow().complete());
    }

    @Test
    void namesATypeWithoutItsPackageAndWhatALengthIsOf() {
        assertEquals(
                "Stream.of(length(a), b)",
                plain("int x = java.util.stream.Stream.of(a.length, b);"));
        assertEquals("between(DAYS, a, b)", plain("int x = ChronoUnit.DAYS.between(a, b);"));
    }

    @Test
    void leavesAloneWhatIsNoNumberOrNoJava() {
        assertTrue(read("String s = \"a\" + b;").formula().isEmpty());
        assertTrue(read("double = 3 +;").noting().isEmpty());
    }

    @Test
    void setsFractionsRootsGreekLettersAndIndices() {
        Term term = read("double x = sqrt(beta) / readingLeft;").formula().orElseThrow().term();

        assertEquals(
                "<mfrac><mrow><msqrt><mi>β</mi></msqrt></mrow>"
                        + "<mrow><msub><mi mathvariant=\"normal\">reading</mi>"
                        + "<mtext>left</mtext></msub></mrow></mfrac>",
                MathFormula.of(term));
    }
}
