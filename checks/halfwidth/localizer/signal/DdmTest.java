package halfwidth.localizer.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.junit.jupiter.api.Test;

class DdmTest {

    @Test
    void agreesWithTheReceiverSensitivityOfPansOps() {
        // PANS-OPS Vol II (2006), table II-Att-1: 968 µA/DDM nominal maximum, three digits.
        assertEquals(968, Ddm.toMicroamps(1), 0.5);
    }

    @Test
    void givesTheLimitsOfAnnex10InMicroamps() {
        // ICAO Annex 10 Vol I, 3.1.3.4: 0.031 DDM; the trade calls it 30 µA.
        assertEquals(30, Ddm.toMicroamps(0.031), 1e-12);
        // By hand: 0.180 × 150 / 0.155 = 27 / 0.155 = 174.19.
        assertEquals(174.19, Ddm.toMicroamps(0.180), 0.005);
        assertEquals(-14.52, Ddm.toMicroamps(-0.015), 0.005);
    }

    @Test
    void agreesWithTheGainSettingOfAttachmentC() {
        // ICAO Annex 10 Vol I, Att. C 2.2.2.1: depths of 24.65 % and 15.35 % give three fifths of
        // the deflection of the course sector's edge, which is 150 µA.
        Depths depths = Depths.ofPercent(15.35, 24.65);

        assertEquals(0.6 * 150, Ddm.toMicroamps(depths.ddm()), 1e-9);
    }

    @Law
    void comesBackFromMicroamps(Draw draw) {
        double ddm = draw.between(-1, 1);
        assertEquals(ddm, Ddm.fromMicroamps(Ddm.toMicroamps(ddm)), 1e-15);
    }
}
