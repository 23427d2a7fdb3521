package halfwidth.localizer.station;

import halfwidth.localizer.monitor.ArraySide;
import halfwidth.localizer.monitor.CutList;
import halfwidth.localizer.station.CompositeCrew.Combined;
import halfwidth.localizer.station.NullCrew.Nulled;
import halfwidth.localizer.station.TrimCrew.Trimmed;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A station set up from end to end by its crew: trims, widths, returns, nulls, composite.
 *
 * @param station the station as it is left
 * @param trims by channel
 * @param widths by channel, of both transmitters
 * @param returns all that was cut off the monitor returns
 * @param alike the returns of each side, measured again after they were cut to the shortest
 * @param nulls of all pairs
 * @param combined the composite
 */
record Setup(
        SimulatedStation station,
        Map<Channel, Trimmed> trims,
        Map<Channel, Map<Transmitter, WidthCrew.Set>> widths,
        ReturnCrew returns,
        List<CutList> alike,
        List<Nulled> nulls,
        Combined combined) {

    /** How many readings of the carrier's balance are averaged. */
    private static final int BALANCE_READINGS = 25;

    static Setup of(SimulatedStation station) {
        Crew crew = new Crew(station);
        Map<Channel, Trimmed> trims = trims(crew);
        Map<Channel, Map<Transmitter, WidthCrew.Set>> widths = widths(crew);
        double setting = widths.get(Channel.COURSE).get(Transmitter.ONE).setting();
        Estimate balance = crew.balance(Transmitter.ONE, setting, BALANCE_READINGS);
        ReturnCrew returns = new ReturnCrew(crew);
        List<CutList> alike =
                List.of(returns.makeAlike(ArraySide.ON_150), returns.makeAlike(ArraySide.ON_90));
        Estimate left = trims.get(Channel.COURSE).phased().get(Transmitter.ONE).offset();
        Crew.Signal signal = new Crew.Signal(balance, new Estimate(0, left.standardUncertainty()));
        List<Nulled> nulls = nulls(crew, returns, signal);
        return new Setup(
                station,
                trims,
                widths,
                returns,
                alike,
                nulls,
                new CompositeCrew(crew, returns, balance).combine(nulls));
    }

    /** The pairs nulled by their DDM, or those brought near by the phase meter instead. */
    List<Nulled> nulls(boolean byMeter) {
        return nulls.stream().filter(pair -> pair.byMeter() == byMeter).toList();
    }

    static List<Channel> channels(SimulatedStation station) {
        return List.of(Channel.values()).subList(0, station.array().carriers().size());
    }

    private static Map<Channel, Trimmed> trims(Crew crew) {
        Map<Channel, Trimmed> trims = new EnumMap<>(Channel.class);
        for (Channel channel : channels(crew.station())) {
            trims.put(channel, new TrimCrew(crew, channel).trim());
        }
        return trims;
    }

    /** The clearance first: through capture it is a little part of the course width. */
    private static Map<Channel, Map<Transmitter, WidthCrew.Set>> widths(Crew crew) {
        Map<Channel, Map<Transmitter, WidthCrew.Set>> widths = new EnumMap<>(Channel.class);
        List<Channel> channels = new ArrayList<>(channels(crew.station()));
        for (int i = channels.size() - 1; i >= 0; i--) {
            Channel channel = channels.get(i);
            WidthCrew width = new WidthCrew(crew, channel);
            Map<Transmitter, WidthCrew.Set> both = new EnumMap<>(Transmitter.class);
            for (Transmitter transmitter : Transmitter.values()) {
                both.put(transmitter, width.set(transmitter));
            }
            widths.put(channel, both);
        }
        return widths;
    }

    private static List<Nulled> nulls(Crew crew, ReturnCrew returns, Crew.Signal signal) {
        List<Nulled> nulls = new ArrayList<>();
        for (AntennaPair pair : crew.station().monitor().pairs()) {
            returns.bringNearer(pair);
            nulls.add(new NullCrew(returns, crew, pair, signal).bring());
        }
        return nulls;
    }
}
