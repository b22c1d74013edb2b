package brakewright.profile;

import brakewright.operation.Operation;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Several profiles side by side: every setting and every result that matters.
 *
 * <p>Speeds at which rows are told are those of the first profile, so that all columns answer the
 * same question.
 *
 * @param profiles in the order of the columns
 * @param rows settings first, then results
 */
public record Comparison(List<Profile> profiles, List<Row> rows) {

    private static final double[] SHARES = {1.0 / 3.0, 2.0 / 3.0, 1.0};
    private static final double KILOMETRE_PER_HOUR = 1.0 / 3.6;

    /** Differences below this share of the value are rounding. */
    private static final double SAME = 1e-9;

    /** Copies the lists. */
    public Comparison {
        profiles = List.copyOf(profiles);
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param measure what it compares
     * @param readings in the order of the profiles
     */
    public record Row(Measure measure, List<Reading> readings) {

        /** Copies the readings. */
        public Row {
            readings = List.copyOf(readings);
        }

        /**
         * Returns how a column differs from the first.
         *
         * @param column its place, from 0
         * @return the difference; empty where either has no value
         */
        public OptionalDouble difference(int column) {
            OptionalDouble first = readings.get(0).value();
            OptionalDouble own = readings.get(column).value();
            return first.isPresent() && own.isPresent()
                    ? OptionalDouble.of(own.getAsDouble() - first.getAsDouble())
                    : OptionalDouble.empty();
        }

        /**
         * Returns whether a column is the best of the row, or as good as the best.
         *
         * @param column its place, from 0
         * @return true if it is; false throughout where neither way is better or all are alike
         */
        public boolean isBest(int column) {
            OptionalDouble own = readings.get(column).value();
            Quantity.Sense sense = measure.quantity().sense();
            if (sense == Quantity.Sense.NONE || own.isEmpty() || areAlike()) {
                return false;
            }
            double[] all =
                    readings.stream()
                            .filter(each -> each.value().isPresent())
                            .mapToDouble(each -> each.value().getAsDouble())
                            .toArray();
            double best =
                    sense == Quantity.Sense.HIGHER
                            ? Arrays.stream(all).max().orElseThrow()
                            : Arrays.stream(all).min().orElseThrow();
            return isSame(own.getAsDouble(), best);
        }

        private boolean areAlike() {
            OptionalDouble first = readings.get(0).value();
            return readings.stream()
                    .allMatch(
                            each ->
                                    each.value().isPresent() == first.isPresent()
                                            && (first.isEmpty()
                                                    || isSame(
                                                            each.value().getAsDouble(),
                                                            first.getAsDouble())));
        }

        private static boolean isSame(double one, double other) {
            return one == other
                    || Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
        }
    }

    /**
     * Compares profiles.
     *
     * @param first the one that the others are held against
     * @param others the others
     * @return the comparison
     */
    public static Comparison of(Profile first, Profile... others) {
        List<Profile> profiles = new ArrayList<>(List.of(first));
        profiles.addAll(List.of(others));
        List<ProfileResults> results =
                profiles.stream().map(each -> new ProfileResults(each.build())).toList();
        List<Row> rows = new ArrayList<>();
        for (Measure measure : measures(first.build(), results.get(0).operation())) {
            rows.add(new Row(measure, results.stream().map(each -> each.read(measure)).toList()));
        }
        return new Comparison(profiles, rows);
    }

    /**
     * Returns these columns in the order of a row, best first; those without a value come last.
     *
     * @param measure the row
     * @return a changed copy; the same where the row is not there or neither way is better
     */
    public Comparison sortedBy(Measure measure) {
        List<Integer> order = new ArrayList<>();
        for (int column = 0; column < profiles.size(); column++) {
            order.add(column);
        }
        rows.stream()
                .filter(row -> row.measure().equals(measure))
                .findFirst()
                .ifPresent(
                        row ->
                                order.sort(
                                        (one, other) ->
                                                Double.compare(rank(row, one), rank(row, other))));
        return new Comparison(
                order.stream().map(profiles::get).toList(),
                rows.stream()
                        .map(
                                row ->
                                        new Row(
                                                row.measure(),
                                                order.stream().map(row.readings()::get).toList()))
                        .toList());
    }

    /**
     * Tells the verdicts that count in the row of verdicts.
     *
     * @param judged the profiles with their verdicts, in the order of these
     * @return the same profiles and rows
     */
    public Comparison judgedBy(List<JudgedProfile> judged) {
        List<Reading> verdicts =
                judged.stream()
                        .map(each -> Reading.of(each.evaluation().outcome().ordinal()))
                        .toList();
        return new Comparison(
                profiles,
                rows.stream()
                        .map(
                                row ->
                                        row.measure().quantity() == Quantity.VERDICT
                                                ? new Row(row.measure(), verdicts)
                                                : row)
                        .toList());
    }

    private static double rank(Row row, int column) {
        OptionalDouble value = row.readings().get(column).value();
        return switch (row.measure().quantity().sense()) {
            case HIGHER -> -value.orElse(Double.NEGATIVE_INFINITY);
            case LOWER -> value.orElse(Double.POSITIVE_INFINITY);
            case NONE -> 0.0;
        };
    }

    /** The rows of a comparison, told at the speeds of its first profile. */
    static List<Measure> measures(Build first, Operation operation) {
        double top = operation.topSpeed();
        double cruise = first.use().riding().cruiseSpeed();
        List<Measure> all = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            switch (quantity) {
                case STOP_DRY, STOP_WET ->
                        Arrays.stream(SHARES)
                                .map(share -> rounded(share * top))
                                .distinct()
                                .forEach(speed -> all.add(Measure.at(quantity, speed)));
                case RANGE ->
                        Arrays.stream(new double[] {cruise, rounded(first.use().speedMax())})
                                .filter(speed -> speed == cruise || rounded(cruise) != speed)
                                .distinct()
                                .forEach(speed -> all.add(Measure.at(quantity, speed)));
                case TIME_TO_CRUISE -> all.add(Measure.at(quantity, cruise));
                case HOTTEST_WINDING -> all.add(Measure.at(quantity, top));
                default -> all.add(Measure.of(quantity));
            }
        }
        return all;
    }

    /** To whole km/h, upwards from the slowest that can be told. */
    private static double rounded(double speed) {
        return Math.max(1.0, Math.rint(speed / KILOMETRE_PER_HOUR)) * KILOMETRE_PER_HOUR;
    }
}
