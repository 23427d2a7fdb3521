package halfwidth.localizer.uncertainty;

/**
 * What one input adds to the uncertainty of a result.
 *
 * @param name the input
 * @param sensitivity how much the result changes with the input (unit of the result over unit of
 *     the input)
 * @param standardUncertainty |sensitivity| times the standard uncertainty of the input (unit of the
 *     result)
 */
public record Contribution(String name, double sensitivity, double standardUncertainty) {}
