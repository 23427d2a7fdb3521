package halfwidth.command;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in a few lines what is wrong with a command line, and where help is. */
final class UsageError {
    private UsageError() {}

    /** Explains it and returns the exit status. */
    static int explain(ParameterException wrong, PrintWriter err) {
        err.println(message(wrong));
        if (!UnmatchedArgumentException.printSuggestions(wrong, err)) {
            commands(wrong).ifPresent(err::println);
        }
        err.printf("See %s --help.%n", wrong.getCommandLine().getCommandSpec().qualifiedName());
        return wrong.getCommandLine().getCommandSpec().exitCodeOnInvalidInput();
    }

    /** All commands, where something is typed in the place of one. */
    private static Optional<String> commands(ParameterException wrong) {
        Set<String> names = wrong.getCommandLine().getSubcommands().keySet();
        return wrong instanceof UnmatchedArgumentException && !names.isEmpty()
                ? Optional.of("The commands are " + String.join(", ", names) + ".")
                : Optional.empty();
    }

    private static String message(ParameterException wrong) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            return "Not understood: " + String.join(" ", unmatched.getUnmatched());
        }
        return wrong.getMessage()
                .replace("is not a double", "is no number")
                .replace("is not an int", "is no whole number");
    }
}
