package halfwidth.decisions;

import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The clearance is set by no reading that cannot be, and never away from its aim. */
@Tag("long")
class ClearanceWidthUnderFireTest {
    private final Fire fire = Fire.at("transmit/clearance-width");

    @Test
    void setsOnlyWhatTheReadingsAllow() {
        List<String> disagreements = fire.rounds(Fire.SETS, this::round);
        assertTrue(disagreements.isEmpty(), () -> Fire.worst(disagreements));
    }

    private Fire.Round round(Random random) {
        return new Fire.Round(
                drawn(random),
                decided ->
                        WidthSetting.objection(
                                decided,
                                Rows.field(decided, "wanted")
                                        * Rows.field(decided, "nearOverFar")));
    }

    private Filled drawn(Random random) {
        double wanted = Rows.uniform(random, 0.16, 0.3);
        return WidthSetting.draw(fire.page(), random, wanted)
                .with("wanted", Rows.tone(wanted, 0.001))
                .with("azimuth", Rows.number(Rows.uniform(random, 5, 30), 0));
    }
}
