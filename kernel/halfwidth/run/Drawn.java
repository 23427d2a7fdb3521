package halfwidth.run;

import java.io.Serializable;

/**
 * The values of one result over random draws of the inputs (JCGM 101:2008).
 *
 * @param draws how many gave a value
 * @param without how many gave none; the other figures leave them out
 * @param mean of the values
 * @param standardDeviation of the values
 * @param low the lower end of the interval that holds 95 % of them, as many below as above it
 * @param high its upper end
 */
public record Drawn(
        int draws, int without, double mean, double standardDeviation, double low, double high)
        implements Serializable {}
