package halfwidth;

import halfwidth.command.CommandLineProgram;
import java.io.Console;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The program's entry point. */
public final class Main {
    private Main() {}

    /** Runs the command line and ends with its exit status. */
    public static void main(String[] arguments) {
        // Numbers are written the same way wherever the laptop comes from.
        Locale.setDefault(Locale.ROOT);
        Console console = System.console();
        Charset charset = console == null ? StandardCharsets.UTF_8 : console.charset();
        int status =
                CommandLineProgram.run(
                        arguments, writer(System.out, charset), writer(System.err, charset));
        System.exit(status);
    }

    private static PrintWriter writer(PrintStream stream, Charset charset) {
        return new PrintWriter(stream, true, charset);
    }
}
