package halfwidth.job;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/** What it takes to write in a job folder. */
record Pen(Journal journal, WriterLock lock, String who, Clock clock) implements AutoCloseable {

    /** Writes facts that hold together or not at all; they are on disk when it returns. */
    List<Line> write(long last, List<Fact> facts) {
        OffsetDateTime now = OffsetDateTime.now(clock).withNano(0);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < facts.size(); i++) {
            lines.add(new Line(last + 1 + i, facts.size() - 1 - i, now, who, facts.get(i)));
        }
        journal.append(lines);
        return lines;
    }

    @Override
    public void close() {
        journal.close();
        lock.close();
    }
}
