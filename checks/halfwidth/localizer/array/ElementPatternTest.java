package halfwidth.localizer.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class ElementPatternTest {

    @Test
    void radiatesEvenlyWhenIsotropic() {
        assertEquals(1, ElementPattern.ISOTROPIC.field(-90));
        assertEquals(1, ElementPattern.ISOTROPIC.field(90));
    }

    @Test
    void fallsWithThePowerOfTheCosine() {
        assertEquals(0.5, new ElementPattern.CosinePower(1).field(60), 1e-15);
        assertEquals(0.125, new ElementPattern.CosinePower(3).field(-60), 1e-15);
        assertEquals(0, new ElementPattern.CosinePower(1).field(120));
    }

    @Test
    void drawsStraightLinesBetweenThePointsOfATable() {
        var table = new ElementPattern.Table(List.of(-90.0, 0.0, 40.0), List.of(0.0, 1.0, 0.6));
        assertEquals(0.5, table.field(-45), 1e-15);
        assertEquals(0.9, table.field(10), 1e-15);
        assertEquals(0.6, table.field(40), 1e-15);
    }

    @Test
    void takesDecibelsOfField() {
        // −6.0206 dB is half the field.
        var table = ElementPattern.Table.ofDecibels(List.of(0.0, 50.0), List.of(0.0, -6.0206));
        assertEquals(0.5, table.field(50), 1e-6);
        assertEquals(0.75, table.field(25), 1e-6);
    }

    @Test
    void refusesAzimuthsItDoesNotKnow() {
        var table = new ElementPattern.Table(List.of(-40.0, 40.0), List.of(1.0, 1.0));
        assertThrows(IllegalArgumentException.class, () -> table.field(40.5));
        assertThrows(IllegalArgumentException.class, () -> table.field(Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> ElementPattern.ISOTROPIC.field(Double.POSITIVE_INFINITY));
    }

    @Test
    void refusesTablesThatDoNotRise() {
        List<Double> fields = List.of(1.0, 1.0);
        assertThrows(
                IllegalArgumentException.class,
                () -> new ElementPattern.Table(List.of(5.0, 5.0), fields));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ElementPattern.Table(List.of(0.0), List.of(1.0)));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ElementPattern.Table(List.of(0.0, 10.0), List.of(1.0, -0.1)));
    }
}
