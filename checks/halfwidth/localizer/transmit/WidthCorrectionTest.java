package halfwidth.localizer.transmit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.Range;
import halfwidth.localizer.signal.Ddm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WidthCorrectionTest {
    private static WidthCorrection course(double on150, double on90) {
        return new WidthCorrection(new BothSides(on150, on90, 0.001), Ddm.COURSE_SECTOR_EDGE);
    }

    /**
     * A width that is this many times the wanted one shows 0.155 over it; the decibels are
     * logarithm table arithmetic: lg 1.17 = 0.0681859, lg 0.83 = −0.0809219, lg 1.1 = 0.0413927, lg
     * 0.9 = −0.0457575, times 20.
     */
    @ParameterizedTest
    @CsvSource({
        "1.17, 1.363717, 1.3689",
        "0.83, -1.618438, 0.6889",
        "1.10, 0.827854, 1.21",
        "0.90, -0.915150, 0.81"
    })
    void bringsAWidthBackByItsRatio(double width, double decibels, double power) {
        double deflection = 0.155 / width;
        WidthCorrection setting = course(deflection, -deflection);
        assertEquals(width, setting.amplitudeRatio().value(), 1e-12);
        assertEquals(width, setting.widthRatio().value(), 1e-12);
        assertEquals(power, setting.powerRatio().value(), 1e-12);
        assertEquals(decibels, setting.decibels().value(), 2e-6);
    }

    @Test
    void setsBothSidesTogetherAndReportsTheirDifference() {
        WidthCorrection setting = course(0.165, -0.145);
        assertEquals(1, setting.amplitudeRatio().value(), 1e-12);
        assertEquals(0.010, setting.centring().value(), 1e-12);
        // 0.165 of 0.310.
        assertEquals(53.226, setting.partOf150Side(), 0.001);
    }

    @Test
    void carriesTheResolutionOfTheReceiver() {
        // u(d) = 0.001/√24 = 0.000204124; relative 0.00131693, twice that in power, and
        // 20/ln 10 = 8.685890 times that in dB.
        WidthCorrection setting = course(0.155, -0.155);
        assertEquals(0.00131693, setting.amplitudeRatio().standardUncertainty(), 1e-8);
        assertEquals(0.00263386, setting.powerRatio().standardUncertainty(), 1e-8);
        assertEquals(0.0114387, setting.decibels().standardUncertainty(), 1e-7);
    }

    @ParameterizedTest
    @CsvSource({
        "POWER_WATTS, 2, 2.42",
        "POWER_PERCENT, 50, 60.5",
        "AMPLITUDE_PERCENT, 50, 55",
        "RELATIVE_AMPLITUDE, 0.4, 0.44",
        "LEVEL_DECIBELS, -3, -2.1721463",
        "ATTENUATION_DECIBELS, 3, 2.1721463"
    })
    void raisesTheAmplitudeByATenthOnEveryScale(SettingScale scale, double from, double to) {
        assertEquals(to, scale.changed(from, 1.1), 1e-6);
        assertEquals(1.1, scale.amplitudeRatio(from, to), 1e-6);
    }

    @ParameterizedTest
    @EnumSource(SettingScale.class)
    void undoesAChangeOnEveryScale(SettingScale scale) {
        assertEquals(7.5, scale.changed(scale.changed(7.5, 1.3), 1 / 1.3), 1e-12);
    }

    @Test
    void roundsToTheControlsStep() {
        // 0.140 is to become 0.155: power × (0.155/0.140)² = 1.225765, 2 W to 2.45153 W.
        SboControl control = new SboControl(SettingScale.POWER_WATTS, 0.1, new Range(0.1, 5));
        SboAdjustment made = new SboAdjustment(course(0.140, -0.140), control, 2);
        assertEquals(2.45153, made.exactSetting().value(), 0.00001);
        // Twice the relative uncertainty of the deflection: 2 × (0.001/√24)/0.140 of 2.45153 W.
        assertEquals(0.0071488, made.exactSetting().standardUncertainty(), 1e-6);
        assertEquals(2.5, made.settingToMake(), 1e-12);
        assertTrue(made.reachable());
        // √(2.5/2) × 0.140
        assertEquals(0.156525, made.deflectionAt(2.5), 0.000001);
        assertTrue(made.inWords().contains("from 2 to 2.5"), made.inWords());
    }

    @Test
    void tellsWhatOneStepAndOneCountDo() {
        SboControl control = new SboControl(SettingScale.AMPLITUDE_PERCENT, 1, new Range(1, 100));
        SboAdjustment made = new SboAdjustment(course(0.150, -0.150), control, 60);
        // 62 % to set, deflection 0.155 there: 0.0025 a per cent.
        assertEquals(62, made.settingToMake(), 1e-12);
        assertEquals(0.0025, made.stepInDdm(), 1e-12);
        assertEquals(100 * (62.0 / 63 - 1), made.stepInWidth(), 1e-9);
        // A count of 0.001 is 0.4 of it, and 1/156 of the width.
        assertEquals(0.4, made.countInSetting(), 1e-9);
        assertEquals(100.0 / 156, made.countInWidth(), 1e-9);
        assertTrue(made.canTellApart(62, 63));
        assertFalse(made.canTellApart(62, 62.3));
    }

    @Test
    void saysWhenTheControlDoesNotReach() {
        SboControl control =
                new SboControl(SettingScale.ATTENUATION_DECIBELS, 0.5, new Range(0, 30));
        SboAdjustment made = new SboAdjustment(course(0.1, -0.1), control, 2);
        assertFalse(made.reachable());
        assertEquals(0, made.settingToMake());
        assertTrue(made.inWords().contains("reaches only 0 to 30"), made.inWords());
    }

    @Test
    void refusesReadingsThatAreNoWidth() {
        assertThrows(IllegalArgumentException.class, () -> course(-0.155, 0.155));
        assertThrows(IllegalArgumentException.class, () -> course(0.001, 0));
        assertThrows(IllegalArgumentException.class, () -> course(Double.NaN, -0.1));
        assertThrows(
                IllegalArgumentException.class,
                () -> new WidthCorrection(new BothSides(0.1, -0.1, 0.001), 0));
        assertThrows(IllegalArgumentException.class, () -> SettingScale.POWER_WATTS.changed(0, 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> new SboControl(SettingScale.POWER_WATTS, 1, new Range(0.2, 0.8)));
        SboControl control = new SboControl(SettingScale.POWER_WATTS, 0.1, new Range(0.1, 5));
        assertThrows(
                IllegalArgumentException.class,
                () -> new SboAdjustment(course(0.1, -0.1), control, 0));
    }
}
