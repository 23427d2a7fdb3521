package halfwidth;

import halfwidth.command.CommandLineProgram;
import java.io.Console;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The program's entry point. */
public final class Main {
    private Main() {}

    /** Runs the command line and ends with its exit status. */
    public static void main(String[] arguments) {
        // Numbers are written the same way wherever the laptop comes from.
        Locale.setDefault(Locale.ROOT);
        Console console = System.console();
        Charset charset = console == null ? StandardCharsets.UTF_8 : console.charset();
        PrintWriter err = writer(System.err, charset);
        List<String> missing = missingModules();
        if (!missing.isEmpty()) {
            err.printf(
                    "Halfwidth needs a whole JDK, 17 or newer; the Java in %s is without %s. Start it"
                            + " with the java of a JDK.%n",
                    System.getProperty("java.home"), String.join(", ", missing));
            System.exit(1);
        }
        System.exit(CommandLineProgram.run(arguments, writer(System.out, charset), err));
    }

    /** Parts of Java that a runtime for other programs may lack. */
    private static List<String> missingModules() {
        return Stream.of("jdk.compiler", "jdk.jshell", "jdk.httpserver", "java.desktop", "java.xml")
                .filter(name -> ModuleLayer.boot().findModule(name).isEmpty())
                .toList();
    }

    private static PrintWriter writer(PrintStream stream, Charset charset) {
        return new PrintWriter(stream, true, charset);
    }
}
