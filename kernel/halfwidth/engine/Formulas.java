package halfwidth.engine;

import halfwidth.formula.EachRow;
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
        FormulaReader reader = new FormulaReader(Noted.class.getName());
        List<FormulaReader.Reading> read =
                reader.read(steps.stream().map(Statement::text).toList());
        for (int i = 0; i < steps.size(); i++) {
            readings.put(steps.get(i), read.get(i));
        }
    }

    List<Statement> statements(Script.Code code) {
        return statements.get(code);
    }

    /** A statement's text with notes of the numbers it uses, that which notes most first. */
    List<String> noting(Statement statement) {
        FormulaReader.Reading reading = readings.get(statement);
        return reading == null ? List.of() : reading.noting();
    }

    /** What the page computes row by row, by the place of its notes. */
    Map<Integer, EachRow> rows() {
        Map<Integer, EachRow> rows = new HashMap<>();
        readings.values().stream()
                .flatMap(reading -> reading.rows().stream())
                .filter(EachRow::computes)
                .forEach(each -> rows.put(each.place(), each));
        return rows;
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
