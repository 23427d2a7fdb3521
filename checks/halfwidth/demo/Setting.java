package halfwidth.demo;

import halfwidth.localizer.station.Channel;
import halfwidth.localizer.station.Instruments.Precision;
import halfwidth.localizer.station.Radiated;
import halfwidth.localizer.station.Transmitter;
import java.util.ArrayList;
import java.util.List;

/** The crew checks the modulation, which it leaves as it is, and sets both widths. */
record Setting(Desk desk, Station station) {
    private static final int MOST_ROUNDS = 5;

    /** Depths of each tone where the carrier is balanced (%). */
    static final double DEPTH = 20;

    /** Standard deviation of a depth as read (%). */
    static final double NOISE = 0.03;

    void modulation() {
        List<List<String>> rows = new ArrayList<>();
        for (Channel channel : Channel.values()) {
            for (Transmitter transmitter : Transmitter.values()) {
                double half = 50 * balance(transmitter, channel);
                rows.add(
                        List.of(
                                Station.number(transmitter),
                                Station.word(channel),
                                depth(DEPTH - half),
                                depth(DEPTH + half),
                                Typed.ddm(station.ownDdm(transmitter, channel))));
            }
        }
        desk.sheet("transmit/modulation")
                .set("aimBalance", "0", "depthStep", "0.1", "ddmStep", "1 ‰")
                .set("stopDepth", "0.3", "stopBalance", "3 ‰")
                .table("depths", "transmitter,carrier,90 Hz [%],150 Hz [%],DDM [DDM]", rows)
                .run();
    }

    private String depth(double truth) {
        return Typed.number(station.read(truth, new Precision(0.1, NOISE)), 1);
    }

    private double balance(Transmitter transmitter, Channel channel) {
        return station.simulated().truth().signal(transmitter, channel).balance();
    }

    void widths() {
        double halfWidth = desk.visit("site/course-geometry").number("halfWidth");
        setAll(Channel.COURSE, halfWidth, Radiated.BOTH);
        setAll(Channel.CLEARANCE, Phasing.CLEARANCE_POINT, Radiated.CLEARANCE);
        desk.clear();
    }

    private void setAll(Channel channel, double azimuth, Radiated radiated) {
        List<List<String>> rows = new ArrayList<>();
        boolean changing = true;
        for (int round = 1; changing && round <= MOST_ROUNDS; round++) {
            for (Transmitter transmitter : Transmitter.values()) {
                rows.add(row(channel, transmitter, azimuth, radiated));
            }
            Visit set = page(channel, round, rows);
            changing = false;
            for (Transmitter transmitter : Transmitter.values()) {
                changing |= turn(channel, transmitter, set);
            }
        }
    }

    private List<String> row(
            Channel channel, Transmitter transmitter, double azimuth, Radiated radiated) {
        return List.of(
                Station.number(transmitter),
                Typed.number(100 * station.amplitude(transmitter, channel), 1),
                read(azimuth, transmitter, radiated),
                read(-azimuth, transmitter, radiated),
                read(0, transmitter, radiated));
    }

    private String read(double azimuth, Transmitter transmitter, Radiated radiated) {
        return Typed.ddm(station.simulated().ddmFarAway(azimuth, transmitter, radiated));
    }

    private Visit page(Channel channel, int round, List<List<String>> rows) {
        boolean course = channel == Channel.COURSE;
        Sheet sheet =
                desk.sheet(
                        course ? "transmit/course-width" : "transmit/clearance-width",
                        "reading-" + round);
        if (course) {
            sheet.set("category", "II");
        } else {
            sheet.set("wanted", Typed.ddm(wantedClearance()), "azimuth", "10 °");
        }
        return sheet.set("scale", "% of amplitude", "controlStep", "0.5")
                .set("controlLeast", "20", "controlMost", "300", "ddmStep", "1 ‰")
                .set("nearOverFar", "1")
                .table(
                        "widths",
                        "transmitter,setting [1],150 side [DDM],90 side [DDM],course line [DDM]",
                        List.copyOf(rows))
                .run();
    }

    /** What the clearance carrier alone should read by the array's design. */
    private double wantedClearance() {
        return station.array().farField(Phasing.CLEARANCE_POINT).clearance().orElseThrow().ddm();
    }

    private boolean turn(Channel channel, Transmitter transmitter, Visit set) {
        String number = Station.number(transmitter);
        boolean turn = set.words("advice" + number).startsWith("Set ");
        if (turn) {
            station.setAmplitude(transmitter, channel, set.number("next" + number) / 100);
        }
        return turn;
    }
}
