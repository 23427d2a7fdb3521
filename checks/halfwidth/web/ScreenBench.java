package halfwidth.web;

import halfwidth.page.Pages;
import halfwidth.value.Decimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * How long it takes from a changed value to the changed results on the screen, and to the plots
 * drawn anew, in Chromium with twenty pages open. Both ends are taken in the window; the results
 * count from the frame in which they are painted.
 */
final class ScreenBench {
    private static final int MANY = 16;
    private static final int WINDOWS = 20;
    private static final int TIMES = 60;
    private static final int WARMING = 20;

    /**
     * A field that moves results and plots. It gets one of many values in turn, since what a page
     * came to with the last few, and its last plots, are remembered.
     *
     * @param field as a CSS selector
     */
    private record Change(String page, String field, double from, double step) {
        String value(int time) {
            return Decimal.print(from + (1 + time % MANY) * step);
        }
    }

    private static String cell(String table, int row, String column) {
        return "[data-name='%s'][data-row='%d'][data-column='%s']".formatted(table, row, column);
    }

    private static final List<Change> CHANGES =
            List.of(
                    new Change("lines/phase-constant", cell("cuts", 2, "phase"), -31.5, 0.125),
                    new Change("transmit/feed-trim", cell("phasing", 2, "offset 1"), -8, 0.125),
                    new Change("array/prediction", "#f-nearDistance", 300, 2),
                    new Change(
                            "sweep/ground-check", cell("sweep", 18, "transmitter 1"), 0.07, 0.0005),
                    new Change("array/tolerance-study", "#f-levelSpread", 0.25, 0.01));

    private static final String MEASURED =
            """
            const [where, value, done] = arguments;
            const field = document.querySelector(where);
            const pictures = () => [...document.querySelectorAll('.views img')];
            const before = new Set(pictures().map(picture => picture.src));
            const answers = document.getElementById('answers').innerHTML;
            const from = performance.now();
            let numbers = null;
            const look = () => {
              const shown = document.getElementById('answers').innerHTML !== answers;
              if (numbers === null && shown && field.dataset.seen === value) {
                numbers = performance.now() - from;
              }
              const drawn = pictures().every(picture => picture.complete && picture.naturalWidth > 0);
              const fresh = before.size === 0 || pictures().some(picture => !before.has(picture.src));
              if (numbers !== null && drawn && fresh) {
                done([numbers, performance.now() - from]);
              } else if (performance.now() - from > 30000) {
                done(null);
              } else {
                requestAnimationFrame(look);
              }
            };
            field.value = value;
            field.dispatchEvent(new Event('input', { bubbles: true }));
            field.dispatchEvent(new Event('change', { bubbles: true }));
            requestAnimationFrame(look);
            """;

    private ScreenBench() {}

    public static void main(String[] arguments) {
        try (Served served = Served.scratch(Served::enterExamples)) {
            ChromeDriver driver = Browser.driver();
            driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(2));
            Map<String, String> windows = new LinkedHashMap<>();
            for (String page : windowsFor(new Pages(Served.NOTEBOOKS).names())) {
                driver.switchTo().newWindow(WindowType.TAB);
                served.fill(page, "");
                windows.put(page, driver.getWindowHandle());
            }
            System.out.printf("%d pages open%n", windows.size());
            System.out.printf("%-24s %20s %20s%n", "", "numbers (ms)", "plots (ms)");
            for (Change change : CHANGES) {
                driver.switchTo().window(windows.get(change.page()));
                print(driver, change);
            }
            driver.quit();
        }
    }

    /** The pages that are measured, and others up to the number of windows. */
    private static List<String> windowsFor(List<String> names) {
        List<String> measured = CHANGES.stream().map(Change::page).toList();
        return java.util.stream.Stream.concat(measured.stream(), names.stream())
                .distinct()
                .limit(WINDOWS)
                .toList();
    }

    private static void print(ChromeDriver driver, Change change) {
        double[] numbers = new double[TIMES];
        double[] plots = new double[TIMES];
        for (int i = -WARMING; i < TIMES; i++) {
            String value = change.value(WARMING + i);
            Object measured = driver.executeAsyncScript(MEASURED, change.field(), value);
            if (!(measured instanceof List<?> pair)) {
                throw new IllegalStateException(change + " changed nothing in 30 s");
            }
            if (i >= 0) {
                numbers[i] = ((Number) pair.get(0)).doubleValue();
                plots[i] = ((Number) pair.get(1)).doubleValue();
            }
        }
        System.out.printf("%-24s %20s %20s%n", change.page(), words(numbers), words(plots));
    }

    private static String words(double[] milliseconds) {
        double[] sorted = milliseconds.clone();
        Arrays.sort(sorted);
        return "%.0f, 95 %%: %.0f"
                .formatted(sorted[sorted.length / 2], sorted[(int) (sorted.length * 0.95)]);
    }
}
