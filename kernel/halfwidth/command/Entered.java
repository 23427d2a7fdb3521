package halfwidth.command;

import halfwidth.page.Filled;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;

/** The options that fill a page in. */
final class Entered {
    @Option(
            names = "--set",
            paramLabel = "name=value",
            description = "Fill in a field, as one would type it: --set \"smallestCut=1/8 in\".")
    private Map<String, String> set = new LinkedHashMap<>();

    @Option(
            names = "--inputs",
            paramLabel = "FILE.csv",
            description = "Fill in fields from a CSV file with the columns name,value.")
    private Path inputs;

    @Option(
            names = "--readings",
            paramLabel = "[NAME=]FILE.csv",
            description =
                    "Fill in a table of readings from a CSV file; without a name, the table that"
                            + " the file is named after.")
    private List<ReadingsFile> readings = new ArrayList<>();

    boolean isNothing() {
        return inputs == null && set.isEmpty() && readings.isEmpty();
    }

    Filled over(Filled before) {
        Filled filled = inputs == null ? before : before.withInputs(inputs);
        for (Map.Entry<String, String> field : set.entrySet()) {
            filled = filled.with(field.getKey(), field.getValue());
        }
        for (ReadingsFile file : readings) {
            filled = filled.withReadings(file.table(), file.path());
        }
        return filled;
    }
}
