package halfwidth.localizer.sweep;

import halfwidth.localizer.Require;
import halfwidth.localizer.signal.Tone;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * How straight DDM rises from the course line to the end of the linear region.
 *
 * @param worst the reading that lies furthest off the line
 * @param deviation how far it lies off (DDM), positive where it reads more towards the 150 Hz
 * @param percent the size of that, in percent of the DDM at the end of the region (%)
 * @param readings how many readings lie within the region (1)
 */
public record Linearity(SweepReading worst, double deviation, double percent, int readings) {

    /**
     * Compares the readings with the line of the course.
     *
     * @param sweep the sweep
     * @param course its course, whose line is fitted within the sector only
     * @param regionEnd the DDM at which the linear region ends (DDM): the published 0.180
     * @return the linearity
     * @throws IllegalArgumentException if {@code regionEnd} is not above 0 or no reading lies
     *     within the region
     */
    public static Linearity of(Sweep sweep, CourseSector course, double regionEnd) {
        Require.above("end of the linear region", regionEnd, 0, "");
        CurveWalk walk = new CurveWalk(sweep, course.centre().value());
        List<SweepReading> region =
                Stream.of(Tone.values())
                        .flatMap(side -> walk.outward(side).stream().takeWhile(within(regionEnd)))
                        .distinct()
                        .toList();
        SweepReading worst =
                region.stream()
                        .max(Comparator.comparingDouble(one -> Math.abs(off(one, course))))
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "no reading lies within the linear region"));
        double deviation = off(worst, course);
        return new Linearity(
                worst, deviation, 100 * Math.abs(deviation) / regionEnd, region.size());
    }

    private static Predicate<SweepReading> within(double regionEnd) {
        return reading -> Math.abs(reading.value()) <= regionEnd;
    }

    private static double off(SweepReading reading, CourseSector course) {
        return course.fit().residual(reading.azimuth(), reading.value());
    }
}
