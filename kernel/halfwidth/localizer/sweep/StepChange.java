package halfwidth.localizer.sweep;

import java.time.LocalDate;
import java.util.Arrays;
import org.hipparchus.stat.StatUtils;

/**
 * Where a history most likely stepped from one level to another.
 *
 * <p>A. N. Pettitt, A non-parametric approach to the change-point problem, Appl. Stat. 28 (1979)
 * 126: the split of greatest |Σᵢ Σⱼ sign(xᵢ − xⱼ)|, i before and j after it. A steady drift shows
 * as a step too: look at the trend as well.
 *
 * @param lastBefore the date of the last value before the step
 * @param firstAfter the date of the first value after it
 * @param size mean after less mean before (unit of the value)
 * @param statistic K, the greatest of the sums by size (1)
 * @param chance about how often values without any step would show one as clear (1), 0 to 1: 2
 *     exp(−6 K² / (n³ + n²))
 */
public record StepChange(
        LocalDate lastBefore, LocalDate firstAfter, double size, long statistic, double chance) {

    static StepChange likeliest(History history) {
        double[] values = history.numbers();
        int split = 1;
        long greatest = 0;
        long sum = 0;
        for (int before = 1; before < values.length; before++) {
            // Moving one value over the split changes the sum by its comparison with all values.
            sum += comparedWithAll(values, before - 1);
            if (Math.abs(sum) > greatest) {
                greatest = Math.abs(sum);
                split = before;
            }
        }
        double n = values.length;
        double chance = 2 * Math.exp(-6.0 * greatest * greatest / (n * n * n + n * n));
        return new StepChange(
                history.values().get(split - 1).date(),
                history.values().get(split).date(),
                StatUtils.mean(Arrays.copyOfRange(values, split, values.length))
                        - StatUtils.mean(Arrays.copyOfRange(values, 0, split)),
                greatest,
                Math.min(1, chance));
    }

    private static long comparedWithAll(double[] values, int which) {
        long sum = 0;
        for (double other : values) {
            sum += (long) Math.signum(values[which] - other);
        }
        return sum;
    }
}
