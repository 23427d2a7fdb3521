package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.PowerLog.Change;
import halfwidth.job.PowerLoss.Fate;
import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * The power is lost behind any change of a disk. Of what nothing had forced, any part may be gone:
 * a write, half of it, what is in it though not its length, the name of a file; and in any order.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PowerLossTest {
    /** Of the last changes every combination of fates is tried; those before are kept or lost. */
    private static final int EVERY_FATE_OF = 3;

    private Path temporary;
    private PowerLog log;
    private JobScenario.State end;
    private Path base;
    private int number;

    /** The events up to that at which a line was torn off. */
    private int torn;

    private int said;

    @BeforeAll
    void write(@TempDir Path folder) throws IOException {
        temporary = folder;
        base = Files.createDirectory(temporary.resolve("base"));
        JobScenario scenario = new JobScenario();
        log = new PowerLog(scenario::state);
        scenario.run(
                WatchedDisk.path(base.resolve("season").resolve("job"), log),
                journal -> {
                    Files.writeString(
                            journal,
                            JobScenario.TORN,
                            StandardOpenOption.WRITE,
                            StandardOpenOption.APPEND,
                            StandardOpenOption.SYNC);
                    torn = log.events().size();
                });
        end = scenario.state();
        assertEquals(List.of(), scenario.traces());
        assertTrue(end.blocks().stream().allMatch(b -> b.told() == JobScenario.Told.KEPT));
    }

    @Test
    void losesNothingAcknowledged() throws IOException {
        int attempts = 0;
        Set<List<Object>> seen = new HashSet<>();
        List<String> wrong = new ArrayList<>();
        for (int count = 0; count <= log.events().size(); count++) {
            List<Change> open = log.unforced(count);
            int older = Math.max(0, open.size() - EVERY_FATE_OF);
            for (Fate before : older == 0 ? List.of(Fate.KEPT) : List.of(Fate.KEPT, Fate.LOST)) {
                for (List<Fate> last : fates(open.subList(older, open.size()))) {
                    Map<Change, Fate> fates = new IdentityHashMap<>();
                    for (int i = 0; i < open.size(); i++) {
                        fates.put(open.get(i), i < older ? before : last.get(i - older));
                    }
                    PowerLoss loss = lost(count, fates, List.of());
                    List<Object> state = loss.state();
                    state.add(told(count));
                    if (seen.add(state)) {
                        int at = count;
                        judge(loss, count)
                                .ifPresent(is -> wrong.add("behind " + at + ", " + last + is));
                        attempts++;
                    }
                }
            }
        }
        System.out.printf(
                "Power lost: %d events, %d states, %d said of, %d lost, %d silent, %d traces%n",
                log.events().size(),
                attempts,
                said,
                count(wrong, ": lost"),
                count(wrong, ": silent"),
                count(wrong, ": trace"));
        assertEquals(List.of(), wrong);
    }

    private static long count(List<String> wrong, String what) {
        return wrong.stream().filter(one -> one.contains(what)).count();
    }

    /** Every combination of fates. */
    private static List<List<Fate>> fates(List<Change> changes) {
        List<List<Fate>> all = List.of(List.of());
        for (Change change : changes) {
            List<List<Fate>> longer = new ArrayList<>();
            for (List<Fate> one : all) {
                for (Fate fate : PowerLoss.fates(change)) {
                    List<Fate> with = new ArrayList<>(one);
                    with.add(fate);
                    longer.add(with);
                }
            }
            all = longer;
        }
        return all;
    }

    @Law(tries = 400)
    void losesNothingWhateverTheOrder(Draw draw) throws IOException {
        int count = draw.whole(0, log.events().size());
        Random random = draw.random();
        List<Change> open = new ArrayList<>(log.unforced(count));
        Map<Change, Fate> fates = new IdentityHashMap<>();
        for (Change change : open) {
            List<Fate> possible = PowerLoss.fates(change);
            fates.put(change, possible.get(random.nextInt(possible.size())));
        }
        Collections.shuffle(open, random);
        assertEquals(Optional.empty(), judge(lost(count, fates, open), count));
    }

    /**
     * What is left.
     *
     * @param order that in which the open changes reached the disk; none for their own
     */
    private PowerLoss lost(int count, Map<Change, Fate> fates, List<Change> order) {
        PowerLoss loss = new PowerLoss(base);
        for (PowerLog.Event event : log.events().subList(0, count)) {
            boolean later = !order.isEmpty() && fates.containsKey(event.change());
            if (event.change() != null && !later) {
                loss.apply(event.change(), fates.getOrDefault(event.change(), Fate.KEPT));
            }
        }
        order.forEach(change -> loss.apply(change, fates.get(change)));
        return loss;
    }

    /** What may have been told before the next event. */
    private JobScenario.State told(int count) {
        return count < log.events().size() ? log.events().get(count).before() : end;
    }

    private Optional<String> judge(PowerLoss loss, int count) throws IOException {
        Path there = temporary.resolve("lost-" + ++number);
        loss.write(there);
        Path folder = WatchedDisk.path(there.resolve("season").resolve("job"), DiskCalls.NONE);
        try {
            Optional<String> wrong = judge(folder, told(count));
            return wrong.isEmpty() && count >= torn && !JobScenario.hasTorn(folder)
                    ? Optional.of(": lost: what was torn off")
                    : wrong;
        } catch (JobRefused refusal) {
            return Optional.of(": lost: " + refusal.getMessage());
        } catch (RuntimeException trace) {
            return Optional.of(": trace: " + trace);
        }
    }

    private Optional<String> judge(Path folder, JobScenario.State told) {
        if (!Files.exists(folder.resolve("job.csv"))) {
            Job.create(folder, JobScenario.HEADING).close();
            return told.created() ? Optional.of(": lost: the job") : Optional.empty();
        }
        if (!JobScenario.isWhole(folder)) {
            return Optional.of(": silent: half a heading");
        }
        try (Job job = Job.open(folder)) {
            List<String> alarms = new ArrayList<>(job.warnings());
            alarms.addAll(job.notices());
            alarms.removeIf(one -> one.contains("while it was written, before it was acknow"));
            boolean half = alarms.removeIf(one -> one.endsWith("was altered and is left out"));
            said += half ? 1 : 0;
            if (!alarms.isEmpty()) {
                return Optional.of(": lost: " + alarms);
            }
            Optional<String> wrong = JobScenario.wrong(told, job.lines(), half);
            job.state(new Fact.Noted(new Visit("", ""), "goes on"));
            return wrong.map(is -> ": " + is);
        }
    }
}
