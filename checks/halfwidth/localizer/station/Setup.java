package halfwidth.localizer.station;

import halfwidth.localizer.monitor.ArraySide;
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
 * @param nulls of all pairs
 * @param combined the composite
 */
record Setup(
        SimulatedStation station,
        Map<Channel, Trimmed> trims,
        Map<Channel, Map<Transmitter, WidthCrew.Set>> widths,
        ReturnCrew returns,
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
        returns.makeAlike(ArraySide.ON_150);
        returns.makeAlike(ArraySide.ON_90);
        List<Nulled> nulls = nulls(crew, returns, balance);
        return new Setup(
                station,
                trims,
                widths,
                returns,
                nulls,
                new CompositeCrew(crew, returns, balance).combine(nulls));
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

    private static List<Nulled> nulls(Crew crew, ReturnCrew returns, Estimate balance) {
        List<Nulled> nulls = new ArrayList<>();
        for (AntennaPair pair : crew.station().monitor().pairs()) {
            returns.bringNearer(pair);
            nulls.add(new NullCrew(returns, crew, pair, balance).bring());
        }
        return nulls;
    }
}
