package halfwidth.engine;

import halfwidth.bounds.Bounds;
import halfwidth.plot.Plot;
import halfwidth.run.Message;
import halfwidth.run.Propagation;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import tech.tablesaw.api.Table;

/** The open page of a worker: compiled once, run again for each set of values. */
final class Bench {
    private static final Script SAMPLE =
            new Script(
                    List.of(
                            new Script.Variable(1, "given", "java.lang.Double"),
                            new Script.Code(
                                    2,
                                    """
                                    double twice = 2 * given; // 1
                                    double half(double whole) { return whole / 2; }
                                    List<Double> both = List.of(half(given), sqrt(twice));
                                    """,
                                    false)),
                    List.of("twice"));

    private final Capture capture;
    private final IntConsumer at;
    private final CompiledPages pages = CompiledPages.besideProgram();

    /** Made ahead for a page to come; null where there is none. */
    private Compiler compiler;

    private int outputLimit;
    private Program program;
    private Effects effects;
    private Linked linked;
    private Map<Integer, Object> values = Map.of();
    private volatile Thread pageThread;

    Bench(Capture capture, IntConsumer at) {
        this.capture = capture;
        this.at = at;
    }

    /** Gets ready for the first page. */
    void prepare() {
        for (Runnable first : List.<Runnable>of(Bounds::prepare, () -> Table.create("warm"))) {
            Thread warm = new Thread(first, "warm");
            warm.setDaemon(true);
            warm.start();
        }
    }

    /**
     * Uses what is slow when first used, on a page that no one sees. For a spare worker that has
     * time on its hands; a page that already waits is better served at once.
     */
    void warmUp() {
        if (program == null) {
            try (Compiler sample = new Compiler()) {
                Linked.of(Admission.of(sample.compile(SAMPLE)));
            }
            compiler = new Compiler();
        }
    }

    /** Opens, runs and draws a page once, so that every class a page needs is loaded. */
    void rehearse() {
        prepare();
        compile(SAMPLE); // first, since opening may find it compiled before
        open(new Message.Open(SAMPLE, 1000, true));
        answer(new Message.Go(new Values(Map.of("given", 1.0), true), Map.of(), true));
        Plot.of("rehearsal").points("given", new double[] {0, 1}, new double[] {0, 1}).png();
    }

    Message answer(Message message) {
        if (message instanceof Message.Open open) {
            return open(open);
        }
        if (message instanceof Message.Go go) {
            return onPageThread(() -> go(go));
        }
        if (message instanceof Message.Propagate propagate) {
            return onPageThread(() -> propagate(propagate));
        }
        if (message instanceof Message.Draw draw) {
            return draw(draw);
        }
        throw new IllegalArgumentException("a worker does not answer " + message);
    }

    private Message open(Message.Open open) {
        outputLimit = open.outputLimit();
        Program found = pages.find(open.script()).orElseGet(() -> compile(open.script()));
        // Kept ones too, since whoever can write the folder could put any class there.
        program = open.bounded() ? Admission.of(found) : found;
        effects = new Effects(program);
        linked = null;
        values = Map.of();
        return new Message.Opened();
    }

    /** Compiles with a compiler of its own: what one page declares, no other may see. */
    private Program compile(Script script) {
        try (Compiler used = compiler == null ? new Compiler() : compiler) {
            compiler = null;
            Program compiled = used.compile(script);
            pages.keep(script, compiled);
            return compiled;
        }
    }

    private Message go(Message.Go go) {
        PageRun pageRun = new PageRun(program, effects, linked());
        Run run = pageRun.run(go, capture, at);
        values = pageRun.values();
        return new Message.Ran(run, pageRun.spoiled());
    }

    private Linked linked() {
        if (linked == null || program.declaresTypes()) {
            linked = Linked.of(program);
        }
        return linked;
    }

    /** Runs the page again and again; what the last run gave to draw stays as it is. */
    private Message propagate(Message.Propagate ask) {
        Ambient ambient = new Ambient();
        boolean[] spoiled = {false};
        Replays replays =
                (go, brief) -> {
                    capture.reset(outputLimit);
                    PageRun pageRun = new PageRun(program, effects, linked());
                    pageRun.showOnlySmallValues(brief);
                    Run run = pageRun.run(go, capture, at);
                    spoiled[0] |= pageRun.spoiled();
                    ambient.restore();
                    return run;
                };
        Propagation found =
                new Propagating(ask, new Ancestry(program, effects), replays).propagation();
        return new Message.Propagated(found, spoiled[0]);
    }

    /** Does what needs the page's thread group; a step's threads then show as left over. */
    private Message onPageThread(Supplier<Message> work) {
        Ambient ambient = new Ambient();
        capture.reset(outputLimit);
        Message[] answer = new Message[1];
        Thread thread = new Thread(new ThreadGroup("page"), () -> answer[0] = work.get(), "page");
        pageThread = thread;
        thread.start();
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        ambient.restore();
        if (answer[0] == null) {
            throw new IllegalStateException("the page's thread ended without an answer");
        }
        return answer[0];
    }

    private Message draw(Message.Draw draw) {
        Object value = values.get(draw.statement());
        if (value instanceof Optional<?> optional) {
            value = optional.orElse(null);
        }
        if (!(value instanceof Plot plot)) {
            return new Message.Drawn(new byte[0], "statement " + draw.statement() + " is no plot");
        }
        try {
            return new Message.Drawn(plot.png(draw.width(), draw.height(), draw.scale()), "");
        } catch (RuntimeException e) {
            return new Message.Drawn(new byte[0], "the plot could not be drawn: " + e.getMessage());
        }
    }

    /** What the page's thread is doing; asked from another thread. */
    Message look() {
        Thread thread = pageThread;
        if (thread == null) {
            return new Message.Seen(false, Thread.State.NEW);
        }
        long[] locked = ManagementFactory.getThreadMXBean().findDeadlockedThreads();
        return new Message.Seen(locked != null, thread.getState());
    }
}
