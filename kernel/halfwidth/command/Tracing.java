package halfwidth.command;

import halfwidth.method.MethodSources;
import halfwidth.run.InputQuantity;
import halfwidth.run.OpenPage;
import halfwidth.run.Propagation;
import halfwidth.run.Run;
import halfwidth.run.Values;
import halfwidth.show.Sheet;
import halfwidth.show.Traced;
import java.time.Duration;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options that ask where results come from and how uncertain that makes them. */
final class Tracing {
    private static final int FEWEST = 1000;
    private static final int MOST = 100_000;

    /** For a sheet on which it stands beside other things; a page of many readings takes longer. */
    private static final Duration SHORT = Duration.ofSeconds(3);

    private static final Duration LONG = Duration.ofHours(1);

    @Option(
            names = "--budget",
            description =
                    "Print the uncertainty budget of the results: what each rests on, how it"
                            + " follows its inputs, and what adds most.")
    private boolean budget;

    private int draws;

    @Option(
            names = "--draws",
            paramLabel = "N",
            description =
                    "Print the budget and check it by so many random draws of the uncertain"
                            + " inputs, 1000 to 100000.")
    void draws(int number) {
        if (number < FEWEST || number > MOST) {
            throw new TypeConversionException(
                    number + " draws must be " + FEWEST + " to " + MOST + ", as in 10000");
        }
        draws = number;
    }

    boolean wanted() {
        return budget || draws > 0;
    }

    /** Runs the open page again with changed inputs. */
    Traced of(Sheet sheet, OpenPage open) {
        Propagation propagation =
                open.propagate(
                        Values.of(sheet.filled()),
                        InputQuantity.of(sheet.filled()),
                        draws,
                        wanted() ? LONG : SHORT);
        return new Traced(sheet, propagation, methods(sheet));
    }

    private static MethodSources methods(Sheet sheet) {
        return MethodSources.of(
                sheet.page(), sheet.run().steps().stream().map(Run.Ran::step).toList());
    }
}
