package brakewright.profile;

import brakewright.numeric.Rounding;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

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
     * @param contends whether each profile may be the best of a row: none outside limits, and none
     *     whose brake is none, is
     */
    public record Row(Measure measure, List<Reading> readings, List<Boolean> contends) {

        /** Copies the lists. */
        public Row {
            readings = List.copyOf(readings);
            contends = List.copyOf(contends);
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
         * Returns whether a column is the best of those within limits, or as good as the best.
         *
         * @param column its place, from 0
         * @return true if it is; false throughout where neither way is better, all are alike, or
         *     each is told at a speed of its own
         */
        public boolean isBest(int column) {
            OptionalDouble own = readings.get(column).value();
            Quantity.Sense sense = measure.quantity().sense();
            List<OptionalDouble> contending = contending();
            if (sense == Quantity.Sense.NONE
                    || measure.isAtOwnSpeed()
                    || own.isEmpty()
                    || !contends.get(column)
                    || areAlike(contending)) {
                return false;
            }
            double[] all =
                    contending.stream()
                            .filter(OptionalDouble::isPresent)
                            .mapToDouble(OptionalDouble::getAsDouble)
                            .toArray();
            double best =
                    sense == Quantity.Sense.HIGHER
                            ? Arrays.stream(all).max().orElseThrow()
                            : Arrays.stream(all).min().orElseThrow();
            return isSame(own.getAsDouble(), best);
        }

        private List<OptionalDouble> contending() {
            List<OptionalDouble> values = new ArrayList<>();
            for (int column = 0; column < readings.size(); column++) {
                if (contends.get(column)) {
                    values.add(readings.get(column).value());
                }
            }
            return values;
        }

        private static boolean areAlike(List<OptionalDouble> values) {
            OptionalDouble first = values.get(0);
            return values.stream()
                    .allMatch(
                            each ->
                                    each.isPresent() == first.isPresent()
                                            && (first.isEmpty()
                                                    || isSame(
                                                            each.getAsDouble(),
                                                            first.getAsDouble())));
        }

        private static boolean isSame(double one, double other) {
            return one == other
                    || Math.abs(one - other)
                            <= Rounding.OF_A_RESULT * Math.max(Math.abs(one), Math.abs(other));
        }
    }

    /**
     * Compares profiles, stops with the fullest pack in use of each.
     *
     * @param first the one that the others are held against
     * @param others the others
     * @return the comparison
     */
    public static Comparison of(Profile first, Profile... others) {
        List<Profile> profiles = new ArrayList<>(List.of(first));
        profiles.addAll(List.of(others));
        return of(profiles, OptionalDouble.empty(), List.of());
    }

    /**
     * Compares profiles.
     *
     * @param profiles at least one, the one that the others are held against first
     * @param stopCharge the charge state at which all stops begin [1], 0 to 1; empty for that of
     *     the fullest pack in use of each
     * @param more rows besides the usual ones, such as stops from another speed
     * @return the comparison; every profile may be the best of a row
     * @throws IllegalArgumentException if the charge state is outside that range
     */
    public static Comparison of(
            List<Profile> profiles, OptionalDouble stopCharge, List<Measure> more) {
        return of(profiles, stopCharge, more, each -> true);
    }

    /**
     * Compares profiles by the verdicts that count; a profile outside limits, or one whose brake is
     * none, is the best of no row.
     *
     * @param judged at least one, the one that the others are held against first
     * @param stopCharge the charge state at which all stops begin [1], 0 to 1; empty for that of
     *     the fullest pack in use of each
     * @param more rows besides the usual ones, such as stops from another speed
     * @return the comparison
     * @throws IllegalArgumentException if the charge state is outside that range
     */
    public static Comparison ofJudged(
            List<JudgedProfile> judged, OptionalDouble stopCharge, List<Measure> more) {
        return of(
                        judged.stream().map(JudgedProfile::profile).toList(),
                        stopCharge,
                        more,
                        measure -> !isJudged(measure))
                .judgedBy(judged);
    }

    /** Reads only what is asked for; the other rows are filled by what judges them. */
    private static Comparison of(
            List<Profile> profiles,
            OptionalDouble stopCharge,
            List<Measure> more,
            Predicate<Measure> isRead) {
        List<ProfileResults> results =
                profiles.stream()
                        .map(
                                each ->
                                        new ProfileResults(
                                                each.build(),
                                                stopCharge.orElse(each.build().use().chargeFrom())))
                        .toList();
        Set<Measure> measures = new LinkedHashSet<>(measures(results));
        measures.addAll(more);
        List<Boolean> all = Collections.nCopies(profiles.size(), true);
        return new Comparison(
                profiles,
                measures.stream()
                        .sorted(Comparator.comparing(Measure::quantity))
                        .map(
                                measure ->
                                        new Row(
                                                measure,
                                                results.stream()
                                                        .map(
                                                                each ->
                                                                        isRead.test(measure)
                                                                                ? each.read(measure)
                                                                                : Reading.NONE)
                                                        .toList(),
                                                all))
                        .toList());
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
                                                order.stream().map(row.readings()::get).toList(),
                                                order.stream().map(row.contends()::get).toList()))
                        .toList());
    }

    /** Tells the verdicts that count in the rows of verdicts. */
    private Comparison judgedBy(List<JudgedProfile> judged) {
        List<Boolean> contends = judged.stream().map(JudgedProfile::mayBeBest).toList();
        return new Comparison(
                profiles,
                rows.stream()
                        .map(row -> new Row(row.measure(), judged(row, judged), contends))
                        .toList());
    }

    private static boolean isJudged(Measure measure) {
        return switch (measure.quantity()) {
            case VERDICT, BRAKE_WEAKEST, BRAKE_WEAKEST_WET -> true;
            default -> false;
        };
    }

    private static List<Reading> judged(Row row, List<JudgedProfile> judged) {
        return switch (row.measure().quantity()) {
            case VERDICT -> read(judged, each -> Reading.of(each.evaluation().outcome().ordinal()));
            case BRAKE_WEAKEST -> read(judged, each -> Reading.of(each.brake()));
            case BRAKE_WEAKEST_WET -> read(judged, each -> Reading.of(each.brakeOnWetRoad()));
            default -> row.readings();
        };
    }

    private static List<Reading> read(
            List<JudgedProfile> judged, Function<JudgedProfile, Reading> reading) {
        return judged.stream().map(reading).toList();
    }

    /**
     * Returns the rows of which a profile is the best, or as good as the best.
     *
     * @param column its place, from 0
     * @return the rows, in their order; none for a profile that does not contend
     */
    public List<Measure> bestAt(int column) {
        return rows.stream().filter(row -> row.isBest(column)).map(Row::measure).toList();
    }

    private static double rank(Row row, int column) {
        OptionalDouble value = row.readings().get(column).value();
        return switch (row.measure().quantity().sense()) {
            case HIGHER -> -value.orElse(Double.NEGATIVE_INFINITY);
            case LOWER -> value.orElse(Double.POSITIVE_INFINITY);
            case NONE -> 0.0;
        };
    }

    /**
     * The rows of a comparison, told at the speeds of its first profile, and at each one's own
     * where that differs.
     */
    static List<Measure> measures(List<ProfileResults> results) {
        Build first = results.get(0).build();
        double top = results.get(0).operation().topSpeed();
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
            if (quantity.belongsToASpeed() && haveOwnSpeeds(results, quantity)) {
                all.add(Measure.of(quantity));
            }
        }
        return all;
    }

    private static boolean haveOwnSpeeds(List<ProfileResults> results, Quantity quantity) {
        return results.stream().mapToDouble(each -> each.ownSpeed(quantity)).distinct().count() > 1;
    }

    /** To whole km/h, upwards from the slowest that can be told. */
    private static double rounded(double speed) {
        return Math.max(1.0, Math.rint(speed / KILOMETRE_PER_HOUR)) * KILOMETRE_PER_HOUR;
    }
}
