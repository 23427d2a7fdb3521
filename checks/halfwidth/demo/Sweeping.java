package halfwidth.demo;

import halfwidth.localizer.array.Place;
import halfwidth.localizer.station.Channel;
import halfwidth.localizer.station.Radiated;
import halfwidth.localizer.station.Transmitter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The crew sweeps the marks at commissioning and twice a year for five years. */
final class Sweeping {
    static final LocalDate COMMISSIONED = LocalDate.of(2021, 6, 15);

    /** From this day on the SBO of transmitter 1 falls off. */
    static final LocalDate DRIFT_BEGINS = LocalDate.of(2023, 8, 20);

    /** Part of its amplitude that the SBO loses in a year. */
    static final double LOSS_PER_YEAR = 0.022;

    static final int CHECKS = 10;

    /** Where transmitter 2 was typed with the wrong tone at commissioning. */
    static final double MISTYPED = 15;

    private static final String AS_TYPED = "2021-06-15-as-typed";

    private final Desk desk;
    private final Station station;
    private final Map<Place, String> reference = new LinkedHashMap<>();
    private final List<List<String>> history = new ArrayList<>();

    Sweeping(Desk desk, Station station) {
        this.desk = desk;
        this.station = station;
    }

    /** Dates, course lines and widths, as the periodic check takes them. */
    List<List<String>> history() {
        return List.copyOf(history);
    }

    static String place(LocalDate date) {
        return "sweep/ground-check/" + date;
    }

    void commission() {
        Map<Place, String> first = walk(Transmitter.ONE);
        Map<Place, String> second = walk(Transmitter.TWO);
        Map<Place, String> slipped = new LinkedHashMap<>(second);
        slipped.computeIfPresent(
                new Place(MISTYPED, Surveying.CIRCLE), (mark, typed) -> otherTone(typed));
        judge(AS_TYPED, first, slipped);
        record(COMMISSIONED, judge(COMMISSIONED.toString(), first, second));
        reference.putAll(first);
    }

    private static String otherTone(String typed) {
        return typed.endsWith("150")
                ? typed.replace("the 150", "the 90")
                : typed.replace("the 90", "the 150");
    }

    void everyHalfYear() {
        double set = station.amplitude(Transmitter.ONE, Channel.COURSE);
        for (int check = 1; check <= CHECKS; check++) {
            LocalDate date = date(check);
            station.setAmplitude(Transmitter.ONE, Channel.COURSE, set * left(date));
            Map<Place, String> first = walk(Transmitter.ONE);
            record(date, judge(date.toString(), first, walk(Transmitter.TWO)));
            if (check == CHECKS) {
                compare(date, first);
            }
        }
        desk.clear();
    }

    /** Half a year after the one before, give or take what the weather and the traffic ask for. */
    static LocalDate date(int check) {
        return COMMISSIONED.plusMonths(6L * check).plusDays((5L * check) % 13 - 6);
    }

    /** Part of the SBO amplitude that is left on a day. */
    static double left(LocalDate date) {
        double years = (date.toEpochDay() - DRIFT_BEGINS.toEpochDay()) / 365.25;
        return 1 - LOSS_PER_YEAR * Math.max(0, years);
    }

    /** From one end of the circle to the other; a mark that is lost stays blank. */
    private Map<Place, String> walk(Transmitter transmitter) {
        Map<Place, String> readings = new LinkedHashMap<>();
        for (Place mark : station.simulated().marks()) {
            station.simulated()
                    .ddmAt(mark, transmitter, Radiated.BOTH)
                    .ifPresent(reading -> readings.put(mark, Typed.ddm(reading)));
        }
        return readings;
    }

    private Visit judge(String visit, Map<Place, String> first, Map<Place, String> second) {
        List<List<String>> rows = new ArrayList<>();
        for (Place mark : station.simulated().marks()) {
            rows.add(
                    List.of(
                            Surveying.plain(mark.azimuth()),
                            first.getOrDefault(mark, ""),
                            second.getOrDefault(mark, ""),
                            reference.getOrDefault(mark, "")));
        }
        return desk.sheet("sweep/ground-check", visit)
                .set("arrayFile", Station.ARRAY, "markDistance", "300 m")
                .set("datumDistance", datum(), "nominalWidth", width())
                .set("category", "II", "rule", "ICAO", "readingStep", "1 ‰")
                .set("differenceAllowed", "20 ‰", "betweenAllowed", "20 ‰")
                .table(
                        "sweep",
                        "azimuth [°],transmitter 1 [DDM],transmitter 2 [DDM],reference [DDM]",
                        rows)
                .run();
    }

    private String datum() {
        return desk.visit("site/course-geometry").printed("arrayToThreshold");
    }

    private String width() {
        return desk.visit("site/course-geometry").printed("courseWidth");
    }

    private void record(LocalDate date, Visit check) {
        for (Transmitter transmitter : Transmitter.values()) {
            String number = Station.number(transmitter);
            double courseLine = station.simulated().ddmFarAway(0, transmitter, Radiated.BOTH);
            history.add(
                    List.of(
                            date.toString(),
                            number,
                            Typed.ddm(courseLine),
                            Typed.number(check.number("farWidth" + number), 3)));
        }
    }

    /** The last sweep of transmitter 1 with the one of commissioning. */
    private void compare(LocalDate date, Map<Place, String> last) {
        List<List<String>> rows =
                station.simulated().marks().stream()
                        .map(
                                mark ->
                                        List.of(
                                                Surveying.plain(mark.azimuth()),
                                                reference.getOrDefault(mark, ""),
                                                last.getOrDefault(mark, "")))
                        .toList();
        desk.sheet("sweep/comparison")
                .set("arrayFile", "none", "markDistance", "300 m", "datumDistance", datum())
                .set("nominalWidth", width(), "category", "II", "readingUncertainty", "0.5 ‰")
                .set("azimuthTolerance", "0.2", "differenceAllowed", "12 ‰")
                .set("earlierDate", COMMISSIONED.toString(), "laterDate", date.toString())
                .table("sweeps", "azimuth [°],earlier [DDM],later [DDM]", rows)
                .run();
    }
}
