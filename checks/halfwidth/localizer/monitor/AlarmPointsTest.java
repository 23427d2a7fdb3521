package halfwidth.localizer.monitor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Course shift, sensitivity and power: the limits come from the tests, never from the classes. */
class AlarmPointsTest {
    /** ICAO Annex 10 Vol I, 3.1.3.7.1 (as quoted by secondary sources). */
    private static final double NOMINAL_SENSITIVITY = 0.00145;

    /**
     * Metres of ICAO Annex 10 Vol I, 3.1.3.11.2 and 3.1.3.6.1 (10.5 m as quoted by secondary
     * sources, the others from memory); DDM by hand, µA = DDM × 150/0.155.
     */
    @ParameterizedTest
    @CsvSource({
        "10.5, 0.015225, 14.73",
        "7.5, 0.010875, 10.52",
        "6, 0.0087, 8.42",
        "3, 0.00435, 4.21"
    })
    void turnsMetresAtTheDatumIntoAReading(double metres, double ddm, double microamps) {
        CourseShift shift = CourseShift.inMetres(metres, NOMINAL_SENSITIVITY);
        assertEquals(ddm, shift.ddm(), 1e-9);
        assertEquals(microamps, shift.microamps(), 0.005);
        assertEquals(metres, shift.metresInduced(), 1e-9);
        assertEquals(0.002 + ddm, shift.readings(0.002).most(), 1e-9);
        assertEquals(0.002 - ddm, shift.readings(0.002).least(), 1e-9);
    }

    @Test
    void stopsAtADdmThatIsTheSmallerLimit() {
        // 10.5 m or 0.015 DDM, whichever is less: 0.015/0.00145 = 10.34 m.
        CourseShift shift = new CourseShift(10.5, NOMINAL_SENSITIVITY, 0.015);
        assertEquals(0.015, shift.ddm());
        assertEquals(10.345, shift.metresInduced(), 0.001);
        assertEquals(14.516, shift.microamps(), 0.001);
    }

    /** Arithmetic: 1/0.83 = 1.2048, 1/1.17 = 0.8547, 1/0.9 = 1.1111, 1/1.1 = 0.9091. */
    @ParameterizedTest
    @CsvSource({"-17, 20.48", "17, -14.53", "-10, 11.11", "10, -9.09"})
    void tellsSensitivityFromWidth(double sensitivity, double width) {
        SensitivityChange change = SensitivityChange.ofSensitivityPercent(sensitivity);
        assertEquals(width, change.widthPercent(), 0.005);
        assertEquals(
                sensitivity,
                100 * SensitivityChange.ofWidthPercent(change.widthPercent()).fraction(),
                1e-9);
        assertEquals(0.155 * (1 + sensitivity / 100), change.widthMonitorReading(0.155), 1e-9);
        assertEquals(4 * (1 + width / 100), change.width(4), 0.0005);
    }

    /** −20 lg of the width: lg 1.17 = 0.0681859, lg 0.83 = −0.0809219, lg 1.1 = 0.0413927. */
    @ParameterizedTest
    @CsvSource({"17, -1.363717, 0.7305", "-17, 1.618438, 1.4516", "10, -0.827854, 0.8264"})
    void setsTheSidebandsForAWidth(double width, double decibels, double power) {
        SensitivityChange change = SensitivityChange.ofWidthPercent(width);
        assertEquals(decibels, change.sboDecibels(), 2e-6);
        assertEquals(power, change.sboPowerRatio(), 0.00005);
    }

    @Test
    void lowersThePower() {
        // 10 lg 0.5 = −3.0103, 10 lg 0.8 = −0.9691.
        assertEquals(-3.0103, PowerReduction.toPercentOfNormal(50).decibels(), 0.00005);
        assertEquals(-0.9691, PowerReduction.toPercentOfNormal(80).decibels(), 0.00005);
        assertEquals(7.5, new PowerReduction(0.5).watts(15), 1e-12);
    }

    @Test
    void narrowsTheWidthWhereOnlyTheCarrierFalls() {
        // Half the power is 1/√2 of the carrier: every DDM rises by √2.
        assertEquals(Math.sqrt(2) - 1, new PowerReduction(0.5).ifSidebandsStay().fraction(), 1e-12);
    }

    @Test
    void movesTheRatioOfTwoCarriers() {
        PowerReduction toEighty = new PowerReduction(0.8);
        assertEquals(9.0309, toEighty.carrierRatio(10, true), 0.00005);
        assertEquals(10.9691, toEighty.carrierRatio(10, false), 0.00005);
    }

    @Test
    void refusesLimitsThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> CourseShift.inMetres(0, 0.00145));
        assertThrows(IllegalArgumentException.class, () -> CourseShift.inMetres(10.5, 0));
        assertThrows(
                IllegalArgumentException.class, () -> CourseShift.inMetres(Double.NaN, 0.00145));
        assertThrows(IllegalArgumentException.class, () -> new CourseShift(10.5, 0.00145, 0));
        assertThrows(
                IllegalArgumentException.class, () -> SensitivityChange.ofSensitivityPercent(-100));
        assertThrows(IllegalArgumentException.class, () -> SensitivityChange.ofWidthPercent(-100));
        assertThrows(IllegalArgumentException.class, () -> new PowerReduction(0));
        assertThrows(IllegalArgumentException.class, () -> new PowerReduction(1.1));
    }
}
