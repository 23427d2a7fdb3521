package halfwidth.localizer.station;

import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.uncertainty.Estimate;
import java.nio.file.Path;
import java.util.*;
import java.util.stream.*;
import org.junit.jupiter.api.Test;

class ClosedLoopTest {
    static final List<ArrayModel> ARRAYS =
            Stream.of("fourteen-two-carrier", "nine-uneven", "ten-one-carrier")
                    .map(n -> ArrayFile.read(Path.of("datasets", "arrays", n + ".csv")))
                    .toList();

    @Test
    void x() {
        long t = System.nanoTime();
        Map<String, Figures> f = new TreeMap<>();
        List<Object> l =
                LongStream.rangeClosed(1, Long.getLong("n", 510))
                        .parallel()
                        .mapToObj(
                                s -> {
                                    try {
                                        return (Object)
                                                Setup.of(
                                                        SimulatedStation.random(
                                                                s, ARRAYS.get((int) (s % 3))));
                                    } catch (RuntimeException e) {
                                        return s
                                                + " "
                                                + s % 3
                                                + " "
                                                + e
                                                + " "
                                                + e.getStackTrace()[0]
                                                + e.getStackTrace()[3]
                                                + e.getStackTrace()[4];
                                    }
                                })
                        .toList();
        System.out.println((System.nanoTime() - t) / 1e9 + " s");
        for (Object o : l) {
            if (o instanceof String s) {
                System.out.println(s);
                continue;
            }
            Setup u = (Setup) o;
            Reality r = new Reality(u.station());
            u.trims()
                    .forEach(
                            (c, t2) -> {
                                a(f, c + " trim finished", t2.finished() ? 1 : 0);
                                a(f, c + " trim cuts", t2.series().cutsMade());
                                var rows = t2.series().rows();
                                double x =
                                        rows.get(rows.size() - 1).sboCut()
                                                - rows.get(rows.size() - 1).csbCut();
                                a(f, c + " trim residual", Math.abs(r.middleAsPhased(c, x)));
                                z(f, c + " z aim", t2.series().aim(), r.middleAsPhased(c, x));
                                t2.series()
                                        .measuredPhaseConstant()
                                        .ifPresent(b -> z(f, c + " z beta", b, r.feedBeta(c)));
                                if (t2.series().cutsMade() > 0)
                                    z(
                                            f,
                                            c + " z beta used",
                                            t2.series().phaseConstant(),
                                            r.feedBeta(c));
                                for (Transmitter tx : Transmitter.values()) {
                                    z(
                                            f,
                                            c + " z offset",
                                            t2.phased().get(tx).offset(),
                                            r.offset(tx, c, x));
                                    z(
                                            f,
                                            c + " z offset rep",
                                            new Estimate(
                                                    t2.phased().get(tx).offset().value(),
                                                    t2.phased().get(tx).repeatable()),
                                            r.offset(tx, c, x) + r.pieceError());
                                }
                                double s0 = Math.signum(r.middleAsPhased(c, 0));
                                double past = 0;
                                for (var row : rows)
                                    past =
                                            Math.max(
                                                    past,
                                                    -s0
                                                            * r.middleAsPhased(
                                                                    c, row.sboCut() - row.csbCut())
                                                            / r.feedBeta(c));
                                a(f, c + " trim past mm", past * 1000);
                            });
            u.widths()
                    .forEach(
                            (c, m) ->
                                    m.forEach(
                                            (tx, w) -> {
                                                double d =
                                                        r.deflection(tx, c, WidthCrew.radiated(c));
                                                a(f, c + " width finished", w.finished() ? 1 : 0);
                                                a(f, c + " width rounds", w.rounds());
                                                a(
                                                        f,
                                                        c + " width error",
                                                        Math.abs(
                                                                d
                                                                        - new WidthCrew(
                                                                                        new Crew(
                                                                                                u
                                                                                                        .station()),
                                                                                        c)
                                                                                .target()));
                                                z(f, c + " z width", w.deflection(), d);
                                            }));
            String n = "A" + u.station().array().positions().size();
            for (var p : u.nulls()) {
                String k = "null " + (p.byMeter() ? "meter" : "");
                a(f, k + " finished", p.finished() ? 1 : 0);
                a(f, k + " cuts", p.cuts());
                double c1 = u.returns().cutOff(p.pair().element150()),
                        c9 = u.returns().cutOff(p.pair().element90());
                double last = p.netCuts().get(p.netCuts().size() - 1);
                double end = r.excess(p.pair(), c1, c9);
                if (!p.byMeter())
                    a(f, "null excess " + n + " pair " + p.pair().number(), Math.abs(end));
                z(f, "z null " + n + " pair " + p.pair().number(), p.excess(), end);
                z(f, k + " z null ALL", p.excess(), end);
                double start = end + r.returnBeta() * last;
                double past = 0;
                for (double x : p.netCuts())
                    past = Math.max(past, -Math.signum(start) * (start / r.returnBeta() - x));
                a(f, k + " past mm", past * 1000);
                a(f, "cuts " + n + " pair " + p.pair().number(), p.cuts());
                a(f, "past " + n + " pair " + p.pair().number(), past * 1000);
                a(f, "start " + n, Math.abs(start));
            }
            a(f, "composite read " + n, Math.abs(u.combined().read().value()));
            a(f, "composite pred " + n, Math.abs(u.combined().predicted().reading().value()));
            a(
                    f,
                    "composite predu " + n,
                    Math.abs(u.combined().predicted().reading().standardUncertainty()));
            a(f, "z composite " + n, u.combined().predicted().departure(u.combined().read()));
        }
        f.forEach(
                (k, v) ->
                        System.out.printf(
                                "%-32s %5d %s %s%n",
                                k,
                                v.number(),
                                v.spread(1),
                                k.contains("z ")
                                        ? v.honesty()
                                        : String.format(
                                                "mean %.4f max1mm %d",
                                                v.share(q -> q == 1), v.count(q -> q > 1.0001))));
    }

    static synchronized void a(Map<String, Figures> f, String k, double v) {
        f.computeIfAbsent(k, q -> new Figures()).add(v);
    }

    static void z(Map<String, Figures> f, String k, Estimate e, double t) {
        a(f, k, (e.value() - t) / e.standardUncertainty());
    }
}
