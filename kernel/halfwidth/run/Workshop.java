package halfwidth.run;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Where pages are opened: keeps worker JVMs, one for each open page, and a warm spare so that the
 * next page, or a page whose worker was lost, need not wait for a JVM to start. Safe for use by
 * several threads.
 */
public final class Workshop implements AutoCloseable {
    private final Budget budget;
    private final int spares;

    /** For pages within their bounds. */
    private final Launch usual;

    /** For pages freed of them, which may do whatever their reader may. */
    private final Launch free;

    private final Deque<Worker> ready = new ArrayDeque<>();
    private boolean closed;

    private Workshop(Budget budget, int spares) {
        this.budget = budget;
        this.spares = spares;
        this.usual = new Launch(budget.memoryMegabytes(), Confinement.ofThisSystem().by());
        this.free = new Launch(budget.memoryMegabytes(), Optional.empty());
        ready.add(Worker.start(usual));
    }

    /** Starts a workshop that always has a warm worker to spare. */
    public static Workshop withSpare(Budget budget) {
        return new Workshop(budget, 1);
    }

    /**
     * Starts a workshop for one page at a time: its first worker starts at once, no other waits.
     */
    public static Workshop withoutSpare(Budget budget) {
        return new Workshop(budget, 0);
    }

    /** Opens a page; it is compiled when it first runs. */
    public OpenPage open(Script script) {
        return new OpenPage(this, script, true);
    }

    /** Opens a page whose steps may do whatever its reader may do. Only for one agreed to. */
    public OpenPage openUnbounded(Script script) {
        return new OpenPage(this, script, false);
    }

    Budget budget() {
        return budget;
    }

    /**
     * @param bounded whether the page is held within its bounds
     */
    synchronized Worker take(boolean bounded) {
        if (closed) {
            throw new IllegalStateException("the workshop is closed");
        }
        if (!bounded && !free.equals(usual)) {
            return Worker.start(free);
        }
        Worker worker = null;
        while (worker == null && !ready.isEmpty()) {
            Worker candidate = ready.poll();
            worker = candidate.alive() ? candidate : null;
        }
        if (worker == null) {
            worker = Worker.start(usual);
        }
        while (ready.size() < spares) {
            ready.add(Worker.start(usual));
        }
        return worker;
    }

    /** Takes a sound worker back from a page that needs it no more. */
    synchronized void giveBack(Worker worker) {
        if (closed || spares > 0 || !ready.isEmpty() || !worker.isOf(usual)) {
            worker.close();
        } else {
            ready.add(worker);
        }
    }

    /** Ends every spare worker; pages still open keep theirs until they are closed. */
    @Override
    public synchronized void close() {
        closed = true;
        ready.forEach(Worker::close);
        ready.clear();
    }
}
