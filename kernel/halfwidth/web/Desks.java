package halfwidth.web;

import halfwidth.page.Page;
import halfwidth.run.OpenPage;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * A desk for each page. The pages that ran last keep their workers, as many as memory allows; a
 * page that was not run for long gives its worker up, and takes another when it runs again.
 */
final class Desks implements AutoCloseable {
    private static final long BYTES_FOR_A_WORKER = 300L << 20;
    private static final int FEWEST = 2;

    /** With the program and a spare they take 1.5 GB. */
    private static final int MOST = 4;

    /** Desks that rest remember what they ran; so do those of pages that are being changed. */
    private static final int REMEMBERED = 60;

    private static final Duration IDLE = Duration.ofMinutes(3);
    private static final Duration LOOK = Duration.ofSeconds(5);

    private final Function<Page, OpenPage> opening;
    private final int awake = workers();
    private final LinkedHashMap<String, Desk> used = new LinkedHashMap<>(16, 0.75f, true);

    /** A thread of its own, since a desk is left alone by whoever is at another. */
    private final ScheduledExecutorService keeper =
            Executors.newSingleThreadScheduledExecutor(
                    task -> {
                        Thread thread = new Thread(task, "desks");
                        thread.setDaemon(true);
                        return thread;
                    });

    Desks(Function<Page, OpenPage> opening) {
        this.opening = opening;
        keeper.scheduleWithFixedDelay(
                () -> rest(IDLE), LOOK.toMillis(), LOOK.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Workers for an eighth of the machine's memory. */
    private static int workers() {
        long bytes =
                ManagementFactory.getOperatingSystemMXBean()
                                instanceof com.sun.management.OperatingSystemMXBean machine
                        ? machine.getTotalMemorySize()
                        : 0;
        return (int) Math.max(FEWEST, Math.min(MOST, bytes / 8 / BYTES_FOR_A_WORKER));
    }

    /** How many pages keep their workers. */
    int awake() {
        return awake;
    }

    /** The desk of a page. */
    Desk of(String page) {
        synchronized (used) {
            Desk desk = used.computeIfAbsent(page, name -> new Desk(opening));
            if (used.size() > REMEMBERED) {
                Desk oldest = used.remove(used.keySet().iterator().next());
                keeper.execute(oldest::rest);
            }
            return desk;
        }
    }

    /** Lets all desks rest but those that ran last, and of these all that are idle for so long. */
    void rest(Duration idle) {
        List<Desk> desks;
        synchronized (used) {
            desks = List.copyOf(used.values());
        }
        List<Desk> busy =
                desks.stream()
                        .filter(Desk::isAwake)
                        .sorted(Comparator.comparing(Desk::idle))
                        .toList();
        for (int i = 0; i < busy.size(); i++) {
            if (i >= awake || busy.get(i).idle().compareTo(idle) > 0) {
                busy.get(i).restUnlessRunning();
            }
        }
    }

    @Override
    public void close() {
        keeper.shutdownNow();
        synchronized (used) {
            used.values().forEach(Desk::stop);
            used.values().forEach(Desk::rest);
        }
    }
}
