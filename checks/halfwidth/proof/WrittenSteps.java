package halfwidth.proof;

import java.util.List;
import java.util.Map;

/**
 * Steps that reach methods in other ways: rules, method references, static imports, generics,
 * variables of inferred type, page methods, and what changes a variable. Their units are worked out
 * by hand.
 */
final class WrittenSteps {
    /**
     * One step.
     *
     * @param unit the one that is right; "" if none is, or if none can be known
     */
    record Written(String java, String unit) {}

    private WrittenSteps() {}

    /** Methods of the page. */
    static List<PageStatement> members() {
        return List.of(
                member("double squareOf(double v) { return v * v; }"),
                member("int squareOf(int v) { return v; }"),
                member(
                        "double filled(double v) { double[] a = new double[2]; a[0] = v;"
                                + " Arrays.fill(a, v); return a[1]; }"),
                member(
                        "double added(double v) { var all = new ArrayList<Double>();"
                                + " all.add(v); all.add(2 * v); return all.get(0); }"),
                member(
                        "double sample(double v) { var all = new DescriptiveStatistics();"
                                + " all.addValue(v); all.addValue(2 * v);"
                                + " return all.getVariance(); }"),
                member(
                        "double slope(double u, double v) { var fit = new SimpleRegression();"
                                + " fit.addData(u, v); fit.addData(2 * u, 3 * v);"
                                + " return fit.getSlope(); }"),
                member(
                        "double replaced(double v) { List<Double> all ="
                                + " new ArrayList<>(List.of(v)); all.replaceAll(x -> x * x);"
                                + " return all.get(0); }"),
                member(
                        "double copied(double v, double w) { double[] a = {v}; double[] b = {w};"
                                + " System.arraycopy(b, 0, a, 0, 1); return a[0]; }"),
                member("void put(double[] into, double v) { into[0] = v; }"),
                member(
                        "double byMethod(double v) { double[] a = new double[1]; put(a, v);"
                                + " return a[0]; }"),
                member("<T> T itself(T thing) { return thing; }"));
    }

    static PageStatement member(String java) {
        return new PageStatement(PageStatement.Kind.MEMBER, java, "", "", false, "", Map.of());
    }

    static List<Written> all() {
        return List.of(
                new Written("t.doubleColumn(\"x\").variance()", "m²"),
                new Written("sqrt(t.doubleColumn(\"x\").variance())", "m"),
                new Written("t.doubleColumn(\"x\").square().sqrt().mean()", "m"),
                new Written("t.doubleColumn(\"x\").square().mean()", "m²"),
                new Written("t.doubleColumn(\"x\").power(3).max()", "m³"),
                new Written("t.doubleColumn(\"x\").power(0.5).max()", ""),
                new Written("t.doubleColumn(\"x\").divide(t.doubleColumn(\"y\")).mean()", "m/s"),
                new Written("t.doubleColumn(\"x\").multiply(t.doubleColumn(\"y\")).sum()", "m·s"),
                new Written(
                        "t.doubleColumn(\"x\").divide(t.doubleColumn(\"x\").mean()).max()", "1"),
                new Written(
                        "t.doubleColumn(\"x\").divide(t.doubleColumn(\"x\")).log10().max()", "1"),
                new Written(
                        "t.doubleColumn(\"x\").subtract(t.doubleColumn(\"x\").mean()).max()", "m"),
                new Written("t.doubleColumn(\"x\").add(t.doubleColumn(\"y\")).max()", ""),
                new Written(
                        "t.where(t.doubleColumn(\"x\").isGreaterThan(0)).doubleColumn(\"x\").mean()",
                        "m"),
                new Written("t.sortOn(\"x\").doubleColumn(\"y\").get(0)", "s"),
                new Written("t.column(0).size()", "1"),
                new Written("((DoubleColumn) t.column(0)).mean()", ""),
                new Written(
                        "t.stream().mapToDouble(r -> r.getDouble(\"x\") / r.getDouble(\"y\")).sum()",
                        "m/s"),
                new Written(
                        "halfwidth.vocabulary.Requirement.requireEach(t, \"x\", v -> v > 0, \"\")"
                                + ".doubleColumn(\"x\").mean()",
                        "m"),
                new Written("DoubleColumn.create(\"z\", array).variance()", "m²"),
                new Written(
                        "Table.create(DoubleColumn.create(\"z\", array)).doubleColumn(\"z\").mean()",
                        "m"),
                new Written(
                        "t.copy().addColumns(DoubleColumn.create(\"z\", array)).doubleColumn(\"z\").skewness()",
                        "1"),
                new Written("Arrays.stream(array).map(v -> v * v).sum()", "m²"),
                new Written("Arrays.stream(array).map(v -> v - 2).average().orElseThrow()", "m"),
                new Written("Arrays.stream(array).map(Math::sqrt).sum()", ""),
                new Written("Arrays.stream(array).map(Math::abs).max().getAsDouble()", "m"),
                new Written("Arrays.stream(array).map(v -> squareOf(v)).sum()", "m²"),
                new Written("Arrays.stream(array).reduce(0, (p, q) -> p + q)", "m"),
                new Written("Arrays.stream(array).reduce(1, (p, q) -> p * q)", ""),
                new Written("Arrays.stream(array).reduce(Double::sum).getAsDouble()", "m"),
                new Written("list.stream().mapToDouble(v -> v * v).sum()", "m²"),
                new Written("list.stream().mapToDouble(Double::doubleValue).max().orElse(0)", "m"),
                new Written("list.stream().collect(Collectors.averagingDouble(v -> v * v))", "m²"),
                new Written("list.stream().collect(Collectors.summingDouble(v -> v))", "m"),
                new Written("list.stream().collect(Collectors.counting())", "1"),
                new Written("list.stream().collect(Collectors.toList()).get(0)", "m"),
                new Written(
                        "list.stream().collect(Collectors.mapping(v -> v * v, Collectors.toList())).get(0)",
                        "m²"),
                new Written("list.stream().collect(Collectors.reducing(1.0, (p, q) -> p * q))", ""),
                new Written("list.stream().map(Object::hashCode).findFirst().get()", ""),
                new Written(
                        "Stream.iterate(metres, v -> v + 1).limit(3).mapToDouble(v -> v).sum()",
                        "m"),
                new Written(
                        "Stream.iterate(metres, v -> v * v).limit(3).mapToDouble(v -> v).sum()",
                        ""),
                new Written("DoubleStream.generate(() -> metres * metres).limit(2).sum()", "m²"),
                new Written("Collections.max(list)", "m"),
                new Written("Collections.nCopies(3, metres).get(0)", "m"),
                new Written("byName.getOrDefault(\"a\", metres)", "m"),
                new Written("byName.values().stream().mapToDouble(v -> v).sum()", "m"),
                new Written("Map.of(\"a\", metres, \"b\", 2 * metres).get(\"a\")", "m"),
                new Written("((DoubleUnaryOperator) v -> v * metres).applyAsDouble(metres)", "m²"),
                new Written(
                        "((DoubleUnaryOperator) v -> v * metres).andThen(v -> v * metres).applyAsDouble(2)",
                        ""),
                new Written("Optional.of(metres).map(v -> v * v).orElse(metres * metres)", "m²"),
                new Written("Optional.of(metres).map(v -> v / seconds).get()", "m/s"),
                new Written("Optional.of(metres).isPresent() ? metres : 0", "m"),
                new Written("toRadians(angle) * metres / metres", "1"),
                new Written("sin(toRadians(angle))", "1"),
                new Written("sin(metres)", ""),
                new Written("log10(metres)", ""),
                new Written("exp(metres / metres)", "1"),
                new Written("pow(metres, 3)", "m³"),
                new Written("pow(metres, ratio)", ""),
                new Written("hypot(metres, 2)", "m"),
                new Written("cbrt(metres * metres * metres)", "m"),
                new Written("fma(metres, metres, metres)", ""),
                new Written("toDegrees(atan2(metres, metres))", "°"),
                new Written("squareOf(metres)", "m²"),
                new Written("filled(metres)", "m"),
                new Written("added(metres)", "m"),
                new Written("sample(metres)", "m²"),
                new Written("slope(seconds, metres)", "m/s"),
                new Written("replaced(metres)", ""),
                new Written("copied(metres, seconds)", ""),
                new Written("byMethod(metres)", "m"),
                new Written("itself(metres)", "m"),
                new Written("new DescriptiveStatistics(array).getPercentile(50)", "m"),
                new Written("new DescriptiveStatistics(array).getKurtosis()", "1"),
                new Written("org.hipparchus.stat.StatUtils.variance(array)", "m²"),
                new Written("new Estimate(metres, 0.1).value()", "m"),
                new Written("Estimate.exact(metres).expanded(2).width()", "m"),
                new Written("Double.parseDouble(\"1\")", ""),
                new Written("Double.parseDouble(String.valueOf(metres))", ""),
                new Written("new Random(1).nextGaussian()", "1"),
                new Written("List.of(1.0, 1000.0).get(0) * metres", "m"));
    }
}
