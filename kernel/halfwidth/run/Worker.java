package halfwidth.run;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Duration;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * A worker JVM, seen from the program: asks it one thing at a time and ends it when it overruns.
 */
final class Worker implements Closeable {
    private static final String NOT_STARTED = "The Java that runs pages could not start";

    private static final String UNCONFINED = "java -Dhalfwidth.confine=no -jar halfwidth.jar";

    /** Long, since on a busy machine the worker first has to load what it looks with. */
    private static final Duration LOOK = Duration.ofSeconds(4);

    /** Stands in the queue for the end of the pipe. */
    private static final Object GONE = new Object();

    private static final int MESSAGES_BETWEEN_RESETS = 100;

    private final Process process;
    private int asked;
    private final StepMarker marker;
    private final Launch launch;
    private final ErrorOutput errors;
    private final ObjectOutputStream asks;
    private final LinkedBlockingQueue<Object> answers = new LinkedBlockingQueue<>();

    /** Whether its JVM came as far as to the program in it. */
    private volatile boolean started;

    private Worker(Process process, StepMarker marker, Launch launch) throws IOException {
        this.process = process;
        this.marker = marker;
        this.launch = launch;
        this.errors = ErrorOutput.of(process.getErrorStream());
        // Its head stays in the buffer till the first message: the JVM may have ended already.
        this.asks =
                new ObjectOutputStream(
                        new BufferedOutputStream(process.getOutputStream(), 1 << 16));
        Thread reader = new Thread(this::read, "worker-answers");
        reader.setDaemon(true);
        reader.start();
    }

    /**
     * Starts a worker JVM, which gets ready by itself.
     *
     * @throws PageLost if none can be started
     */
    static Worker start(Launch launch) {
        try {
            StepMarker marker = StepMarker.create();
            try {
                return new Worker(launch.start(marker.file()), marker, launch);
            } catch (IOException e) {
                marker.close();
                throw e;
            }
        } catch (IOException e) {
            throw new PageLost(NOT_STARTED + ": " + e.getMessage() + ".");
        }
    }

    private void read() {
        try (InputStream in = process.getInputStream()) {
            started = StartMark.skip(in);
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
        if (!started) {
            return notStarted("nothing came from it within " + seconds(time) + " s");
        }
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
        String how = ended ? "exit status " + process.exitValue() : "its pipe broke";
        close();
        if (!started) {
            return notStarted(how);
        }
        if (statement < 0) {
            return new WorkerLost(
                    statement,
                    "The Java process that runs this page ended while no step ran (" + how + ").",
                    "Try again. If it comes back, close other programs, or let pages use more"
                            + " memory than "
                            + launch.memoryMegabytes()
                            + " MB (--megabytes).");
        }
        return new WorkerLost(
                statement,
                "The step ended the Java process that runs this page (" + how + ").",
                "Remove System.exit, or make the step use less memory than "
                        + launch.memoryMegabytes()
                        + " MB.");
    }

    /** It ended before a page came to it, so that no page can be the reason. */
    private WorkerLost notStarted(String how) {
        String said = errors.text();
        return new WorkerLost(
                -1,
                NOT_STARTED + " (" + how + ")" + (said.isEmpty() ? "" : ": " + said) + ".",
                "Look at the options for every Java on this machine (JAVA_TOOL_OPTIONS,"
                        + " JDK_JAVA_OPTIONS, _JAVA_OPTIONS), at the free memory and at"
                        + " --megabytes, and start the program again"
                        + launch.confined()
                                .map(by -> "; or without " + by.program() + ", by " + UNCONFINED)
                                .orElse("")
                        + ".");
    }

    /** Whether it was started just so. */
    boolean isOf(Launch other) {
        return launch.equals(other);
    }

    /** The index of the statement the worker is, or was last, running; below 0 if none. */
    int statement() {
        return marker.statement();
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
            marker.close();
        } catch (IOException e) {
            // On Windows the file stays mapped until the process is gone; it goes when we exit.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
