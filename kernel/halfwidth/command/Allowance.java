package halfwidth.command;

import halfwidth.run.Budget;
import java.time.Duration;
import picocli.CommandLine.Option;

/** The options that say what a page may use before it is stopped. */
final class Allowance {
    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "30",
            description = "Stop a page that runs longer (default ${DEFAULT-VALUE}).")
    private double seconds;

    @Option(
            names = "--megabytes",
            paramLabel = "N",
            defaultValue = "512",
            description = "Memory that a page may use (default ${DEFAULT-VALUE}).")
    private int megabytes;

    @Option(
            names = "--output-bytes",
            paramLabel = "N",
            defaultValue = "200000",
            description = "What a page may print (default ${DEFAULT-VALUE}).")
    private int outputBytes;

    Budget budget() {
        try {
            return new Budget(
                    Duration.ofMillis(Math.round(1000 * seconds)), megabytes, outputBytes);
        } catch (IllegalArgumentException e) {
            throw new Refused("Limit refused: " + e.getMessage() + ".");
        }
    }
}
