package halfwidth.run;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * A worker JVM, seen from the program: asks it one thing at a time and ends it when it overruns.
 */
final class Worker implements Closeable {
    private static final String MAIN = "halfwidth.engine.WorkerMain";

    /** Long, since on a busy machine the worker first has to load what it looks with. */
    private static final Duration LOOK = Duration.ofSeconds(4);

    /** Stands in the queue for the end of the pipe. */
    private static final Object GONE = new Object();

    private static final int MESSAGES_BETWEEN_RESETS = 100;

    private final Process process;
    private int asked;
    private final Path marker;
    private final ObjectOutputStream asks;
    private final LinkedBlockingQueue<Object> answers = new LinkedBlockingQueue<>();
    private final int memoryMegabytes;

    private Worker(Process process, Path marker, int memoryMegabytes) throws IOException {
        this.process = process;
        this.marker = marker;
        this.memoryMegabytes = memoryMegabytes;
        this.asks =
                new ObjectOutputStream(
                        new BufferedOutputStream(process.getOutputStream(), 1 << 16));
        asks.flush();
        Thread reader = new Thread(this::read, "worker-answers");
        reader.setDaemon(true);
        reader.start();
    }

    /** Starts a worker JVM with the java that runs this program; it gets ready by itself. */
    static Worker start(int memoryMegabytes) {
        try {
            Path marker = Files.createTempFile("halfwidth", ".step");
            Files.write(marker, ByteBuffer.allocate(Integer.BYTES).putInt(-1).array());
            marker.toFile().deleteOnExit();
            ProcessBuilder builder = new ProcessBuilder(command(memoryMegabytes, marker));
            // Where the allocator is glibc's: else each thread's pool keeps what it once had.
            builder.environment().putIfAbsent("MALLOC_ARENA_MAX", "2");
            Process process = builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
            return new Worker(process, marker, memoryMegabytes);
        } catch (IOException e) {
            throw new UncheckedIOException("the worker for pages could not be started", e);
        }
    }

    private static List<String> command(int memoryMegabytes, Path marker) {
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
        archive().ifPresent(file -> command.add("-XX:SharedArchiveFile=" + file));
        command.add("-Djava.awt.headless=true");
        command.add("-Duser.language=en");
        command.add("-Duser.country=");
        command.add("-Dfile.encoding=UTF-8");
        command.add("-cp");
        command.add(classPath());
        command.add(MAIN);
        command.add(marker.toString());
        return command;
    }

    /** The class-data archive that packaging makes beside the jar, for the JVM it was made with. */
    private static Optional<Path> archive() {
        String name = "worker-" + System.getProperty("java.vm.version") + ".jsa";
        return jar().map(jar -> jar.resolveSibling(name)).filter(Files::exists);
    }

    /** As packaged, the program's jar alone, which names its libraries and fits the archive. */
    private static String classPath() {
        return jar().map(Path::toString)
                .orElseGet(() -> absolute(System.getProperty("java.class.path")));
    }

    /** The jar that this program was started from; empty where it runs from a folder of classes. */
    private static Optional<Path> jar() {
        CodeSource source = Worker.class.getProtectionDomain().getCodeSource();
        try {
            return Optional.of(Path.of(source.getLocation().toURI())).filter(Files::isRegularFile);
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }

    private static String absolute(String classPath) {
        List<String> entries = new ArrayList<>();
        for (String entry : classPath.split(File.pathSeparator)) {
            entries.add(Path.of(entry).toAbsolutePath().toString());
        }
        return String.join(File.pathSeparator, entries);
    }

    private void read() {
        try (InputStream in = process.getInputStream()) {
            ObjectInputStream messages = new ObjectInputStream(in);
            messages.setObjectInputFilter(Message.FILTER);
            while (true) {
                answers.add(messages.readObject());
            }
        } catch (IOException | ClassNotFoundException | RuntimeException e) {
            answers.add(GONE);
        }
    }

    /**
     * Asks and waits for the answer.
     *
     * @throws WorkerLost if the worker ends or the time runs out; the worker is then ended
     */
    <T extends Message> T ask(Message message, Class<T> answer, Duration time) throws WorkerLost {
        try {
            if (++asked % MESSAGES_BETWEEN_RESETS == 0) {
                asks.reset(); // else the stream remembers every message it ever carried
            }
            asks.writeObject(message);
            asks.flush();
        } catch (IOException e) {
            throw lost();
        }
        Object got = next(time);
        if (got == null) {
            throw overran(time);
        }
        if (got instanceof Message.Broken broken) {
            close();
            throw new WorkerLost(
                    -1, "The kernel failed; please report this: " + broken.trace(), "");
        }
        if (!answer.isInstance(got)) {
            throw lost();
        }
        return answer.cast(got);
    }

    private Object next(Duration time) {
        try {
            return answers.poll(time.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return null;
        }
    }

    private WorkerLost overran(Duration time) {
        boolean deadlocked = false;
        Thread.State state = Thread.State.RUNNABLE;
        try {
            asks.writeObject(new Message.Look());
            asks.flush();
            if (next(LOOK) instanceof Message.Seen seen) {
                deadlocked = seen.deadlocked();
                state = seen.state();
            }
        } catch (IOException e) {
            // It is ended below in any case; without an answer it counts as computing.
        }
        String doing =
                deadlocked
                        ? "its threads wait for each other (dead lock)"
                        : switch (state) {
                            case BLOCKED, WAITING, TIMED_WAITING -> "it was waiting";
                            default -> "it was still computing";
                        };
        int statement = statement();
        close();
        return new WorkerLost(
                statement,
                "The page ran longer than its limit of %s s; at this step %s."
                        .formatted(seconds(time), doing),
                deadlocked
                        ? "Correct the step: it can never end."
                        : "Correct the step if it can never end, or raise the time limit.");
    }

    private static String seconds(Duration time) {
        return String.valueOf(time.toMillis() / 1000.0).replaceFirst("\\.0$", "");
    }

    private WorkerLost lost() {
        int statement = statement(); // before the step can go on
        boolean ended = false;
        try {
            ended = process.waitFor(2, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        String how = ended ? " (exit status " + process.exitValue() + ")" : "";
        close();
        return new WorkerLost(
                statement,
                "The step ended the Java process that runs this page" + how + ".",
                "Remove System.exit, or make the step use less memory than "
                        + memoryMegabytes
                        + " MB.");
    }

    /** The index of the statement the worker is, or was last, running; below 0 if none. */
    int statement() {
        try {
            return ByteBuffer.wrap(Files.readAllBytes(marker)).getInt();
        } catch (IOException e) {
            return -1;
        }
    }

    /** Ends it from another thread, so that whoever waits for its answer learns that it is lost. */
    void end() {
        // A page that was freed of its bounds may have started some.
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
    }

    boolean alive() {
        return process.isAlive();
    }

    @Override
    public void close() {
        end();
        try {
            process.waitFor(5, TimeUnit.SECONDS);
            Files.deleteIfExists(marker);
        } catch (IOException e) {
            // On Windows the file stays mapped until the process is gone; it goes when we exit.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
