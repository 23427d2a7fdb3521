package halfwidth.proof;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The unit that a method gives for amounts in metres (and, in a regression, over seconds), by what
 * the method is called in mathematics: a mean is like what it is of, a variance is its square, a
 * correlation is a plain number. A method that is not here has no known unit.
 */
final class DimensionsOfMethods {
    private static final Map<String, String> BY_NAME =
            Map.of(
                    "m",
                    "mean|median|min|max|sum|range|quartile[13]|percentile|standardDeviation"
                            + "|geometricMean|quadraticMean|average|mode"
                            + "|get(Min|Max|Mean|Median|Sum|Average|Percentile|StandardDeviation)"
                            + "|get(QuadraticMean|GeometricMean|Element|Values|SortedValues)"
                            + "|abs|absExact|neg|negateExact|round|roundInt|rint|floor|ceil|ulp"
                            + "|toIntExact|nextUp|nextDown|nextAfter|copySign|scalb|hypot"
                            + "|cumSum|cumMax|cumMin|difference|lag|lead|add|subtract|remainder"
                            + "|addExact|subtractExact|IEEEremainder|floorMod"
                            + "|sumDifference|meanDifference"
                            + "|where|removeMissing|unique|subset|top|bottom|copy|filter|first"
                            + "|last|inRange|sampleN|sampleX|sorted|as\\w*Column|as\\w*Array"
                            + "|iterator|get|getDouble|getInt|getLong|getFloat|getShort|getNumber"
                            + "|getAs\\w+|orElse\\w*|or|stream|parallelStream|boxed|distinct"
                            + "|limit|skip|peek|takeWhile|dropWhile|sequential|parallel"
                            + "|unordered|onClose|toArray|toList|find\\w+|asDoubleStream"
                            + "|asLongStream|summaryStatistics|map\\w*|flatMap\\w*|reduce"
                            + "|subList|remove|(double|float|int|long|short|byte)Value|valueOf"
                            + "|append\\w*|asList|set|setMissing|emptyCopy|\\w+Column|nCol"
                            + "|sort\\w*On|drop\\w+|rows|retainColumns|selectColumns"
                            + "|rejectColumns|removeColumns\\w*|setName|addColumns"
                            + "|value|standardUncertainty|least|most|width|expanded|estimate"
                            + "|centre|spread|exact|within|readInSteps|intercept|at"
                            + "|newReadingAt|residual|residualDeviation"
                            + "|getIntercept|getInterceptStdErr|predict",
                    "m²",
                    "variance|populationVariance|sumOfSquares|square|sumSq|varianceDifference"
                            + "|getVariance|getPopulationVariance|getSumOfSquares"
                            + "|getSecondMoment|multiplyExact|multiplyFull"
                            + "|get(MeanSquareError|SumSquaredErrors|TotalSumSquares)"
                            + "|getRegressionSumSquares|result",
                    "m³",
                    "cube",
                    "1/m",
                    "reciprocal",
                    "1",
                    "skewness|kurtosis|getSkewness|getKurtosis|count(Missing|Unique)?|size|rowCount"
                            + "|columnCount|columnIndex|indexOf|lastIndexOf|autoCorrelation"
                            + "|pearsons|spearmans|kendalls|normalize|asRatio|pctChange|getN"
                            + "|getCount|getWindowSize|getR|getRSquare|getSignificance"
                            + "|signum|sign|random|atan2|floorDiv|compare|compareTo"
                            + "|getRowNumber|getBackingRowNumber|degreesOfFreedom|rSquared"
                            + "|effectiveDegreesOfFreedom|correlationWith|factor",
                    "%",
                    "asPercent",
                    "m/s",
                    "getSlope|getSlopeStdErr|getSlopeConfidenceInterval|slope",
                    "m·s",
                    "getSumOfCrossProducts");

    /** Where the name says it together with what is taken: a plain 2, or amounts in metres. */
    private static final Map<String, String> BY_SIGNATURE =
            Map.of(
                    "multiply(Number)", "m",
                    "divide(Number)", "m",
                    "multiply(NumericColumn)", "m²",
                    "divide(NumericColumn)", "1",
                    "power(double)", "m²");

    /** They take a probability and degrees of freedom, so that no unit is right on metres. */
    private static final Set<String> NOT_OF_METRES =
            Set.of("factor(double,double)", "effectiveDegreesOfFreedom(double[],double[])");

    private DimensionsOfMethods() {}

    static Optional<String> of(MethodCalls.Call call) {
        if (NOT_OF_METRES.contains(call.method())) {
            return Optional.empty();
        }
        return Optional.ofNullable(BY_SIGNATURE.get(call.method()))
                .or(
                        () ->
                                BY_NAME.entrySet().stream()
                                        .filter(one -> call.name().matches(one.getValue()))
                                        .map(Map.Entry::getKey)
                                        .findFirst());
    }
}
