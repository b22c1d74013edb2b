package brakewright.operation;

import brakewright.battery.AtCharge;
import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.battery.WorstGroup;
import brakewright.limit.Limits;
import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Protection;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A pull at the set draw that lasts as long as the hardest in use, at any charge in use, with what
 * electronics and lights draw beside it: what the protection sees of it, and how soon it opens.
 *
 * <p>A trip opens once what it watches has been beyond it for as long as it waits. While the pull
 * lasts the resistance of the cells grows, so that their voltage falls; a current that no taper
 * holds back may grow with it.
 */
public final class HardPull {

    private final BatteryModel battery;
    private final double cellsC;
    private final double lasts;
    private final SagCourse course;

    /**
     * Sets up the pull.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @param cellsC cell temperature [°C]
     */
    public HardPull(Build build, Limits limits, Operation operation, double cellsC) {
        this.battery = limits.battery();
        this.cellsC = cellsC;
        this.lasts = build.use().effort().hardPull();
        this.course =
                new SagCourse(
                        build,
                        battery,
                        operation,
                        new Sag.Draw(operation.drive().packCurrent(), true, cellsC, lasts),
                        build.use().riding().idlePower());
    }

    /** What interrupts the pack, and how soon such a device typically acts. */
    public enum Opening {
        /**
         * The discharge over-current trip.
         *
         * <p>Source of the delay: ABLIC S-8211C data sheet rev. 5.0, table 14, discharge
         * over-current detection, typical; the same series is sold with 4.5 and 18 ms.
         */
        DISCHARGE_TRIP(9e-3, Recovery.LOAD_OFF),
        /**
         * The cell under-voltage trip.
         *
         * <p>Source of the delay: ABLIC S-8211C data sheet rev. 5.0, table 14, overdischarge
         * detection, typical; the shortest of the series, which is sold with 150 and 300 ms, too.
         */
        UNDERVOLTAGE_TRIP(38e-3, Recovery.CHARGER);

        private final double typicalDelay;
        private final Recovery recovery;

        Opening(double typicalDelay, Recovery recovery) {
            this.typicalDelay = typicalDelay;
            this.recovery = recovery;
        }

        /**
         * Returns how soon it typically acts.
         *
         * @return the delay [s]
         */
        public double typicalDelay() {
            return typicalDelay;
        }

        /**
         * Returns what it typically waits for before it closes again.
         *
         * @return what must happen
         */
        public Recovery recovery() {
            return recovery;
        }
    }

    /**
     * A trip that opens.
     *
     * @param opening which
     * @param place of its pack, from 0
     * @param charge at which it does, of all packs [1]
     * @param cellsC cell temperature [°C]
     * @param packCurrent out of all packs together as it is passed, idle power included [A]
     * @param current out of that pack [A]
     * @param multiple what of the pulse resistance must be there for it [1]; 0 or less where cells
     *     are below it at rest, and for a current trip
     * @param passedAfter the pull began [s]
     * @param delay for which it then waits, as told or as such a device typically does [s]
     * @param isDelayTypical whether the delay is the typical one
     */
    public record Opened(
            Opening opening,
            int place,
            double charge,
            double cellsC,
            double packCurrent,
            double current,
            double multiple,
            double passedAfter,
            double delay,
            boolean isDelayTypical) {

        /**
         * Returns how soon it opens.
         *
         * @return after the pull began [s]
         */
        public double after() {
            return passedAfter + delay;
        }
    }

    /**
     * The cells of the pack that are nearest to its trip, or furthest beyond it.
     *
     * @param trip of that pack [V]
     * @param cell voltage in its emptiest group [V]; infinite without any trip, or where nothing is
     *     drawn: a pack that is empty at rest is no matter of settings
     */
    public record Loaded(double trip, double cell) {}

    /**
     * Returns the charge states between which all runs smoothly.
     *
     * @return ascending over the charge in use, both ends included; not to be changed [1]
     */
    public double[] charges() {
        return course.charges();
    }

    /**
     * Looks for the cells that are in danger of the trip.
     *
     * @param charge the charge state [1]
     * @return the nearest to it
     */
    public Loaded nearestToTrip(double charge) {
        return nearestToTrip(battery.at(charge));
    }

    /**
     * Looks for the cells that are in danger of the trip.
     *
     * @param there the packs, drawn from, at a charge state
     * @return the nearest to it
     */
    public Loaded nearestToTrip(AtCharge there) {
        return course.nearestToTrip(there);
    }

    /**
     * Looks for what opens soonest, over the charge states between which all runs smoothly.
     *
     * @return the trip, at the fullest of several where it opens equally soon; empty where none
     *     that is told opens within the pull
     */
    public Optional<Opened> opensFirst() {
        double[] charges = charges();
        return IntStream.iterate(charges.length - 1, i -> i >= 0, i -> i - 1)
                .mapToObj(i -> opensFirst(charges[i]))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(Opened::after));
    }

    /**
     * Looks for what opens first at one charge.
     *
     * @param charge the charge state [1]
     * @return the trip; empty where none that is told opens within the pull
     */
    public Optional<Opened> opensFirst(double charge) {
        if (!(course.flowing(charge, lasts) > 0.0)) {
            return Optional.empty();
        }
        return IntStream.range(0, battery.packs().size())
                .mapToObj(place -> place)
                .flatMap(place -> Stream.of(current(place, charge), voltage(place, charge)))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(Opened::after));
    }

    private Optional<Opened> current(int place, double charge) {
        Protection protection = battery.packs().get(place).pack().protection();
        double trip = protection.dischargeTrip().orElse(Double.POSITIVE_INFINITY);
        OptionalDouble told = protection.dischargeTripDelay();
        return passed(seconds -> course.flowing(place, charge, seconds) - trip, told)
                .map(
                        after ->
                                opened(
                                        Opening.DISCHARGE_TRIP,
                                        place,
                                        charge,
                                        after,
                                        after,
                                        0.0,
                                        told));
    }

    private Optional<Opened> voltage(int place, double charge) {
        Protection protection = battery.packs().get(place).pack().protection();
        double trip = protection.cellUndervoltageTrip().orElse(Double.NEGATIVE_INFINITY);
        OptionalDouble told = protection.undervoltageTripDelay();
        return passed(seconds -> trip - course.cellVoltage(place, charge, seconds), told)
                .map(
                        after -> {
                            double multiple = multiple(place, charge, after);
                            return opened(
                                    Opening.UNDERVOLTAGE_TRIP,
                                    place,
                                    charge,
                                    after,
                                    after > 0.0 ? reaches(place, charge, multiple) : 0.0,
                                    multiple,
                                    told);
                        });
    }

    /** When something is beyond its trip, in time for that to open within the pull. */
    private Optional<Double> passed(DoubleUnaryOperator excess, OptionalDouble told) {
        double latest = lasts - told.orElse(0.0);
        if (latest < 0.0) {
            return Optional.empty();
        }
        if (excess.applyAsDouble(0.0) > 0.0) {
            return Optional.of(0.0);
        }
        return excess.applyAsDouble(latest) > 0.0
                ? Optional.of(Root.between(excess, 0.0, latest, Accuracy.INNERMOST))
                : Optional.empty();
    }

    private Opened opened(
            Opening opening,
            int place,
            double charge,
            double flowingAfter,
            double passedAfter,
            double multiple,
            OptionalDouble told) {
        return new Opened(
                opening,
                place,
                charge,
                cellsC,
                course.flowing(charge, flowingAfter),
                course.flowing(place, charge, flowingAfter),
                multiple,
                passedAfter,
                told.orElse(opening.typicalDelay()),
                told.isEmpty());
    }

    /** What of the pulse resistance the current that flows after a time needs to be at the trip. */
    private double multiple(int place, double charge, double seconds) {
        PackModel pack = battery.packs().get(place);
        double own = battery.chargeOf(place, charge);
        WorstGroup emptiest = pack.worst(WorstGroup.End.EMPTIEST);
        double headroom =
                emptiest.openCircuitVoltage(own)
                        - pack.pack().protection().cellUndervoltageTrip().orElseThrow();
        return headroom
                / (course.flowing(place, charge, seconds)
                        * pack.groupResistance(emptiest, own, cellsC, Cell.PULSE));
    }

    private double reaches(int place, double charge, double multiple) {
        PackModel pack = battery.packs().get(place);
        WorstGroup emptiest = pack.worst(WorstGroup.End.EMPTIEST);
        double own = emptiest.chargeAt(battery.chargeOf(place, charge));
        return pack.pack()
                .cell()
                .relaxation()
                .reaches(
                        multiple,
                        pack.rise(
                                own,
                                pack.factorByCharge(WorstGroup.End.EMPTIEST, own)
                                        + pack.moreInTheCold(own, cellsC)));
    }
}
