package halfwidth.run;

import java.time.Duration;

/**
 * What a page may use before it is stopped.
 *
 * @param time for one run of the page, and for its compilation
 * @param memoryMegabytes heap of the page's worker (MB)
 * @param outputBytes what its steps may print in one run (bytes)
 */
public record Budget(Duration time, int memoryMegabytes, int outputBytes) {
    /** Half a minute, 512 MB and 200 kB: far above what the shipped pages use. */
    public static final Budget USUAL = new Budget(Duration.ofSeconds(30), 512, 200_000);

    /**
     * @throws IllegalArgumentException if the time is not above 0, the memory is below 64 MB or the
     *     output below 1 kB
     */
    public Budget {
        if (time.isNegative() || time.isZero()) {
            throw new IllegalArgumentException(
                    "time limit " + time.toMillis() / 1000.0 + " s must be above 0 s");
        }
        if (memoryMegabytes < 64) {
            throw new IllegalArgumentException(
                    "memory limit " + memoryMegabytes + " MB must be at least 64 MB");
        }
        if (outputBytes < 1000) {
            throw new IllegalArgumentException(
                    "output limit " + outputBytes + " bytes must be at least 1000");
        }
    }
}
