package halfwidth.engine;

import halfwidth.formula.Formula;
import halfwidth.formula.FormulaReader;
import halfwidth.run.Script;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** The statements of a page with their formulas. */
final class Formulas {
    private final Map<Script.Code, List<Statement>> statements;
    private final Map<Statement, FormulaReader.Reading> readings = new IdentityHashMap<>();

    Formulas(Map<Script.Code, List<Statement>> statements) {
        this.statements = statements;
        List<Statement> steps =
                statements.values().stream()
                        .flatMap(List::stream)
                        .filter(statement -> !statement.check())
                        .toList();
        FormulaReader reader = new FormulaReader(Noted.class.getName() + ".at");
        List<FormulaReader.Reading> read =
                reader.read(steps.stream().map(Statement::text).toList());
        for (int i = 0; i < steps.size(); i++) {
            readings.put(steps.get(i), read.get(i));
        }
    }

    List<Statement> statements(Script.Code code) {
        return statements.get(code);
    }

    /** A statement's text with notes of the numbers it uses. */
    String noting(Statement statement) {
        FormulaReader.Reading reading = readings.get(statement);
        return reading == null ? statement.text() : reading.noting();
    }

    Map<Integer, Formula> byIndex(List<Program.Line> lines) {
        Map<Integer, Formula> formulas = new HashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            FormulaReader.Reading reading = readings.get(lines.get(i).statement());
            if (reading != null && reading.formula().isPresent()) {
                formulas.put(i, reading.formula().get());
            }
        }
        return formulas;
    }
}
