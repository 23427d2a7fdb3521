package halfwidth.demo;

import halfwidth.localizer.station.Channel;
import halfwidth.localizer.station.Instruments.Precision;
import halfwidth.localizer.station.Transmitter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The crew proves the alarms and keeps the record: reference, flight, checks of later years. */
record Keeping(Desk desk, Station station, Phasing phasing, List<List<String>> history) {
    /** Where the alarms of the invented monitor come: metres, and per cent of sensitivity. */
    static final Map<String, Double> ALARMS =
            Map.of(
                    "course in the 150", 6.9,
                    "course in the 90", -6.7,
                    "wide", -14.5,
                    "narrow", 15.2,
                    "course power", 84.0,
                    "clearance power", 82.0);

    private static final double COURSE_POWER = 12.0;
    private static final double CLEARANCE_POWER = 6.0;
    private static final double SBO_POWER = 0.42;
    private static final double NORMAL_WIDTH = 0.155;
    private static final Precision WATTS = new Precision(0.1, 0.02);
    private static final Precision SECONDS = new Precision(0.1, 0.1);

    private Visit geometry() {
        return desk.visit("site/course-geometry");
    }

    void alarms() {
        List<List<String>> rows = new ArrayList<>();
        for (Transmitter transmitter : Transmitter.values()) {
            for (String alarm :
                    List.of(
                            "course in the 150",
                            "course in the 90",
                            "wide",
                            "narrow",
                            "course power",
                            "clearance power")) {
                rows.add(alarm(alarm, transmitter));
            }
        }
        desk.sheet("monitor/alarm-points")
                .set("category", "II", "carriers", "two")
                .set("ddmPerMetre", geometry().printed("ddmPerMetre"))
                .set("courseWidth", geometry().printed("courseWidth"))
                .set("courseScale", "1", "resolution", "1 ‰", "normalCourse", composite())
                .set("normalWidth", Typed.ddm(NORMAL_WIDTH), "sboPower", SBO_POWER + " W")
                .set("coursePower", COURSE_POWER + " W")
                .set("clearancePower", CLEARANCE_POWER + " W")
                .table("alarms", "alarm,transmitter,reading [DDM],power [W],time [s]", rows)
                .run();
    }

    private String composite() {
        return desk.visit("monitor/composite").printed("compositeReading");
    }

    private List<String> alarm(String alarm, Transmitter transmitter) {
        double at = ALARMS.get(alarm);
        String reading = "";
        String power = "";
        if (alarm.endsWith("power")) {
            double normal = alarm.startsWith("course") ? COURSE_POWER : CLEARANCE_POWER;
            power = Typed.number(station.read(normal * at / 100, WATTS), 1);
        } else if (alarm.startsWith("course")) {
            double normal = desk.visit("monitor/composite").number("compositeReading");
            double shift = at * geometry().number("ddmPerMetre");
            reading = Typed.ddm(station.read(normal + shift, Station.DDM));
        } else {
            reading = Typed.ddm(station.read(NORMAL_WIDTH * (1 + at / 100), Station.DDM));
        }
        String time = Typed.number(station.read(1.4, SECONDS), 1);
        return List.of(alarm, Station.number(transmitter), reading, power, time);
    }

    void reference() {
        Visit sweep = desk.visit(Sweeping.place(Sweeping.COMMISSIONED));
        Visit modulation = desk.visit("transmit/modulation");
        Visit alarms = desk.visit("monitor/alarm-points");
        Sheet sheet =
                desk.sheet("record/facility-reference")
                        .set("station", "Varnholt Heath", "runway", "Runway 14", "category", "II")
                        .set("referenceDate", Sweeping.COMMISSIONED.toString())
                        .set("flightReport", "invented report 7", "receiver", "invented receiver 2")
                        .set("frequency", Station.FREQUENCY)
                        .set("courseWidth", geometry().printed("courseWidth"))
                        .set("ddmPerMetre", geometry().printed("ddmPerMetre"))
                        .set("shiftUncertainty", sweep.printedUncertainty("shift1"))
                        .set("widthUncertainty", sweep.printedUncertainty("farWidth1"))
                        .set("clearanceUncertainty", "0.5 ‰", "composite", composite());
        for (String number : List.of("1", "2")) {
            sheet.set("shift" + number, sweep.printed("shift" + number))
                    .set("measuredWidth" + number, sweep.printed("farWidth" + number))
                    .set("part90of" + number, sweep.printed("symmetry" + number))
                    .set("sum" + number, modulation.printed("sumCourse" + number))
                    .set("balance" + number, modulation.printed("balanceCourse" + number))
                    .set(
                            "power" + number,
                            COURSE_POWER + " W",
                            "sboPower" + number,
                            SBO_POWER + " W");
            for (String sector : List.of("inner90of", "inner150of", "outer90of", "outer150of")) {
                sheet.set(sector + number, sweep.printed(sector + number));
            }
        }
        sheet.set("sboOffset1", offset(Transmitter.ONE), "sboOffset2", offset(Transmitter.TWO))
                .set("alarm150", alarms.printed("shift150"), "alarm90", alarms.printed("shift90"))
                .set("alarmWide", alarms.printed("wide"), "alarmNarrow", alarms.printed("narrow"))
                .run();
    }

    private String offset(Transmitter transmitter) {
        return Typed.number(phasing.offset(Channel.COURSE, transmitter), 1) + " °";
    }

    void brief() {
        Visit reference = desk.visit("record/facility-reference");
        Sheet sheet =
                desk.sheet("record/flight-brief")
                        .set("category", "II", "groundDate", Sweeping.COMMISSIONED.toString())
                        .set("flightDate", Sweeping.COMMISSIONED.plusDays(8).toString())
                        .set("ddmPerMetre", geometry().printed("ddmPerMetre"))
                        .set("commissionedWidth", geometry().printed("courseWidth"))
                        .set("alignmentUncertainty", "0.5 ‰", "widthUncertainty", "0.02 °")
                        .set("clearanceUncertainty", "2 ‰", "depthUncertainty", "0.1");
        for (String number : List.of("1", "2")) {
            sheet.set("alignment" + number, reference.printed("alignment" + number))
                    .set("width" + number, reference.printed("width" + number))
                    .set("inner" + number, reference.printed("clearanceInner" + number))
                    .set("outer" + number, reference.printed("clearanceOuter" + number))
                    .set("depths" + number, reference.printed("depths" + number));
        }
        sheet.set("alarm150", reference.printed("monitor150"))
                .set("alarm90", reference.printed("monitor90"))
                .set("alarmWide", reference.printed("monitorWide"))
                .set("alarmNarrow", reference.printed("monitorNarrow"))
                .run();
        desk.clear();
    }

    void years() {
        Visit reference = desk.visit("record/facility-reference");
        desk.sheet("record/periodic-check")
                .set("category", "II")
                .set("referenceAlignment1", reference.printed("alignment1"))
                .set("referenceAlignment2", reference.printed("alignment2"))
                .set("referenceWidth1", reference.printed("width1"))
                .set("referenceWidth2", reference.printed("width2"))
                .set(
                        "initialAlignment",
                        "3 ‰",
                        "initialWidth",
                        "5",
                        "alignmentUncertainty",
                        "0.5 ‰")
                .set("widthUncertainty", "0.02 °", "changeDate", CHANGE.toString())
                .table("history", "date,transmitter,course line [DDM],width [°]", history)
                .run();
        desk.clear();
    }

    /** A day on which the shelter's air conditioning was replaced, which changed no signal. */
    static final java.time.LocalDate CHANGE = java.time.LocalDate.of(2022, 9, 1);
}
