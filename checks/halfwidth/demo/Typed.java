package halfwidth.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How a crew types what it reads. */
final class Typed {
    private Typed() {}

    /** A reading of DDM by its tone, in thousandths. */
    static String ddm(double reading) {
        long thousandths = Math.round(1000 * reading);
        return thousandths == 0
                ? "0"
                : Math.abs(thousandths) + (thousandths > 0 ? " in the 150" : " in the 90");
    }

    /** The same reading with the other tone typed by mistake. */
    static String ddmOfWrongSide(double reading) {
        return ddm(-reading);
    }

    static String number(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
