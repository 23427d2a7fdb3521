package halfwidth.command;

import halfwidth.page.Filled;
import halfwidth.value.EntryRefused;
import halfwidth.value.NewEntry;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Option;

/** The options that fill a page in; all that is wrong with them is told at once. */
final class Entered {
    @Option(
            names = "--set",
            paramLabel = "name=value",
            description = "Fill in a field, as one would type it: --set \"smallestCut=1/8 in\".")
    private List<Assignment> set = new ArrayList<>();

    @Option(
            names = "--inputs",
            paramLabel = "FILE",
            description =
                    "Fill in fields from a CSV file or an xlsx workbook with the columns"
                            + " name,value.")
    private Path inputs;

    @Option(
            names = "--readings",
            paramLabel = "[NAME=]FILE",
            description =
                    "Fill in a table of readings from a CSV file or an xlsx workbook; without a"
                            + " name, the table that the file is named after. Of a workbook the"
                            + " first sheet is taken, or the one named behind it:"
                            + " cuts=book.xlsx#Pair 3.")
    private List<ReadingsFile> readings = new ArrayList<>();

    @Option(
            names = "--uncertainty",
            paramLabel = "place=value",
            description =
                    "State the standard uncertainty of a field or of each cell in a column of"
                            + " readings: --uncertainty \"phasing.offset 1=0.3\".")
    private List<Assignment> uncertainties = new ArrayList<>();

    private final List<String> refused = new ArrayList<>();

    /** Whether no value is filled in; an uncertainty may be stated all the same. */
    boolean isEmpty() {
        return inputs == null && set.isEmpty() && readings.isEmpty();
    }

    /** Whether nothing is stated at all. */
    boolean saysNothing() {
        return isEmpty() && uncertainties.isEmpty();
    }

    /**
     * Fills a page in.
     *
     * @throws Refused if it does not accept something, naming all that it does not
     */
    Filled into(Filled filled) {
        Filled all = filled;
        if (inputs != null) {
            all = unlessRefused(all, page -> page.withInputs(inputs));
        }
        Set<String> named = new HashSet<>();
        for (Assignment one : set) {
            if (!named.add(one.field())) {
                refused.add("field " + one.field() + " is set twice; set it once");
            }
            all = unlessRefused(all, page -> with(page, one));
        }
        for (ReadingsFile file : readings) {
            all = unlessRefused(all, page -> page.withReadings(file.table(), file.path()));
        }
        for (Assignment one : uncertainties) {
            all = unlessRefused(all, page -> page.uncertain(one.field(), one.typed()));
        }
        if (!refused.isEmpty()) {
            throw new Refused(String.join(System.lineSeparator(), refused));
        }
        return all;
    }

    private static Filled with(Filled filled, Assignment one) {
        Filled with = filled.with(one.field(), one.typed());
        filled.page().fields().stream()
                .filter(field -> field.name().equals(one.field()))
                .forEach(field -> NewEntry.check(field.kind(), one.typed()));
        return with;
    }

    private Filled unlessRefused(Filled filled, UnaryOperator<Filled> entry) {
        try {
            return entry.apply(filled);
        } catch (EntryRefused refusal) {
            refused.add(refusal.getMessage());
            return filled;
        }
    }
}
