package halfwidth.localizer.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WidthSettingTest {

    private static ArrayModel shipped(String file) {
        return ArrayFile.read(Path.of("datasets", "arrays", file));
    }

    @ParameterizedTest
    @CsvSource({
        "fourteen-two-carrier.csv, 3", "fourteen-two-carrier.csv, 6",
        "ten-one-carrier.csv, 4.08", "nine-uneven.csv, 3.5"
    })
    void putsTheHalfWidthPointsWhereTheyAreWanted(String file, double width) {
        ArrayModel set = WidthSetting.scaledToWidth(shipped(file), width);
        // By the definition, without the pattern's search: symmetric arrays read 0.155 there.
        assertEquals(0.155, set.farField(width / 2).ddm(), 1e-8);
        assertEquals(-0.155, set.farField(-width / 2).ddm(), 1e-8);
    }

    @Test
    void needsSidebandsInverselyAsTheWidthWhileItIsNarrow() {
        // Small angles: amplitude · width is constant; 2 % for the curvature from 2° to 3°.
        ArrayModel wide = WidthSetting.scaledToWidth(shipped("fourteen-two-carrier.csv"), 3);
        ArrayModel narrow = WidthSetting.scaledToWidth(shipped("fourteen-two-carrier.csv"), 2);
        double ratio =
                narrow.course().sbo().get(3).amplitude() / wide.course().sbo().get(3).amplitude();
        assertEquals(1.5, ratio, 0.03);
    }

    @Test
    void findsTheWayBackFromSidebandsThatAreFarTooWeak() {
        ArrayModel array = shipped("fourteen-two-carrier.csv");
        ArrayModel weak = array.withCourse(array.course().withSboScaled(0.01));
        ArrayModel set = WidthSetting.scaledToWidth(weak, 4);
        assertEquals(0.155, set.farField(2).ddm(), 1e-8);
    }

    @Test
    void refusesReversedSidebands() {
        ArrayModel array = shipped("nine-uneven.csv");
        ArrayModel reversed = array.withCourse(array.course().withSboAdvanced(180));
        assertThrows(IllegalArgumentException.class, () -> WidthSetting.scaledToWidth(reversed, 4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -4, 13, Double.NaN})
    void refusesWidthsThatNoLocalizerHas(double width) {
        ArrayModel array = shipped("nine-uneven.csv");
        assertThrows(
                IllegalArgumentException.class, () -> WidthSetting.scaledToWidth(array, width));
    }
}
