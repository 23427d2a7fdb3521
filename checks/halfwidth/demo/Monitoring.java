package halfwidth.demo;

import halfwidth.localizer.signal.Tone;
import halfwidth.localizer.station.AntennaPair;
import halfwidth.localizer.station.Channel;
import halfwidth.localizer.station.SimulatedMonitor;
import halfwidth.localizer.station.Transmitter;
import halfwidth.run.Shown;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The crew makes the returns of each side alike, nulls every pair and reads the composite. */
final class Monitoring {
    /** The pair of which too much was cut: the ruler was read from its wrong end. */
    static final int OVERCUT = 4;

    private static final double OVERCUT_FACTOR = 1.7;
    private static final int MOST_CUTS = 8;
    private static final int READINGS_OF_BALANCE = 16;

    private final Desk desk;
    private final Station station;
    private final SimulatedMonitor monitor;
    private final Map<Integer, Double> cutOff = new TreeMap<>();
    private final Map<AntennaPair, List<List<String>>> series = new java.util.LinkedHashMap<>();

    Monitoring(Desk desk, Station station) {
        this.desk = desk;
        this.station = station;
        monitor = station.simulated().monitor();
    }

    /** All that was cut off a return (m). */
    double cutOff(int element) {
        return cutOff.getOrDefault(element, 0.0);
    }

    private void cut(int element, double metres) {
        double cut = monitor.cut(element, metres);
        cutOff.merge(element, cut, Double::sum);
    }

    private Visit constant() {
        return desk.visit("lines/phase-constant/returns");
    }

    void makeAlike() {
        cutBy(list("as-found"), "first go [mm]");
        cutBy(list("after-first-cuts"), "cut [mm]");
        list("after-second-cuts");
        desk.clear();
    }

    private Visit list(String visit) {
        List<List<String>> rows = new ArrayList<>();
        for (Tone side : List.of(Tone.HZ_90, Tone.HZ_150)) {
            int reference = monitor.pairs().get(0).element(side);
            for (AntennaPair pair : monitor.pairs()) {
                rows.add(returnOf(pair.element(side), side, reference));
            }
        }
        return desk.sheet("monitor/return-lines", visit)
                .set("linePerInch", constant().printed("bestPerInch"))
                .set("linePerInchUncertainty", constant().printedUncertainty("bestPerInch"))
                .set("longerLineReads", "larger", "resolution", "0.5 °")
                .set("tapeUncertainty", "0.05 m", "smallestCut", "1/16 in")
                .table("returns", "return,side,phase [°],length [m]", rows)
                .run();
    }

    private List<String> returnOf(int element, Tone side, int reference) {
        double phase = element == reference ? 0 : monitor.delayReading(element, reference);
        double length =
                station.simulated().truth().returns().get(element - 1).length() - cutOff(element);
        return List.of(
                String.valueOf(element),
                side == Tone.HZ_90 ? "90" : "150",
                Typed.number(phase, 1),
                Typed.number(station.read(length, TAPE), 2));
    }

    private static final halfwidth.localizer.station.Instruments.Precision TAPE =
            new halfwidth.localizer.station.Instruments.Precision(0.01, 0.05);

    /** Cuts what a list has in one of its columns. */
    private void cutBy(Visit list, String column) {
        for (String table : List.of("cutList90", "cutList150")) {
            Shown.Grid grid = list.grid(table);
            int name = grid.columns().indexOf("return");
            int length = grid.columns().indexOf(column);
            for (List<Serializable> row : grid.rows()) {
                cut(Integer.parseInt((String) row.get(name)), (Double) row.get(length) / 1000);
            }
        }
    }

    void nullPairs() {
        String own = balance();
        for (AntennaPair pair : monitor.pairs()) {
            bring(pair, own);
        }
        desk.clear();
        composite(own);
        desk.clear();
    }

    static String name(AntennaPair pair) {
        return pair.element90() + " and " + pair.element150();
    }

    /** The carrier's own DDM as the mean of several readings. */
    private String balance() {
        double sum = 0;
        for (int i = 0; i < READINGS_OF_BALANCE; i++) {
            sum += station.ownDdm(Transmitter.ONE, Channel.COURSE);
        }
        return Typed.number(sum / READINGS_OF_BALANCE, 4);
    }

    private void bring(AntennaPair pair, String own) {
        double start90 = cutOff(pair.element90());
        double start150 = cutOff(pair.element150());
        double first = monitor.pairDdm(pair, Transmitter.ONE);
        Tone shorter = first > 0 ? Tone.HZ_150 : Tone.HZ_90;
        monitor.insertAdapter(pair, shorter);
        String with = Typed.ddm(monitor.pairDdm(pair, Transmitter.ONE));
        monitor.removeAdapter();
        List<List<String>> rows = new ArrayList<>();
        series.put(pair, rows);
        double reading = first;
        for (int cuts = 0; cuts < MOST_CUTS; cuts++) {
            rows.add(
                    List.of(
                            inches(cutOff(pair.element150()) - start150),
                            inches(cutOff(pair.element90()) - start90),
                            Typed.ddm(reading)));
            Visit visit =
                    desk.sheet(
                                    "monitor/pair-null",
                                    "pair-" + pair.number() + "-reading-" + (cuts + 1))
                            .set("pair", "elements " + name(pair))
                            .set("linePerInch", constant().printed("bestPerInch"))
                            .set(
                                    "linePerInchUncertainty",
                                    constant().printedUncertainty("bestPerInch"))
                            .set("resolution", "1 ‰", "smallestCut", "1/16 in", "target", "1 ‰")
                            .set("firstFraction", "0.8", "carrierDdm", own)
                            .set("adapterSide", shorter == Tone.HZ_150 ? "150" : "90")
                            .set("adapterLength", adapter(), "adapterUncertainty", "0.2 °")
                            .set("withAdapter", with)
                            .table(
                                    "cuts",
                                    "150 Hz side [in],90 Hz side [in],reading [DDM]",
                                    List.copyOf(rows))
                            .run();
            double next = visit.number("nextCutMillimetres") / 1000;
            if (next == 0) {
                return;
            }
            boolean slipped = pair.number() == OVERCUT && cuts == 0;
            Tone side = visit.words("side").contains("150") ? Tone.HZ_150 : Tone.HZ_90;
            cut(pair.element(side), slipped ? OVERCUT_FACTOR * next : next);
            reading = monitor.pairDdm(pair, Transmitter.ONE);
        }
    }

    /** By the phase meter, once for all: it is the same adapter each time. */
    private String adapter() {
        double step = Station.PHASE.resolution();
        double truth = station.simulated().truth().lines().adapter();
        return Typed.number(step * Math.rint(truth / step), 1) + " °";
    }

    private static String inches(double metres) {
        return Typed.number(metres / Station.METRES_PER_INCH, 4);
    }

    private void composite(String own) {
        AntennaPair inner = monitor.pairs().get(0);
        List<List<String>> rows = new ArrayList<>();
        series.forEach((pair, readings) -> rows.add(share(pair, readings, inner)));
        desk.sheet("monitor/composite")
                .set("resolution", "1 ‰", "target", "1 ‰", "carrierDdm", own)
                .set("linePerInch", constant().printed("bestPerInch"))
                .set("commonUncertainty", "0.3 °")
                .set("measured", Typed.ddm(monitor.compositeDdm(Transmitter.ONE)))
                .table(
                        "pairs",
                        "pair,weight [1],carrier [1],K [1],reading [DDM],common [°],150 cut"
                                + " [in],90 cut [in]",
                        rows)
                .run();
    }

    private List<String> share(AntennaPair pair, List<List<String>> readings, AntennaPair inner) {
        List<String> last = readings.get(readings.size() - 1);
        Visit visit =
                desk.visit(
                        "monitor/pair-null/pair-" + pair.number() + "-reading-" + readings.size());
        double carrier = station.array().course().csb().get(pair.element150() - 1).amplitude();
        double common =
                (turned(pair.element90(), inner.element90())
                                + turned(pair.element150(), inner.element90()))
                        / 2;
        return List.of(
                name(pair),
                "1",
                Surveying.plain(carrier),
                visit.printed("sensitivity"),
                last.get(2),
                Typed.number(common, 2),
                last.get(0),
                last.get(1));
    }

    private double turned(int element, int reference) {
        return element == reference
                ? 0
                : Math.IEEEremainder(monitor.delayReading(element, reference), 360);
    }
}
