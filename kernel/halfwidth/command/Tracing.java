package halfwidth.command;

import static halfwidth.run.Propagation.FEWEST_DRAWS;
import static halfwidth.run.Propagation.MOST_DRAWS;

import halfwidth.method.MethodSources;
import halfwidth.run.InputQuantity;
import halfwidth.run.OpenPage;
import halfwidth.run.Propagation;
import halfwidth.run.Run;
import halfwidth.run.Values;
import halfwidth.show.Sheet;
import halfwidth.show.Traced;
import java.time.Duration;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options that ask where results come from and how uncertain that makes them. */
final class Tracing {
    /** For a sheet on which it stands beside other things; a page of many readings takes longer. */
    private static final Duration SHORT = Duration.ofSeconds(3);

    private static final Duration LONG = Duration.ofHours(1);

    @Option(
            names = "--budget",
            description =
                    "Print the uncertainty budget of the results: what each rests on, how it"
                            + " follows its inputs, and what adds most.")
    private boolean budget;

    @Option(
            names = "--draws",
            paramLabel = "N",
            converter = DrawsReader.class,
            description =
                    "Print the budget and check it by so many random draws of the uncertain"
                            + " inputs, "
                            + FEWEST_DRAWS
                            + " to "
                            + MOST_DRAWS
                            + ".")
    private int draws;

    private static final class DrawsReader implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String typed) {
            boolean whole = typed.matches("\\d{1,6}");
            int number = whole ? Integer.parseInt(typed) : 0;
            if (number < FEWEST_DRAWS || number > MOST_DRAWS) {
                throw new TypeConversionException(
                        "%s draws must be a whole number from %s to %s, as in 10000"
                                .formatted(typed, FEWEST_DRAWS, MOST_DRAWS));
            }
            return number;
        }
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
