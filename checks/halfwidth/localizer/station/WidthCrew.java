package halfwidth.localizer.station;

import halfwidth.localizer.Range;
import halfwidth.localizer.signal.Ddm;
import halfwidth.localizer.transmit.BothSides;
import halfwidth.localizer.transmit.SboAdjustment;
import halfwidth.localizer.transmit.SboControl;
import halfwidth.localizer.transmit.SettingScale;
import halfwidth.localizer.transmit.WidthCorrection;
import halfwidth.localizer.uncertainty.Estimate;

/** Sets the deflection of one channel at its points. */
record WidthCrew(Crew crew, Channel channel) {
    static final double STEP = 0.005;
    private static final SboControl CONTROL =
            new SboControl(SettingScale.RELATIVE_AMPLITUDE, STEP, new Range(0.2, 3));
    private static final int MOST_ROUNDS = 5;

    /**
     * What setting a width ended with.
     *
     * @param setting of the control
     * @param deflection read afterwards (1)
     * @param rounds how often the control was set
     * @param finished whether the last reading asked for no other setting
     */
    record Set(double setting, Estimate deflection, int rounds, boolean finished) {}

    /** 0.155 at the half-width points of the course; for the clearance, what the array should. */
    double target() {
        return channel == Channel.COURSE
                ? Ddm.COURSE_SECTOR_EDGE
                : crew.station()
                        .array()
                        .farField(Crew.points(channel))
                        .clearance()
                        .orElseThrow()
                        .ddm();
    }

    /** Sets the course with all on the air, the clearance alone. */
    Set set(Transmitter transmitter) {
        double setting = 1;
        int rounds = 0;
        while (true) {
            BothSides read = read(transmitter);
            SboAdjustment wanted =
                    new SboAdjustment(new WidthCorrection(read, target()), CONTROL, setting);
            boolean finished = !worthAStep(wanted);
            if (finished || rounds == MOST_ROUNDS) {
                return new Set(setting, read.deflection(), rounds, finished);
            }
            setting = wanted.settingToMake();
            crew.station().setSboAmplitude(transmitter, channel, setting);
            rounds++;
        }
    }

    /** A change that the receiver can tell, so that its noise is not followed for ever. */
    private static boolean worthAStep(SboAdjustment wanted) {
        return wanted.settingToMake() != wanted.present()
                && wanted.canTellApart(wanted.present(), wanted.settingToMake());
    }

    private BothSides read(Transmitter transmitter) {
        return crew.read(Crew.points(channel), transmitter, radiated(channel));
    }

    static Radiated radiated(Channel channel) {
        return channel == Channel.COURSE ? Radiated.BOTH : Radiated.CLEARANCE;
    }
}
