package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Require;
import org.hipparchus.stat.StatUtils;

/** Mean and standard deviations of repeated readings: JCGM 100:2008, 4.2. */
final class Readings {
    private final double[] values;

    Readings(double[] values) {
        if (values.length < 2) {
            throw new IllegalArgumentException(
                    "readings must be at least 2 to show a spread, not " + values.length);
        }
        this.values = values.clone();
        for (double value : this.values) {
            Require.finite("reading", value, "");
        }
    }

    double mean() {
        return StatUtils.mean(values);
    }

    double deviationOfMean() {
        return Math.sqrt(StatUtils.variance(values) / values.length);
    }
}
