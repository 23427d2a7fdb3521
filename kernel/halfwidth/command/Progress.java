package halfwidth.command;

import java.io.Console;
import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Tells on standard error how far long work is, until it is closed. */
final class Progress implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(4);

    private final ScheduledExecutorService teller =
            Executors.newSingleThreadScheduledExecutor(
                    task -> {
                        Thread thread = new Thread(task, "progress");
                        thread.setDaemon(true);
                        return thread;
                    });

    private Progress() {}

    /** Begins to tell; nothing where nobody sits at a terminal. */
    static Progress begin(PrintWriter err, Supplier<String> state) {
        return isTerminal(System.console()) ? every(PATIENCE, err, state) : new Progress();
    }

    /**
     * Tells again and again.
     *
     * @param state how far the work is, on one line
     */
    static Progress every(Duration time, PrintWriter err, Supplier<String> state) {
        Progress progress = new Progress();
        progress.teller.scheduleWithFixedDelay(
                () -> {
                    err.println(state.get());
                    err.flush();
                },
                time.toMillis(),
                time.toMillis(),
                TimeUnit.MILLISECONDS);
        return progress;
    }

    /** From Java 22 on there is a console always, which says itself whether it is a terminal. */
    private static boolean isTerminal(Console console) {
        if (console == null) {
            return false;
        }
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException older) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException unknown) {
            return false;
        }
    }

    @Override
    public void close() {
        teller.shutdownNow();
    }
}
