package halfwidth.web;

import halfwidth.run.Workshop;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A desk for each page. The pages used last keep their workers, as many as the machine bears. */
final class Desks implements AutoCloseable {
    private static final long BYTES_FOR_A_WORKER = 300L << 20;
    private static final int FEWEST = 4;
    private static final int MOST = 24;

    private final Workshop workshop;
    private final int busy = workers();
    private final LinkedHashMap<String, Desk> used = new LinkedHashMap<>(16, 0.75f, true);

    Desks(Workshop workshop) {
        this.workshop = workshop;
    }

    /** Workers for half of the machine's memory. */
    private static int workers() {
        long bytes =
                ManagementFactory.getOperatingSystemMXBean()
                                instanceof com.sun.management.OperatingSystemMXBean machine
                        ? machine.getTotalMemorySize()
                        : 0;
        return (int) Math.max(FEWEST, Math.min(MOST, bytes / 2 / BYTES_FOR_A_WORKER));
    }

    /** The desk of a page; the one that was not used for longest may have to rest. */
    Desk of(String page) {
        List<Desk> resting = new ArrayList<>();
        Desk desk;
        synchronized (used) {
            desk = used.computeIfAbsent(page, name -> new Desk(workshop));
            for (Map.Entry<String, Desk> old : List.copyOf(used.entrySet())) {
                if (used.size() > busy) {
                    resting.add(used.remove(old.getKey()));
                }
            }
        }
        resting.forEach(Desk::rest);
        return desk;
    }

    @Override
    public void close() {
        synchronized (used) {
            used.values().forEach(Desk::stop);
            used.values().forEach(Desk::rest);
        }
    }
}
