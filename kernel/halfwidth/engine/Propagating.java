package halfwidth.engine;

import halfwidth.run.Drawn;
import halfwidth.run.InputQuantity;
import halfwidth.run.Message;
import halfwidth.run.Propagation;
import halfwidth.run.Response;
import halfwidth.run.Response.Manner;
import halfwidth.run.Run;
import halfwidth.run.Trace;
import halfwidth.run.Values;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * Finds what the inputs of a page do to its steps and results by running the very code with changed
 * inputs: one after the other by a step up and down, and all at random.
 */
final class Propagating {
    /** Both sides of a nearly straight value differ by no more than this part. */
    private static final double STRAIGHT = 0.1;

    /** A change below this part of a value is the rounding of its arithmetic. */
    private static final double ROUNDING = 1e-12;

    private final Message.Propagate ask;
    private final Ancestry ancestry;
    private final Replays replays;
    private final long end;
    private final Map<Integer, List<Response>> steps = new TreeMap<>();
    private final Map<String, List<Response>> results = new TreeMap<>();
    private final List<Propagation.Turn> turns = new ArrayList<>();
    private Glance base;

    Propagating(Message.Propagate ask, Ancestry ancestry, Replays replays) {
        this.ask = ask;
        this.ancestry = ancestry;
        this.replays = replays;
        this.end = System.nanoTime() + ask.time().toNanos();
    }

    Propagation propagation() {
        base = glance(ask.values());
        int moved = 0;
        while (moved < ask.inputs().size() && !over()) {
            move(moved);
            moved++;
        }
        Map<Integer, Trace> ofSteps = new LinkedHashMap<>();
        base.steps()
                .keySet()
                .forEach(index -> ofSteps.put(index, trace(ancestry.of(index), steps.get(index))));
        Map<String, Trace> ofResults = new LinkedHashMap<>();
        base.results()
                .keySet()
                .forEach(name -> ofResults.put(name, trace(ancestry.of(name), results.get(name))));
        Map<String, Drawn> drawn = ask.draws() > 0 ? drawn() : Map.of();
        return new Propagation(ask.inputs(), moved, ofSteps, ofResults, turns, drawn, ask.draws());
    }

    private boolean over() {
        return System.nanoTime() > end;
    }

    private Trace trace(BitSet statements, List<Response> responses) {
        return ancestry.trace(statements).with(responses == null ? List.of() : responses);
    }

    /** With workings, since these tell which conditions held. */
    private Glance glance(Values values) {
        return Glance.of(run(values, true));
    }

    /** Never with the page's checks, which hold for the worked example's own values alone. */
    private Run run(Values values, boolean workings) {
        return replays.run(
                new Message.Go(values.withoutChecks(), ask.barred(), workings), !workings);
    }

    private void move(int input) {
        InputQuantity quantity = ask.inputs().get(input);
        double above = quantity.value() + quantity.step();
        double below = quantity.value() - quantity.step();
        Glance up = glance(ask.values().with(quantity, above));
        Glance down = glance(ask.values().with(quantity, below));
        BitSet turned = turned(input, up, true);
        turned.or(turned(input, down, false));
        Sides sides = new Sides(input, above - below);
        base.steps()
                .forEach(
                        (index, at) ->
                                sides.response(
                                                at,
                                                up.steps().get(index),
                                                down.steps().get(index),
                                                ancestry.of(index).intersects(turned))
                                        .ifPresent(found -> add(steps, index, found)));
        base.results()
                .forEach(
                        (name, at) ->
                                sides.response(
                                                at,
                                                up.results().get(name),
                                                down.results().get(name),
                                                ancestry.of(name).intersects(turned))
                                        .ifPresent(found -> add(results, name, found)));
    }

    private static <K> void add(Map<K, List<Response>> all, K of, Response found) {
        all.computeIfAbsent(of, key -> new ArrayList<>()).add(found);
    }

    /** The steps that decided otherwise; of those that follow from another, only the other. */
    private BitSet turned(int input, Glance side, boolean up) {
        BitSet other = new BitSet();
        base.decisions()
                .forEach(
                        (index, decided) -> {
                            if (!decided.equals(side.decisions().get(index))) {
                                other.set(index);
                            }
                        });
        BitSet first = new BitSet();
        other.stream()
                .filter(
                        index -> {
                            BitSet before = (BitSet) ancestry.of(index).clone();
                            before.clear(index);
                            return !before.intersects(other);
                        })
                .forEach(
                        index -> {
                            first.set(index);
                            turns.add(new Propagation.Turn(input, index, up));
                        });
        return first;
    }

    /**
     * Both sides of one input.
     *
     * @param apart by how much the input differs between them
     */
    private record Sides(int input, double apart) {

        /** How a value follows; empty if it stays where it is. */
        Optional<Response> response(double at, Double above, Double below, boolean turned) {
            double up = above == null ? Double.NaN : above - at;
            double down = below == null ? Double.NaN : below - at;
            if (above == null || below == null) {
                double one = above == null ? -down : up;
                return Optional.of(new Response(input, one / (apart / 2), up, down, Manner.ENDS));
            }
            double more = Math.max(Math.abs(up), Math.abs(down));
            double rounding = ROUNDING * Math.abs(at);
            if (more <= rounding) {
                return Optional.empty();
            }
            boolean straight = Math.abs(up + down) <= Math.max(STRAIGHT * more, rounding);
            Manner manner = straight ? Manner.STRAIGHT : turned ? Manner.TURNS : Manner.BENT;
            return Optional.of(new Response(input, (above - below) / apart, up, down, manner));
        }
    }

    private Map<String, Drawn> drawn() {
        List<InputQuantity> uncertain =
                ask.inputs().stream().filter(one -> one.standardUncertainty() > 0).toList();
        SplittableRandom random = new SplittableRandom(ask.seed());
        Map<String, Sample> samples = new HashMap<>();
        base.results().keySet().forEach(name -> samples.put(name, new Sample(ask.draws())));
        for (int draw = 0; draw < ask.draws() && !over(); draw++) {
            double[] numbers =
                    uncertain.stream()
                            .mapToDouble(
                                    one ->
                                            one.value()
                                                    + one.standardUncertainty()
                                                            * random.nextGaussian())
                            .toArray();
            Map<String, Double> found =
                    Glance.results(run(ask.values().with(uncertain, numbers), false));
            samples.forEach((name, sample) -> sample.add(found.get(name)));
        }
        Map<String, Drawn> drawn = new TreeMap<>();
        samples.forEach(
                (name, sample) -> sample.drawn().ifPresent(found -> drawn.put(name, found)));
        return drawn;
    }
}
