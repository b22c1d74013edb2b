package brakewright.recording;

import brakewright.battery.BatteryModel;
import brakewright.battery.WorstGroup;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.Limits;
import brakewright.limit.PackLimit;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Where a ride went beyond what its vehicle may do, asked of the vehicle's own limits.
 *
 * @param exceeded one for each limit that was exceeded
 * @param chargeFrom what the charge was taken from
 * @param isTemperatureRecorded whether the cells' temperature is that of the recording; else it is
 *     that of the build file
 * @param lowestCell the lowest voltage of the pack, in volts per cell; empty where there is none
 * @param highestCell the highest likewise
 * @param impliedWheel what the wheels' diameter would be for speed and positions to agree [m];
 *     empty where there are not both
 */
public record HeldLimits(
        List<Exceeded> exceeded,
        ChargeSource chargeFrom,
        boolean isTemperatureRecorded,
        Optional<Moment> lowestCell,
        Optional<Moment> highestCell,
        OptionalDouble impliedWheel) {

    /** What the charge of a row was taken from. */
    public enum ChargeSource {
        /** A column. */
        RECORDED,
        /** The current, counted from the fullest charge in use. */
        COUNTED,
        /** Nothing tells it. */
        NONE;

        /**
         * Returns the name that files use.
         *
         * @return lower case
         */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A pack's limit is looked up at a charge to a thousandth, on the side that permits less, and a
     * temperature to a tenth of a degree.
     */
    private static final double CHARGE_STEPS = 1000.0;

    private static final double TEMPERATURE_STEPS = 10.0;

    /** Copies the list. */
    public HeldLimits {
        exceeded = List.copyOf(exceeded);
    }

    /**
     * Holds a ride against a vehicle.
     *
     * @param build the vehicle
     * @param ride on it
     * @return where it went beyond its limits
     */
    public static HeldLimits of(Build build, Ride ride) {
        return new Walk(build, ride).held();
    }

    /** One limit of the pack at all charges and temperatures that were met. */
    private static final class Permitted {
        private final PackLimit limit;
        private final boolean isOut;
        private final Map<Long, Double> known = new HashMap<>();

        Permitted(PackLimit limit, boolean isOut) {
            this.limit = limit;
            this.isOut = isOut;
        }

        double charge(double charge) {
            double steps = charge * CHARGE_STEPS;
            double rounded = isOut ? Math.floor(steps + 1e-6) : Math.ceil(steps - 1e-6);
            return Math.max(0.0, Math.min(1.0, rounded / CHARGE_STEPS));
        }

        double temperature(double temperatureC) {
            return Math.rint(temperatureC * TEMPERATURE_STEPS) / TEMPERATURE_STEPS;
        }

        double at(double charge, double temperatureC) {
            double own = charge(charge);
            double cells = temperature(temperatureC);
            long key =
                    Math.round(own * CHARGE_STEPS) * 100_000L
                            + Math.round(cells * TEMPERATURE_STEPS);
            return known.computeIfAbsent(key, unused -> limit.valueAt(own, cells));
        }

        ConstraintId boundBy(double charge, double temperatureC) {
            return limit.at(charge(charge), temperature(temperatureC)).binding().id();
        }
    }

    /** How far and how long one limit was exceeded. */
    private static final class Count {
        private final Exceeded.What what;
        private final Moment first;
        private Moment worst;
        private double limit;
        private Optional<ConstraintId> boundBy = Optional.empty();
        private double beyond = Double.NEGATIVE_INFINITY;
        private double seconds;
        private int rows;

        Count(Exceeded.What what, Moment first) {
            this.what = what;
            this.first = first;
            this.worst = first;
        }

        Exceeded exceeded() {
            return new Exceeded(what, seconds, rows, first, worst, limit, boundBy);
        }
    }

    private static final class Walk {
        private final Build build;
        private final Ride ride;
        private final Recording recording;
        private final Permitted give;
        private final Permitted take;
        private final Limit motor;
        private final Limit speedCap;
        private final double floor;
        private final double ceiling;
        private final ChargeSource chargeFrom;
        private final double capacity;
        private final Map<Exceeded.What, Count> counts = new EnumMap<>(Exceeded.What.class);
        private double counted;

        Walk(Build build, Ride ride) {
            this.build = build;
            this.ride = ride;
            this.recording = ride.recording();
            Limits limits = Limits.of(build);
            this.give = new Permitted(limits.packDischarge(), true);
            this.take = new Permitted(limits.packRegen(), false);
            this.motor = limits.motorDrive();
            this.speedCap = limits.speedCap();
            this.floor =
                    voltages(limits.battery(), WorstGroup.End.EMPTIEST, Cell::voltageMin)
                            .max()
                            .orElseThrow();
            this.ceiling =
                    voltages(limits.battery(), WorstGroup.End.FULLEST, Cell::voltageMax)
                            .min()
                            .orElseThrow();
            this.capacity = limits.battery().capacityAh();
            this.chargeFrom =
                    recording.has(Quantity.CHARGE)
                            ? ChargeSource.RECORDED
                            : recording.has(Quantity.PACK_CURRENT)
                                    ? ChargeSource.COUNTED
                                    : ChargeSource.NONE;
            this.counted = build.use().chargeFrom();
        }

        /** For each pack the voltage of all at which its cells at one end have their own. */
        private static DoubleStream voltages(
                BatteryModel model, WorstGroup.End end, ToDoubleFunction<Cell> bound) {
            return IntStream.range(0, model.packs().size())
                    .mapToDouble(
                            place ->
                                    model.voltageWhere(
                                            place,
                                            end,
                                            bound.applyAsDouble(
                                                    model.packs().get(place).pack().cell())));
        }

        HeldLimits held() {
            for (Piece piece : recording.pieces()) {
                double charge = Double.NaN;
                double cells = build.battery().temperatureC();
                for (int row = 0; row < piece.rows(); row++) {
                    charge = charge(piece, row, charge);
                    double told = piece.value(Quantity.PACK_TEMPERATURE, row);
                    cells = Double.isNaN(told) ? cells : told;
                    row(piece, row, charge, cells);
                }
            }
            List<Exceeded> all = new ArrayList<>();
            counts.values().forEach(count -> all.add(count.exceeded()));
            return new HeldLimits(
                    all,
                    chargeFrom,
                    recording.has(Quantity.PACK_TEMPERATURE),
                    perCell(Extreme.LOWEST_VOLTAGE),
                    perCell(Extreme.HIGHEST_VOLTAGE),
                    impliedWheel());
        }

        /** The last one known where a field is missing. */
        private double charge(Piece piece, int row, double last) {
            if (chargeFrom == ChargeSource.RECORDED) {
                double told = piece.value(Quantity.CHARGE, row);
                return Double.isNaN(told) ? last : told;
            }
            if (chargeFrom == ChargeSource.NONE) {
                return Double.NaN;
            }
            if (row > 0) {
                counted -=
                        Integral.of(
                                                piece,
                                                recording.longestStep(),
                                                (its, at) -> its.value(Quantity.PACK_CURRENT, at),
                                                row - 1,
                                                row + 1)
                                        .net()
                                / 3600.0
                                / capacity;
            }
            return counted;
        }

        private void row(Piece piece, int row, double charge, double cells) {
            double current = piece.value(Quantity.PACK_CURRENT, row);
            if (current > 0.0 && !Double.isNaN(charge)) {
                double limit = give.at(charge, cells);
                over(
                        new Row(Exceeded.What.PACK_MAY_GIVE, piece, row, charge),
                        current,
                        limit,
                        () -> Optional.of(give.boundBy(charge, cells)));
            }
            if (current < 0.0 && !Double.isNaN(charge)) {
                double limit = take.at(charge, cells);
                over(
                        new Row(Exceeded.What.PACK_MAY_TAKE, piece, row, charge),
                        -current,
                        limit,
                        () -> Optional.of(take.boundBy(charge, cells)));
            }
            over(
                    new Row(Exceeded.What.MOTOR_CURRENT, piece, row, charge),
                    Math.abs(piece.value(Quantity.MOTOR_CURRENT, row)),
                    motor.value(),
                    () -> Optional.of(motor.binding().id()));
            over(
                    new Row(Exceeded.What.SPEED, piece, row, charge),
                    Math.abs(piece.value(ride.speed(), row)),
                    speedCap.value(),
                    () -> Optional.of(speedCap.binding().id()));
            double voltage = piece.value(Quantity.PACK_VOLTAGE, row);
            under(new Row(Exceeded.What.CELL_FLOOR, piece, row, charge), voltage, floor);
            over(
                    new Row(Exceeded.What.CELL_CEILING, piece, row, charge),
                    voltage,
                    ceiling,
                    Optional::empty);
        }

        private record Row(Exceeded.What what, Piece piece, int row, double charge) {}

        private void over(
                Row at, double value, double limit, Supplier<Optional<ConstraintId>> boundBy) {
            if (value > limit) {
                count(at, value, limit, value - limit, boundBy);
            }
        }

        private void under(Row at, double value, double limit) {
            if (value < limit) {
                count(at, value, limit, limit - value, Optional::empty);
            }
        }

        private void count(
                Row at,
                double value,
                double limit,
                double beyond,
                Supplier<Optional<ConstraintId>> boundBy) {
            Moment moment =
                    new Moment(
                            value,
                            at.piece().time(at.row()),
                            at.piece().place(at.row()),
                            Moment.present(at.charge()),
                            Moment.present(at.piece().value(ride.speed(), at.row())));
            Count count = counts.computeIfAbsent(at.what(), what -> new Count(what, moment));
            count.rows++;
            count.seconds += share(at.piece(), at.row());
            if (beyond > count.beyond) {
                count.beyond = beyond;
                count.worst = moment;
                count.limit = limit;
                count.boundBy = boundBy.get();
            }
        }

        /** Half way to the neighbours on both sides. */
        private double share(Piece piece, int row) {
            double before = row == 0 ? 0.0 : piece.time(row) - piece.time(row - 1);
            double behind = row + 1 == piece.rows() ? 0.0 : piece.time(row + 1) - piece.time(row);
            return 0.5 * (before + behind);
        }

        private Optional<Moment> perCell(Extreme extreme) {
            double cells = CellVolts.cells(build.battery());
            return Optional.ofNullable(ride.extremes().get(extreme))
                    .map(
                            known ->
                                    new Moment(
                                            known.value() / cells,
                                            known.time(),
                                            known.place(),
                                            known.charge(),
                                            known.speed()));
        }

        private OptionalDouble impliedWheel() {
            OptionalDouble ratio = ride.ways().positionsOverWheels();
            return ratio.isPresent()
                    ? OptionalDouble.of(ratio.getAsDouble() * build.vehicle().wheelDiameter())
                    : OptionalDouble.empty();
        }
    }
}
