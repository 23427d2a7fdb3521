package halfwidth.job;

import halfwidth.page.Column;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.value.Kind;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A process that enters block after block into a job, without a pause, until it is killed. Each
 * block sets all cells of a column to its number, which is printed once it is acknowledged.
 */
final class StreamingWriter {
    static final int ROWS = 5;
    static final Part.Readings TABLE =
            new Part.Readings(
                    1, "cuts", List.of(new Column("block", new Kind.Count(), "1")), List.of());
    static final Page PAGE = new Page("cuts", Path.of("cuts.md"), "Cuts", List.of(TABLE));

    private StreamingWriter() {}

    static List<Change> block(long number) {
        return IntStream.rangeClosed(1, ROWS)
                .mapToObj(row -> Change.to(Place.cell("cuts", row, "block"), number + ""))
                .toList();
    }

    /** Starts with the block after the last one of the job. */
    public static void main(String[] arguments) {
        PrintStream acknowledged = System.out;
        try (Job job = Job.open(Path.of(arguments[0]))) {
            for (long number = job.last() / ROWS + 1; ; number++) {
                job.enter(PAGE, "", block(number));
                acknowledged.println(number);
                acknowledged.flush();
            }
        }
    }
}
