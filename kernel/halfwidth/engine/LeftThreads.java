package halfwidth.engine;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ForkJoinWorkerThread;

/** Finds threads that a step started and did not end. */
final class LeftThreads {
    private static final long GRACE_MILLIS = 200;

    private final ThreadGroup group;
    private final Set<Thread> known = new HashSet<>();

    LeftThreads(ThreadGroup group) {
        this.group = group;
    }

    /** The names of threads still alive since the last call, after a short grace. */
    List<String> found() {
        if (group.activeCount() <= 1) {
            return List.of();
        }
        Thread[] threads = new Thread[group.activeCount() + 16];
        group.enumerate(threads);
        return Arrays.stream(threads)
                .filter(Objects::nonNull)
                .filter(thread -> thread != Thread.currentThread())
                // The common pool's threads belong to the JVM, whoever first used it.
                .filter(thread -> !(thread instanceof ForkJoinWorkerThread))
                .filter(known::add)
                .filter(LeftThreads::stays)
                .map(Thread::getName)
                .toList();
    }

    private static boolean stays(Thread thread) {
        try {
            thread.join(GRACE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return thread.isAlive();
    }
}
