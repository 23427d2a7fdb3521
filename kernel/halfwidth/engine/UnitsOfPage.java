package halfwidth.engine;

import halfwidth.proof.Finding;
import halfwidth.proof.PageProof;
import halfwidth.proof.PageStatement;
import halfwidth.run.Outcome;
import halfwidth.run.Prelude;
import halfwidth.run.Proof;
import halfwidth.run.Script;
import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The statements of a page after their units were worked out.
 *
 * @param lines with a failure where the stated unit cannot be right
 * @param proofs by the index of each step whose value is a number
 */
record UnitsOfPage(List<Program.Line> lines, Map<Integer, Proof> proofs) {

    static UnitsOfPage of(Script script, List<Program.Line> lines) {
        Map<String, Map<String, String>> inputs = new HashMap<>();
        script.pieces().stream()
                .filter(Script.Variable.class::isInstance)
                .map(Script.Variable.class::cast)
                .forEach(input -> inputs.put(input.name(), input.units()));
        Map<Integer, Finding> findings =
                PageProof.of(
                        Prelude.IMPORTS,
                        lines.stream().map(one -> statement(one, inputs)).toList());
        Map<Integer, Proof> proofs = new HashMap<>();
        findings.forEach((index, finding) -> proofs.put(index, finding.proof()));
        List<Program.Line> judged = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            judged.add(shown(judged(lines.get(i), findings.get(i)), script.units()));
        }
        return new UnitsOfPage(judged, proofs);
    }

    private static Program.Line judged(Program.Line line, Finding finding) {
        if (finding == null || finding.refused().isEmpty() || line.problem().isPresent()) {
            return line;
        }
        Outcome.Failed failed =
                line.statement()
                        .failed(
                                finding.refused().get(),
                                "",
                                "Correct the formula, or the unit in the comment behind it.");
        return line.with(failed);
    }

    /** A step whose result is shown in another unit than it states would mislead. */
    private static Program.Line shown(Program.Line line, Map<String, List<String>> units) {
        Optional<Unit> stated = Unit.find(line.step().unit());
        if (line.problem().isPresent() || stated.isEmpty() || line.statement().check()) {
            return line;
        }
        return units.getOrDefault(line.step().name(), List.of()).stream()
                .filter(unit -> Unit.find(unit).filter(stated.get()::sameSize).isEmpty())
                .findFirst()
                .map(unit -> line.with(shownOtherwise(line, unit)))
                .orElse(line);
    }

    private static Outcome.Failed shownOtherwise(Program.Line line, String unit) {
        return line.statement()
                .failed(
                        "The step states the unit %s, and the results show %s in %s."
                                .formatted(line.step().unit(), line.step().name(), unit),
                        "",
                        "Give both the same unit, or convert in a step of its own.");
    }

    private static PageStatement statement(
            Program.Line line, Map<String, Map<String, String>> inputs) {
        CompiledStatement compiled = line.compiled().orElse(null);
        boolean input = line.statement().hidden();
        boolean check = line.statement().check();
        PageStatement.Kind kind =
                compiled == null || check && !line.member() && compiled.name().isEmpty()
                        ? PageStatement.Kind.LEFT_OUT
                        : kind(line, compiled);
        return new PageStatement(
                kind,
                input ? "" : line.statement().text(),
                line.name(),
                compiled == null ? "" : compiled.type(),
                compiled != null && compiled.number() && !check && !input,
                line.step().unit(),
                input ? inputs.getOrDefault(line.name(), Map.of()) : Map.of());
    }

    private static PageStatement.Kind kind(Program.Line line, CompiledStatement compiled) {
        if (line.statement().hidden()) {
            return PageStatement.Kind.INPUT;
        }
        if (line.member()) {
            return PageStatement.Kind.MEMBER;
        }
        if (compiled.entryPoint().isEmpty()) {
            return PageStatement.Kind.IMPORT;
        }
        return line.names().declared().contains(compiled.name())
                ? PageStatement.Kind.VARIABLE
                : PageStatement.Kind.OTHER;
    }
}
