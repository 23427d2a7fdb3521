package halfwidth.demo;

import halfwidth.localizer.array.FeedPath;
import halfwidth.localizer.array.Place;
import halfwidth.localizer.station.Channel;
import halfwidth.localizer.station.Radiated;
import halfwidth.localizer.station.Transmitter;
import halfwidth.run.Shown;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The crew phases both transmitters and cuts a feed, again and again, until a page says stop. */
final class Phasing {
    /**
     * The marks at which a carrier is read (deg): those next to the half-width points, and wide.
     */
    static final double COURSE_POINT = 2;

    static final double CLEARANCE_POINT = 10;

    private static final double OFFSET_STEP = 0.5;
    private static final int MOST_ROUNDS = 8;

    private final Desk desk;
    private final Station station;
    private final Map<Channel, List<List<String>>> trims = new EnumMap<>(Channel.class);
    private final Map<Channel, double[]> cuts = new EnumMap<>(Channel.class);
    private final Map<String, Double> offsets = new TreeMap<>();

    Phasing(Desk desk, Station station) {
        this.desk = desk;
        this.station = station;
        for (Channel channel : Channel.values()) {
            trims.put(channel, new ArrayList<>());
            cuts.put(channel, new double[2]);
            for (Transmitter transmitter : Transmitter.values()) {
                offsets.put(key(channel, transmitter), 0.0);
            }
        }
    }

    private static String key(Channel channel, Transmitter transmitter) {
        return Station.word(channel) + " " + Station.number(transmitter);
    }

    /** The offset that is set (deg). */
    double offset(Channel channel, Transmitter transmitter) {
        return offsets.get(key(channel, transmitter));
    }

    void trim() {
        boolean cutting = true;
        for (int round = 0; cutting && round < MOST_ROUNDS; round++) {
            phase(round);
            cutting = false;
            for (Channel channel : Channel.values()) {
                cutting |= trim(channel, round);
            }
        }
        desk.clear();
    }

    private void phase(int round) {
        List<List<String>> rows = new ArrayList<>();
        int passes = round == 0 ? 2 : 1;
        for (int pass = 1; pass <= passes; pass++) {
            for (Channel channel : Channel.values()) {
                for (Transmitter transmitter : Transmitter.values()) {
                    rows.add(row(channel, transmitter));
                }
            }
            dial(round == 0 ? "as-found-" + pass : "after-cut-" + round, rows);
        }
    }

    private List<String> row(Channel channel, Transmitter transmitter) {
        double at = channel == Channel.COURSE ? COURSE_POINT : CLEARANCE_POINT;
        station.simulated().insertQuadraturePiece(channel);
        String with150 = read(at, channel, transmitter);
        String with90 = read(-at, channel, transmitter);
        station.simulated().removeQuadraturePiece(channel);
        return List.of(
                Station.number(transmitter),
                Station.word(channel),
                Typed.number(offset(channel, transmitter), 1),
                with150,
                with90,
                read(at, channel, transmitter),
                read(-at, channel, transmitter));
    }

    /** At a mark of the circle, one carrier on the air. */
    private String read(double azimuth, Channel channel, Transmitter transmitter) {
        Place mark = new Place(azimuth, Surveying.CIRCLE);
        Radiated alone = Station.alone(channel);
        return Typed.ddm(station.simulated().ddmAt(mark, transmitter, alone).orElseThrow());
    }

    /** What the prediction says that the sidebands lead by at a mark, however they are fed. */
    private String lead(String column, double azimuth) {
        Shown.Grid marks = desk.visit("array/prediction").grid("corrections");
        int at = marks.columns().indexOf("azimuth");
        int lead = marks.columns().indexOf(column);
        return marks.rows().stream()
                .filter(row -> row.get(at).equals(azimuth))
                .map(row -> Typed.number((Double) row.get(lead), 1) + " °")
                .findFirst()
                .orElseThrow();
    }

    private void dial(String visit, List<List<String>> rows) {
        Visit phased =
                desk.sheet("transmit/quadrature-phasing", visit)
                        .set("ddmStep", "1 ‰", "path", "SBO", "pieceLength", piece())
                        .set("pieceUncertainty", "0.3 °", "withoutPiece", "at the offset now set")
                        .set("offsetStep", "0.5 °", "frequency", Station.FREQUENCY)
                        .set("velocityFactor", velocityFactor("feeds"))
                        .set("velocityFactorUncertainty", "0.003")
                        .set("leadThereCourse", lead("course SBO leads by, °", COURSE_POINT))
                        .set(
                                "leadThereClearance",
                                lead("clearance SBO leads by, °", CLEARANCE_POINT))
                        .table(
                                "phasing",
                                "transmitter,carrier,offset set [°],150 side with piece [DDM],90"
                                        + " side with piece [DDM],150 side without [DDM],90 side"
                                        + " without [DDM]",
                                rows)
                        .run();
        for (Channel channel : Channel.values()) {
            for (Transmitter transmitter : Transmitter.values()) {
                String name = channel == Channel.COURSE ? "offsetCourse" : "offsetClearance";
                double exact = phased.number(name + Station.number(transmitter));
                double dialled = OFFSET_STEP * Math.rint(exact / OFFSET_STEP);
                offsets.put(key(channel, transmitter), dialled);
                station.simulated().setSboOffset(transmitter, channel, dialled);
            }
        }
    }

    /** By the phase meter, once for all: it is the same piece each time. */
    private String piece() {
        double truth = station.simulated().truth().lines().quadraturePiece();
        double step = Station.PHASE.resolution();
        return Typed.number(step * Math.rint(truth / step), 1) + " °";
    }

    private String velocityFactor(String reel) {
        return desk.visit("lines/phase-constant/" + reel).printed("slopeFactor");
    }

    /** Fills in feed trim and cuts what it says; false when it says stop. */
    private boolean trim(Channel channel, int round) {
        double[] inches = cuts.get(channel);
        trims.get(channel)
                .add(
                        List.of(
                                Typed.number(inches[0], 4),
                                Typed.number(inches[1], 4),
                                Typed.number(offset(channel, Transmitter.ONE), 1),
                                Typed.number(offset(channel, Transmitter.TWO), 1)));
        Visit trim =
                desk.sheet("transmit/feed-trim", Station.word(channel) + "-" + round)
                        .set("frequency", Station.FREQUENCY)
                        .set("velocityFactor", Measuring.FEED_DATA_SHEET)
                        .set("velocityFactorUncertainty", "0.02", "resolution", "0.5 °")
                        .set("smallestCut", "1/16 in", "target", "0.5 °")
                        .table(
                                "phasing",
                                "SBO cut [in],CSB cut [in],offset 1 [°],offset 2 [°]",
                                List.copyOf(trims.get(channel)))
                        .run();
        boolean sbo = trim.words("feed").equals("SBO");
        double next = trim.number("nextCut");
        if (next == 0) {
            return false;
        }
        station.simulated().cutFeed(feed(channel, sbo), next * Station.METRES_PER_INCH);
        inches[sbo ? 0 : 1] += next;
        return true;
    }

    private static FeedPath feed(Channel channel, boolean sbo) {
        return channel == Channel.COURSE
                ? (sbo ? FeedPath.COURSE_SBO : FeedPath.COURSE_CSB)
                : (sbo ? FeedPath.CLEARANCE_SBO : FeedPath.CLEARANCE_CSB);
    }

    /** What was cut off the SBO feed less what was cut off the CSB feed (m). */
    double netCut(Channel channel) {
        double[] inches = cuts.get(channel);
        return (inches[0] - inches[1]) * Station.METRES_PER_INCH;
    }
}
