package halfwidth.job;

import halfwidth.value.NewEntry;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/** What it takes to write in a job folder. */
record Pen(Journal journal, WriterLock lock, String who, Clock clock) implements AutoCloseable {

    /**
     * Writes facts that hold together or not at all; they are on disk when it returns.
     *
     * @param now what the clock shows
     * @throws JobRefused if what people typed is too long or was not understood letter by letter
     */
    List<Line> write(long last, OffsetDateTime now, List<Fact> facts) {
        facts.forEach(Pen::checkWords);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < facts.size(); i++) {
            lines.add(new Line(last + 1 + i, facts.size() - 1 - i, now, who, facts.get(i)));
        }
        journal.append(lines);
        return lines;
    }

    /** What the last line ends with. */
    String tie() {
        return journal.tie();
    }

    /** What the clock shows, to the second. */
    OffsetDateTime now() {
        return OffsetDateTime.now(clock).withNano(0);
    }

    /** Of what people typed, that it is not too long and its letters were understood. */
    private static void checkWords(Fact fact) {
        if (fact.visit().name().length() > Visit.LONGEST_NAME) {
            throw new JobRefused(
                    "The name of a visit may have %s letters; give it a shorter one"
                            .formatted(Visit.LONGEST_NAME));
        }
        boolean typed = !(fact instanceof Fact.Ran || fact instanceof Fact.Found);
        if (typed && !NewEntry.isLegible(fact.toString())) {
            throw new JobRefused(
                    "A name or remark has letters that could not be read; type it again, on a"
                            + " terminal set to UTF-8");
        }
    }

    @Override
    public void close() {
        try (lock) {
            journal.close();
        }
    }
}
