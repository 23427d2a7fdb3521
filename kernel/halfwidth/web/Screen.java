package halfwidth.web;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import halfwidth.job.Job;
import halfwidth.page.Pages;
import halfwidth.run.Workshop;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;

/** Serves the notebook of a job to browsers on this machine. */
public final class Screen implements AutoCloseable {
    /** Windows of one browser ask for no more than a few things at once. */
    private static final int AT_ONCE = 16;

    /** How long a key gets in. */
    public static final Duration KEY_LIFE = Duration.ofMinutes(10);

    /** How long a request may take to arrive (s). */
    static final int ARRIVAL = 10;

    private final HttpServer server;
    private final ExecutorService threads;
    private final Notebook notebook;
    private final Door door;
    private final Answers answers;
    private final Semaphore turns = new Semaphore(AT_ONCE, true);

    private Screen(HttpServer server, Door door, Notebook notebook) {
        this.server = server;
        this.notebook = notebook;
        this.door = door;
        this.answers = new Answers(notebook);
        this.threads =
                // As many as there are requests: else half-sent ones could keep all others waiting.
                Executors.newCachedThreadPool(
                        task -> {
                            Thread thread = new Thread(task, "screen");
                            thread.setDaemon(true);
                            return thread;
                        });
        server.setExecutor(threads);
        server.createContext("/", this::answer);
    }

    /**
     * Starts to serve on the loopback address. What is given is closed with the screen.
     *
     * @param shipped the pages that come with the program
     * @param port 0 for any that is free
     * @param version the program's version, for the records
     * @throws IOException if the port is not free
     */
    public static Screen open(Job job, Pages shipped, Workshop workshop, Listening listening)
            throws IOException {
        // Without it each answer waits for the browser's acknowledgement of the one before.
        System.setProperty("sun.net.httpserver.nodelay", "true");
        System.setProperty("sun.net.httpserver.maxReqTime", Integer.toString(ARRIVAL));
        // What a refused request has still to send is not waited for.
        System.setProperty("sun.net.httpserver.drainAmount", "0");
        HttpServer server =
                HttpServer.create(
                        new InetSocketAddress(InetAddress.getLoopbackAddress(), listening.port()),
                        0);
        Door door = new Door(server.getAddress().getPort(), InstantSource.system());
        Notebook notebook = new Notebook(job, shipped, workshop, listening.version(), door.root());
        Screen screen = new Screen(server, door, notebook);
        server.start();
        return screen;
    }

    /**
     * Where it listens and as what.
     *
     * @param port 0 for any that is free
     * @param version the program's version, for the records
     */
    public record Listening(int port, String version) {}

    /** A new address to open, with a key that gets in once, within {@link #KEY_LIFE}. */
    public String address() {
        return door.address();
    }

    int port() {
        return server.getAddress().getPort();
    }

    /** The path that all addresses of this session are under. */
    String root() {
        return door.root();
    }

    private void answer(HttpExchange exchange) throws IOException {
        reply(exchange).send(exchange);
    }

    private Reply reply(HttpExchange exchange) throws IOException {
        try {
            Request request = Request.head(exchange);
            Optional<Reply> entering = door.check(request);
            return entering.isPresent()
                    ? entering.get()
                    : inTurn(request.whole().below(door.root()));
        } catch (RuntimeException | Error refused) {
            // An error, too: without an answer the browser would wait for ever.
            Request.takeIn(exchange);
            return Complaint.of(refused, exchange.getRequestMethod());
        }
    }

    private Reply inTurn(Request request) {
        turns.acquireUninterruptibly();
        try {
            return answers.to(request);
        } finally {
            turns.release();
        }
    }

    /** Ends all that was started. */
    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
        notebook.close();
    }
}
