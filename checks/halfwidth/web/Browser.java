package halfwidth.web;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * One Chromium for all checks of the screen, since its start costs more than most of them. It ends
 * with the last of them.
 */
final class Browser implements BeforeAllCallback {
    private static final Duration PATIENCE = Duration.ofSeconds(100);
    private static ChromeDriver driver;

    @Override
    public void beforeAll(ExtensionContext context) {
        context.getRoot()
                .getStore(ExtensionContext.Namespace.GLOBAL)
                .getOrComputeIfAbsent(Browser.class, key -> new Ending());
    }

    private record Ending() implements AutoCloseable {
        @Override
        public void close() {
            if (driver != null) {
                driver.quit();
                driver = null;
            }
        }
    }

    static ChromeDriver driver() {
        if (driver == null) {
            driver = start();
        }
        return driver;
    }

    private static ChromeDriver start() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(found("chromium"));
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-background-networking",
                "--window-size=1400,1000");
        ChromeDriverService service =
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(Path.of(found("chromedriver")).toFile())
                        .build();
        return new ChromeDriver(service, options);
    }

    /** Named outright, so that Selenium does not look for a browser to download. */
    private static String found(String program) {
        return List.of(System.getenv("PATH").split(java.io.File.pathSeparator)).stream()
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new AssertionError(program + " is not on the path"))
                .toString();
    }

    /** Waits until a script gives true. */
    static void until(String script, Object... arguments) {
        new WebDriverWait(driver(), PATIENCE, Duration.ofMillis(20))
                .withMessage(() -> script + " in\n" + text("body"))
                .until(d -> Boolean.TRUE.equals(run("return " + script, arguments)));
    }

    static Object run(String script, Object... arguments) {
        return ((JavascriptExecutor) driver()).executeScript(script, arguments);
    }

    static WebElement find(String css) {
        return driver().findElement(By.cssSelector(css));
    }

    static String text(String css) {
        return String.valueOf(run("return document.querySelector(arguments[0])?.innerText", css));
    }

    /** Waits until the sheet shows words. */
    static void untilShown(String css, String words) {
        until("document.querySelector(arguments[0])?.innerText.includes(arguments[1])", css, words);
    }

    /** Waits until nothing is being sent or computed. */
    static void untilSettled() {
        until(
                "document.querySelector('#answers') !== null"
                        + " && !document.querySelector('#answers').hasAttribute('aria-busy')"
                        + " && !document.querySelector('.computing')");
    }
}
