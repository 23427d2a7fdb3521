package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Visit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The screen on a phone, a laptop and a wide monitor: the pages with the widest tables. */
@ExtendWith(Browser.class)
@Tag("long")
class ScreenSizesTest {
    private static final int PHONE = 360;
    private static Served served;

    @BeforeAll
    static void serve() {
        served = Served.scratch(Served::enterExamples);
    }

    @AfterAll
    static void end() {
        Browser.driver().executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
        served.close();
    }

    private static void size(int width) {
        Browser.driver()
                .executeCdpCommand(
                        "Emulation.setDeviceMetricsOverride",
                        Map.of(
                                "width",
                                width,
                                "height",
                                900,
                                "deviceScaleFactor",
                                1,
                                "mobile",
                                false));
    }

    private static void assertFits(int width) {
        assertEquals((long) width, Browser.run("return window.innerWidth"));
        Object wide = Browser.run("return document.documentElement.scrollWidth");
        assertTrue((Long) wide <= width, wide + " px at " + width + " px");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "transmit/quadrature-phasing",
                "transmit/course-width",
                "monitor/composite",
                "monitor/alarm-points",
                "array/distribution-check",
                "record/periodic-check"
            })
    void allColumnsOfTheReadingsAreInSightOnALaptop(String page) {
        for (int width : List.of(1400, 1920)) {
            size(width);
            served.fill(page, "");
            assertFits(width);
            assertEquals(
                    List.of(),
                    Browser.run(
                            "return [...document.querySelectorAll('[data-table] .wide')]"
                                    + ".filter(e => e.scrollWidth > e.clientWidth)"
                                    + ".map(e => e.scrollWidth - e.clientWidth)"),
                    "columns out of sight at " + width);
        }
    }

    @Test
    void theAnswersStayInSightBesideTheValuesAndNotOverThePlots() {
        size(1400);
        served.fill("sweep/ground-check", "");
        String top = "document.querySelector(arguments[0]).getBoundingClientRect().top";
        Browser.run("document.querySelector('table.entry tbody tr:nth-child(2)').scrollIntoView()");
        Browser.until(top + " > 0 && " + top + " < 60", "#answers");
        Browser.run("document.querySelector('.views').scrollIntoView({block: 'center'})");
        Browser.until(
                "document.querySelector('#answers').getBoundingClientRect().bottom"
                        + " <= document.querySelector('.views').getBoundingClientRect().top + 1");
    }

    @Test
    void aResultTakesTheWholeWidthOfAPhone() {
        size(PHONE);
        served.fill("sweep/ground-check", "");
        assertFits(PHONE);
        assertEquals(
                "above, beside, below",
                Browser.run(
                        """
                        const row = [...document.querySelectorAll("#answers tbody tr")]
                          .find((one) => one.children.length === 4 && one.children[2].innerText);
                        const [label, value, limit, verdict] = [...row.children]
                          .map((cell) => cell.getBoundingClientRect());
                        return [
                          label.bottom <= value.top && label.width > 250 ? "above" : "",
                          verdict.top === value.top && verdict.left >= value.right ? "beside" : "",
                          limit.top >= value.bottom && limit.width > 250 ? "below" : "",
                        ].join(", ");
                        """));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/adapt", "/review", "/record"})
    void theOtherViewsFitAPhone(String view) {
        size(PHONE);
        served.open(Address.of(view, new Visit("monitor/composite", "")));
        Browser.until("document.querySelector('.results') !== null");
        assertFits(PHONE);
    }
}
