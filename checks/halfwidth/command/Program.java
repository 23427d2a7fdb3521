package halfwidth.command;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The program as its users start it: a JVM of its own, with a working directory and two streams.
 *
 * @param status its exit status
 * @param out what it wrote to standard output
 * @param err what it wrote to standard error
 */
record Program(int status, String out, String err) {
    /** Far above the seconds that a command takes, for a machine that has much else to do. */
    private static final long PATIENCE_SECONDS = 300;

    static final Path PROJECT = Path.of("").toAbsolutePath();

    /** Runs a command in the project's folder. */
    static Program run(String... arguments) {
        return in(PROJECT, List.of(), arguments);
    }

    /** Runs a command in a folder, with more options for its JVM. */
    static Program in(Path folder, List<String> jvm, String... arguments) {
        return started(folder, line(jvm, arguments));
    }

    private static Program started(Path folder, List<String> line) {
        try {
            Path out = Files.createTempFile("halfwidth", ".out");
            Path err = Files.createTempFile("halfwidth", ".err");
            Process process =
                    new ProcessBuilder(line)
                            .directory(folder.toFile())
                            .redirectOutput(out.toFile())
                            .redirectError(err.toFile())
                            .start();
            int status = await(process);
            Program program = new Program(status, read(out), read(err));
            Files.delete(out);
            Files.delete(err);
            return program;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Runs a command that the shell lets write no file beyond so many blocks of 512 bytes. */
    static Program limited(int blocks, String... arguments) {
        List<String> line = new ArrayList<>();
        line.addAll(List.of("sh", "-c", "ulimit -f " + blocks + "; exec \"$0\" \"$@\""));
        line.addAll(line(List.of("-XX:-UsePerfData"), arguments));
        return started(PROJECT, line);
    }

    /** Starts a command, closes its standard output unread, and returns its exit status. */
    static int unread(String... arguments) {
        try {
            Process process =
                    new ProcessBuilder(line(List.of(), arguments))
                            .directory(PROJECT.toFile())
                            .redirectError(ProcessBuilder.Redirect.DISCARD)
                            .start();
            process.getInputStream().close();
            return await(process);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Runs a command within this JVM, which spares the start of another. */
    static Program here(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = CommandLineProgram.run(arguments, new PrintWriter(out), new PrintWriter(err));
        return new Program(status, out.toString(), err.toString());
    }

    private static List<String> line(List<String> jvm, String... arguments) {
        List<String> line = new ArrayList<>();
        line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        line.add("-Duser.home=" + System.getProperty("user.home"));
        line.addAll(jvm);
        line.add("-cp");
        line.add(
                Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                        .map(entry -> Path.of(entry).toAbsolutePath().toString())
                        .collect(Collectors.joining(File.pathSeparator)));
        line.add("halfwidth.Main");
        line.addAll(List.of(arguments));
        return line;
    }

    private static int await(Process process) {
        try {
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("it did not end within " + PATIENCE_SECONDS + " s");
            }
            return process.exitValue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    /** The part of its output below a heading, up to the next blank line. */
    String section(String heading) {
        return out.lines()
                .dropWhile(line -> !line.startsWith(heading))
                .takeWhile(line -> !line.isBlank())
                .collect(Collectors.joining("\n"));
    }
}
