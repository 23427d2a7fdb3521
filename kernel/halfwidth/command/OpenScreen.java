package halfwidth.command;

import halfwidth.job.Fingerprint;
import halfwidth.job.Job;
import halfwidth.run.Workshop;
import halfwidth.web.Screen;
import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.BindException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Opens the notebook in a browser on this machine, until it is ended. */
@Command(
        name = "open",
        description = {
            "Open the notebook in the browser of this machine; Ctrl-C ends it.",
            "Without a job it opens the demo station, whose values are invented."
        },
        mixinStandardHelpOptions = true)
final class OpenScreen implements Callable<Integer> {
    /** The demo station's; the ports of jobs follow it. */
    private static final int FIRST_PORT = 8047;

    private static final int PORTS = 900;

    @Option(names = "--job", paramLabel = "DIR", description = "The job folder to work in.")
    private Path jobFolder;

    @Option(
            names = "--port",
            paramLabel = "N",
            description =
                    "The port to answer at; without it, one that is always the same for a job.")
    private Integer port;

    @Option(names = "--no-browser", description = "Only print the address.")
    private boolean quiet;

    @Mixin private Notebooks notebooks;
    @Mixin private Allowance allowance;
    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        Optional<DemoStation> demo =
                jobFolder == null
                        ? Optional.of(DemoStation.beside(notebooks.pages()))
                        : Optional.empty();
        Job job = demo.map(DemoStation::job).orElseGet(() -> Job.open(jobFolder));
        Screen screen = screen(job);
        Thrift.begin();
        CountDownLatch ended = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> end(screen, demo), "end"));
        PrintWriter out = spec.commandLine().getOut();
        out.printf(
                "Open in a browser on this machine, once, within %s minutes:%n",
                Screen.KEY_LIFE.toMinutes());
        out.println();
        out.println("    " + screen.address());
        out.println();
        out.println(
                (demo.isPresent() ? "This is an invented station to try things on. " : "")
                        + "Values are kept in "
                        + job.folder().toAbsolutePath());
        out.println("End with Ctrl-C.");
        out.flush();
        browse(screen);
        demo.ifPresent(this::compute);
        ended.await();
        return CommandLineProgram.RAN;
    }

    /**
     * The port of a job, the same at every start: a window left open finds the program again, and
     * the browser what was typed and not entered, which it keeps by address.
     */
    static int usualPort(Path folder) {
        String place = folder.toAbsolutePath().normalize().toString();
        int digest = Integer.parseInt(Fingerprint.of(place).substring(0, 7), 16);
        return FIRST_PORT + 1 + digest % PORTS;
    }

    private Screen screen(Job job) {
        int usual = jobFolder == null ? FIRST_PORT : usualPort(jobFolder);
        try {
            return screen(job, port == null ? usual : port);
        } catch (BindException taken) {
            if (port != null) {
                throw new Refused("Port " + port + " is taken; name another with --port N.");
            }
        }
        spec.commandLine()
                .getErr()
                .printf(
                        "Port %s, where this job is opened otherwise, is taken. What was typed in a"
                                + " window there and not entered is shown there only: end what has"
                                + " the port and open the job again.%n",
                        usual);
        try {
            return screen(job, 0);
        } catch (BindException none) {
            throw new Refused("No port is free.");
        }
    }

    private Screen screen(Job job, int at) throws BindException {
        try {
            return Screen.open(
                    job,
                    notebooks.pages(),
                    Workshop.withSpare(allowance.budget()),
                    new Screen.Listening(at, Version.text()));
        } catch (BindException taken) {
            throw taken;
        } catch (IOException e) {
            throw new Refused("The notebook cannot be opened: " + e.getMessage());
        }
    }

    private static void end(Screen screen, Optional<DemoStation> demo) {
        screen.close();
        demo.ifPresent(DemoStation::leave);
    }

    /** Beside what the window does, which does not wait for it. */
    private void compute(DemoStation demo) {
        Thread thread =
                new Thread(
                        () -> {
                            Progress progress =
                                    Progress.begin(spec.commandLine().getErr(), demo::progress);
                            try (Workshop workshop = Workshop.withoutSpare(allowance.budget())) {
                                demo.compute(workshop);
                            } finally {
                                progress.close();
                            }
                        },
                        "demo");
        thread.setDaemon(true);
        thread.start();
    }

    private void browse(Screen screen) {
        if (quiet || GraphicsEnvironment.isHeadless() || !Desktop.isDesktopSupported()) {
            return;
        }
        try {
            if (Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                Path home = Path.of(System.getProperty("user.home"));
                Path invitation = Invitation.write(home, screen.address());
                Desktop.getDesktop().browse(invitation.toUri());
            }
        } catch (IOException e) {
            spec.commandLine().getErr().println("No browser could be started; open the address.");
        }
    }
}
