package halfwidth.localizer.receiver;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.hipparchus.stat.StatUtils;

/** Readings grouped by the setting of the source they were taken at. */
final class Repeats {
    private final Map<Double, List<Double>> bySetting = new TreeMap<>();

    Repeats(double[] settings, double[] readings) {
        for (int i = 0; i < settings.length; i++) {
            bySetting.computeIfAbsent(settings[i], setting -> new ArrayList<>()).add(readings[i]);
        }
    }

    int settings() {
        return bySetting.size();
    }

    /** The deviation within settings, pooled: √(Σ (n−1) s² / Σ (n−1)). */
    OptionalDouble pooledDeviation() {
        double squares = 0;
        int degrees = 0;
        for (List<Double> group : bySetting.values()) {
            if (group.size() > 1) {
                double[] readings = group.stream().mapToDouble(Double::doubleValue).toArray();
                squares += StatUtils.variance(readings) * (readings.length - 1);
                degrees += readings.length - 1;
            }
        }
        return degrees == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.sqrt(squares / degrees));
    }
}
