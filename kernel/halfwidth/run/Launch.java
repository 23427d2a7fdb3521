package halfwidth.run;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;

/**
 * How a worker's JVM is started: with the java that runs this program.
 *
 * @param memoryMegabytes its heap (MB)
 * @param confined by what it is held below this program; empty for not at all
 */
record Launch(int memoryMegabytes, Optional<Bubblewrap> confined) {
    private static final String MAIN = "halfwidth.engine.WorkerMain";

    /** Such an option counts after those of the command line. */
    private static final String LAST_OPTIONS = "_JAVA_OPTIONS";

    /**
     * Linux ends what is to die with its parent when the thread ends that started it, so that
     * thread has to last as long as the program.
     */
    private static final Executor STARTER =
            Executors.newSingleThreadExecutor(
                    task -> {
                        Thread thread = new Thread(task, "worker-starter");
                        thread.setDaemon(true);
                        return thread;
                    });

    Process start(Path marker) throws IOException {
        if (confined.isEmpty()) {
            return builder(java(marker)).start();
        }
        List<Path> written = new ArrayList<>(List.of(marker));
        compiled().ifPresent(written::add);
        List<String> line = confined.get().before(java(marker), ProgramFiles.read(), written);
        try {
            return CompletableFuture.supplyAsync(() -> started(builder(line)), STARTER).join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof UncheckedIOException wrapped) {
                throw wrapped.getCause();
            }
            throw e;
        }
    }

    private static Process started(ProcessBuilder builder) {
        try {
            return builder.start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ProcessBuilder builder(List<String> line) {
        ProcessBuilder builder = new ProcessBuilder(line);
        // Where the allocator is glibc's: else each thread's pool keeps what it once had.
        builder.environment().putIfAbsent("MALLOC_ARENA_MAX", "2");
        builder.environment()
                .computeIfPresent(LAST_OPTIONS, (name, options) -> options + " -Xlog:disable");
        return builder;
    }

    /** The folder of compiled pages, made first, since a confined worker cannot make it. */
    private static Optional<Path> compiled() {
        try {
            return Optional.of(Files.createDirectories(ProgramFiles.compiled()));
        } catch (IOException e) {
            return Optional.empty(); // pages are compiled each time
        }
    }

    private List<String> java(Path marker) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-Xmx" + memoryMegabytes + "m");
        command.add("-XX:+UseSerialGC");
        // What compiling a page took is given back.
        command.add("-XX:MinHeapFreeRatio=10");
        command.add("-XX:MaxHeapFreeRatio=30");
        // What the JVM itself has to say must not get between the messages on standard output.
        command.add("-XX:+DisplayVMOutputToStderr");
        command.add("-Xlog:disable");
        // Else a worker that is ended leaves a file of it behind.
        command.add("-XX:-UsePerfData");
        ProgramFiles.archive().ifPresent(file -> command.add("-XX:SharedArchiveFile=" + file));
        command.add("-Djava.awt.headless=true");
        command.add("-Duser.language=en");
        command.add("-Duser.country=");
        command.add("-Dfile.encoding=UTF-8");
        command.add("-cp");
        command.add(
                ProgramFiles.classPath().stream()
                        .map(Path::toString)
                        .collect(Collectors.joining(File.pathSeparator)));
        command.add(MAIN);
        command.add(marker.toString());
        return command;
    }
}
