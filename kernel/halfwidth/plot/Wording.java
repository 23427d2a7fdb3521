package halfwidth.plot;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Says what a plot shows, for those who cannot see it and for search. */
record Wording(Axis across, Axis up) {
    /** Series no longer than this are spelled out point by point. */
    private static final int SPELLED_OUT = 12;

    String of(String title, List<Layer> layers) {
        String axes =
                "%s. Across: %s. Up: %s."
                        .formatted(title, named(across.words()), named(up.words()));
        String shown = layers.stream().map(this::of).collect(Collectors.joining(" "));
        return shown.isEmpty() ? axes + " Nothing to show." : axes + " " + shown;
    }

    private static String named(String label) {
        return label.isEmpty() ? "not named" : label;
    }

    private String of(Layer layer) {
        if (layer instanceof Layer.Points points) {
            return "Points %s: %s".formatted(points.name(), points(points.trace()));
        }
        if (layer instanceof Layer.Missing missing) {
            String places =
                    missing.across().mapToObj(across::words).collect(Collectors.joining("; "));
            return "%s: no reading at %s.".formatted(missing.name(), places);
        }
        if (layer instanceof Layer.Line line) {
            return "Line %s: %s".formatted(line.name(), line(line.trace()));
        }
        if (layer instanceof Layer.Band band) {
            return "Band %s: %s".formatted(band.name(), band(band));
        }
        if (layer instanceof Layer.Level level) {
            return "Level line %s at %s.".formatted(level.name(), up.words(level.at()));
        }
        if (layer instanceof Layer.Mark mark) {
            return "Upright line %s at %s.".formatted(mark.name(), across.words(mark.at()));
        }
        return limit((Layer.Limit) layer);
    }

    private String limit(Layer.Limit limit) {
        return "Limit %s: at %s %s from %s to %s."
                .formatted(
                        limit.name(),
                        limit.below() ? "least" : "most",
                        up.words(limit.at()),
                        across.words(limit.from()),
                        across.words(limit.to()));
    }

    private String points(Trace trace) {
        if (trace.missing() == trace.length()) {
            return "no readings, " + counted(trace);
        }
        if (trace.length() > SPELLED_OUT) {
            return counted(trace) + " " + extremes(trace);
        }
        String each =
                trace.present().mapToObj(i -> pair(trace, i)).collect(Collectors.joining("; "));
        return counted(trace) + " " + each + ".";
    }

    private String line(Trace trace) {
        if (trace.missing() == trace.length()) {
            return "no values.";
        }
        int[] present = trace.present().toArray();
        String ends =
                "from %s to %s."
                        .formatted(
                                pair(trace, present[0]), pair(trace, present[present.length - 1]));
        String gaps = trace.missing() > 0 ? " " + trace.missing() + " values missing." : "";
        return ends + " " + extremes(trace) + gaps;
    }

    private String band(Layer.Band band) {
        if (band.up().allMatch(Double::isNaN)) {
            return "no values.";
        }
        double widest =
                band.low()
                        .present()
                        .mapToDouble(i -> band.high().ys()[i] - band.low().ys()[i])
                        .map(Math::abs)
                        .filter(width -> !Double.isNaN(width))
                        .max()
                        .orElse(0);
        return "at most %s wide.".formatted(up.words(widest));
    }

    private static String counted(Trace trace) {
        int missing = trace.missing();
        String all = trace.length() == 1 ? "1 point" : trace.length() + " points";
        return missing == 0 ? all + "." : "%s, %s missing.".formatted(all, missing);
    }

    private String extremes(Trace trace) {
        Comparator<Integer> byHeight = Comparator.comparingDouble(i -> trace.ys()[i]);
        int lowest = trace.present().boxed().min(byHeight).orElseThrow();
        int highest = trace.present().boxed().max(byHeight).orElseThrow();
        return "Lowest %s, highest %s.".formatted(pair(trace, lowest), pair(trace, highest));
    }

    private String pair(Trace trace, int i) {
        return "%s at %s".formatted(up.words(trace.ys()[i]), across.words(trace.xs()[i]));
    }
}
