package halfwidth.localizer.pattern;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.signal.Tone;

/** Finds where guidance is weakest. */
final class ClearanceSearch {
    /** DDM up to which the course must be straight and below which it must not fall to 10° (1). */
    private static final double INNER_DDM = 0.180;

    private static final Range INNER = new Range(0, 10);
    private static final Range OUTER = new Range(10, Scan.LIMIT);
    private static final Range ALL = new Range(0, Scan.LIMIT);
    private static final Range WIDTHS = new Range(0.1, Scan.LIMIT);

    private ClearanceSearch() {}

    static SideClearance least(Scan scan, Tone side, Range sector) {
        Require.within("start of the sector", sector.least(), ALL, "deg");
        Require.within("end of the sector", sector.most(), ALL, "deg");
        Require.within("width of the sector", sector.width(), WIDTHS, "deg");
        return search(scan, side, sector);
    }

    static SideClearance outer(Scan scan, Tone side) {
        return search(scan, side, OUTER);
    }

    static SideClearance inner(Scan scan, Tone side) {
        double greatest = 0;
        double there = 0;
        for (int i : scan.outwards(side, INNER)) {
            double ddm = side.sign() * scan.value(i);
            if (ddm > greatest) {
                greatest = ddm;
                there = Scan.azimuth(i);
            }
            if (ddm >= INNER_DDM) {
                return search(scan, side, new Range(Math.abs(there), INNER.most()));
            }
        }
        return new SideClearance(side, new Range(Math.abs(there), INNER.most()), greatest, there);
    }

    private static SideClearance search(Scan scan, Tone side, Range sector) {
        double least = side.sign() * scan.ddm(side.sign() * sector.least());
        double there = side.sign() * sector.least();
        for (int i : scan.outwards(side, sector)) {
            if (side.sign() * scan.value(i) < least) {
                least = side.sign() * scan.value(i);
                there = Scan.azimuth(i);
            }
        }
        double refined = scan.leastNear(side, there, sector);
        double refinedDdm = side.sign() * scan.ddm(refined);
        return refinedDdm < least
                ? new SideClearance(side, sector, refinedDdm, refined)
                : new SideClearance(side, sector, least, there);
    }
}
