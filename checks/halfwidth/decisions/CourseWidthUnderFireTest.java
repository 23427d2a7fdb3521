package halfwidth.decisions;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The course width is set by no reading that cannot be, and never away from its aim. */
@Tag("long")
class CourseWidthUnderFireTest {
    /** ICAO Annex 10 Vol I, 3.1.1: DDM at a half-width point. */
    private static final double EDGE = 0.155;

    private final Fire fire = Fire.at("transmit/course-width");

    @Test
    void setsOnlyWhatTheReadingsAllow() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        return new Fire.Round(
                WidthSetting.draw(fire.page(), random, EDGE)
                        .with("category", Rows.any(random, "I", "II", "III")),
                decided ->
                        WidthSetting.objection(decided, EDGE * Rows.field(decided, "nearOverFar")));
    }
}
