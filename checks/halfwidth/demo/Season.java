package halfwidth.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * One season at Varnholt Heath and the five years after it: every page is filled in with what the
 * simulated station reads, and what a page says is done on the station.
 *
 * @param station as it is left
 * @param desk with all visits
 * @param phasing what was set and cut of the feeds
 * @param monitoring what was cut of the returns
 */
record Season(Station station, Desk desk, Phasing phasing, Monitoring monitoring) {

    /** Writes the season's files into a folder, by default that of the demo station. */
    public static void main(String[] arguments) {
        work(Path.of(arguments.length > 0 ? arguments[0] : "datasets/demo"));
    }

    static Season work(Path folder) {
        Station station = new Station();
        try (Desk desk = new Desk(folder)) {
            new Surveying(desk, station).survey();
            new Measuring(desk, station).measure();
            Arraying arraying = new Arraying(desk, station);
            arraying.predict();
            Setting setting = new Setting(desk, station);
            setting.modulation();
            Phasing phasing = new Phasing(desk, station);
            phasing.trim();
            setting.widths();
            arraying.measureCurrents();
            arraying.studyTolerances();
            Monitoring monitoring = new Monitoring(desk, station);
            monitoring.makeAlike();
            monitoring.nullPairs();
            keep(desk, station, phasing);
            head(folder);
            return new Season(station, desk, phasing, monitoring);
        }
    }

    private static void keep(Desk desk, Station station, Phasing phasing) {
        Sweeping sweeping = new Sweeping(desk, station);
        sweeping.commission();
        Keeping commissioned = new Keeping(desk, station, phasing, List.of());
        commissioned.alarms();
        commissioned.reference();
        commissioned.brief();
        sweeping.everyHalfYear();
        new Keeping(desk, station, phasing, sweeping.history()).years();
    }

    private static void head(Path folder) {
        List<List<String>> job =
                List.of(
                        List.of("name", "value"),
                        List.of("Station", "Varnholt Heath (invented)"),
                        List.of("Runway", "14"),
                        List.of("Category", "II"),
                        List.of("Channel", "24Y, 108.75 MHz"));
        try {
            Files.writeString(folder.resolve("job.csv"), Sheet.text(job));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
