package halfwidth.job;

import java.time.OffsetDateTime;

/**
 * One line of the journal.
 *
 * @param number counts from 1; this, not the time, says what came first
 * @param more how many lines follow that belong to it: all of them hold, or none
 * @param time as the clock showed it
 * @param who entered or did it
 * @param fact what it says
 */
public record Line(long number, int more, OffsetDateTime time, String who, Fact fact) {}
