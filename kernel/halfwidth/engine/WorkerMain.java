package halfwidth.engine;

import halfwidth.run.Message;
import halfwidth.run.StartMark;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * The worker JVM's entry point: answers the messages that come in on its standard input. It ends
 * when the pipe does, whatever a page is doing, so no worker outlives the program.
 */
public final class WorkerMain {
    private static final int MESSAGES_BETWEEN_RESETS = 100;

    /** A worker that has been left alone for so long after its start is a spare. */
    private static final long IDLE_MILLIS = 4000;

    private final ObjectOutputStream out;
    private int sent;
    private final Bench bench;
    private final ScheduledExecutorService work =
            Executors.newSingleThreadScheduledExecutor(
                    task -> {
                        Thread thread = new Thread(task, "bench");
                        thread.setDaemon(true);
                        return thread;
                    });

    private WorkerMain(ObjectOutputStream out, Bench bench) {
        this.out = out;
        this.bench = bench;
    }

    /**
     * Starts the worker.
     *
     * @param arguments the file, of at least four bytes, in which the index of the running
     *     statement is kept for the program to read, even after this JVM is gone; or {@code
     *     --rehearse}, to do once what every worker does and end, for a class-data archive of it
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments[0].equals("--rehearse")) {
            new Bench(new Capture(), index -> {}).rehearse();
            return;
        }
        InputStream in = new FileInputStream(FileDescriptor.in);
        OutputStream pipe = new BufferedOutputStream(new FileOutputStream(FileDescriptor.out));
        StartMark.write(pipe);
        ObjectOutputStream out = new ObjectOutputStream(pipe);
        out.flush();
        System.setIn(InputStream.nullInputStream());
        Capture capture = new Capture();
        PrintStream printed = capture.stream();
        System.setOut(printed);
        System.setErr(printed);
        MappedByteBuffer marker;
        try (FileChannel file =
                FileChannel.open(
                        Path.of(arguments[0]), StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            marker = file.map(FileChannel.MapMode.READ_WRITE, 0, Integer.BYTES);
        }
        Bench bench = new Bench(capture, index -> marker.putInt(0, index));
        new WorkerMain(out, bench).serve(in);
    }

    private void serve(InputStream in) {
        work.execute(bench::prepare);
        work.schedule(bench::warmUp, IDLE_MILLIS, TimeUnit.MILLISECONDS);
        try {
            ObjectInputStream messages = new ObjectInputStream(in);
            messages.setObjectInputFilter(Message.FILTER);
            while (true) {
                Message message = (Message) messages.readObject();
                if (message instanceof Message.Look) {
                    send(bench.look()); // at once, on this thread: a step may be running
                } else {
                    work.execute(() -> answer(message));
                }
            }
        } catch (IOException | ClassNotFoundException | ClassCastException e) {
            end(0); // the program is gone, or its pipe is broken
        }
    }

    private void answer(Message message) {
        try {
            Message answer;
            try {
                answer = bench.answer(message);
            } catch (RuntimeException fault) {
                StringWriter trace = new StringWriter();
                fault.printStackTrace(new PrintWriter(trace));
                answer = new Message.Broken(trace.toString());
            }
            send(answer);
        } catch (IOException | Error e) {
            // The program sees the pipe close and says at which step the worker was lost.
            end(1);
        }
    }

    /** Ends this JVM and every process that came from it. */
    private static void end(int status) {
        ProcessHandle.current().descendants().forEach(ProcessHandle::destroyForcibly);
        Runtime.getRuntime().halt(status);
    }

    private void send(Message message) throws IOException {
        synchronized (out) {
            // Not every time: a reset makes the next message describe every class anew.
            if (++sent % MESSAGES_BETWEEN_RESETS == 0) {
                out.reset();
            }
            out.writeObject(message);
            out.flush();
        }
    }
}
