package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.FailingCall.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Each call of a job to the disk fails once, in every way that such a call may fail. Then the job
 * is opened on a sound disk: it holds what was acknowledged, nothing that was refused, and nothing
 * of which nobody is told.
 */
class EveryCallFailsTest {
    @TempDir Path temporary;

    @Test
    void losesNothingAndHidesNothing() throws IOException {
        FailingCall sound = run("sound", Fault.ERROR, 0, new ArrayList<>());
        int calls = sound.calls().size();
        assertTrue(calls > 150, calls + " calls");
        int attempts = 0;
        List<String> wrong = new ArrayList<>();
        for (Fault fault : Fault.values()) {
            for (int number = 1; number <= calls; number++) {
                if (fault.strikes(sound.calls().get(number - 1))) {
                    run(fault + "-" + number, fault, number, wrong);
                    attempts++;
                }
            }
        }
        System.out.printf(
                "A disk that fails: %d calls, %d attempts, %d lost, %d silent, %d traces%n",
                calls,
                attempts,
                count(wrong, "lost"),
                count(wrong, "silent"),
                count(wrong, "trace"));
        assertEquals(List.of(), wrong);
    }

    private static long count(List<String> wrong, String what) {
        return wrong.stream().filter(one -> one.contains(what)).count();
    }

    private FailingCall run(String name, Fault fault, int number, List<String> wrong)
            throws IOException {
        Path folder = temporary.resolve(name).resolve("job");
        Files.createDirectory(folder.getParent());
        FailingCall call = new FailingCall(fault, number);
        JobScenario scenario = new JobScenario();
        boolean[] torn = new boolean[1];
        scenario.run(
                WatchedDisk.path(folder, call),
                journal -> {
                    Path below = WatchedPath.below(journal);
                    Files.writeString(below, JobScenario.TORN, StandardOpenOption.APPEND);
                    torn[0] = true;
                });
        scenario.traces().forEach(trace -> wrong.add(name + ": trace: " + trace));
        try {
            judge(folder, scenario.state()).ifPresent(is -> wrong.add(name + ": " + is));
            if (torn[0] && !JobScenario.hasTorn(folder)) {
                wrong.add(name + ": lost: what was torn off");
            }
        } catch (JobRefused refusal) {
            wrong.add(name + ": lost: " + refusal.getMessage());
        } catch (RuntimeException trace) {
            wrong.add(name + ": trace: " + trace);
        }
        return call;
    }

    private static Optional<String> judge(Path folder, JobScenario.State told) {
        if (!JobScenario.isWhole(folder)) {
            return Optional.of("silent: half a heading");
        }
        if (!Files.exists(folder.resolve("job.csv"))) {
            Path sound = WatchedDisk.path(folder, DiskCalls.NONE);
            Job.create(sound, JobScenario.HEADING).close();
            return told.created() ? Optional.of("lost: the job") : Optional.empty();
        }
        try (Job job = Job.open(WatchedDisk.path(folder, DiskCalls.NONE))) {
            List<String> alarms = alarms(job);
            if (!alarms.isEmpty()) {
                return Optional.of("lost: " + alarms);
            }
            Optional<String> wrong = JobScenario.wrong(told, job.lines(), false);
            job.state(new Fact.Noted(new Visit("", ""), "goes on"));
            return wrong;
        }
    }

    private static List<String> alarms(Job job) {
        List<String> said = new ArrayList<>(job.warnings());
        said.addAll(job.notices());
        said.removeIf(one -> one.contains("while it was written, before it was acknowledged"));
        return said;
    }
}
