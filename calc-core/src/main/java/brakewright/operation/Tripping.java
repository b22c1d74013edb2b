package brakewright.operation;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.battery.WorstGroup;
import brakewright.spec.Cell;
import brakewright.spec.Onset;
import brakewright.spec.Protection;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Which trips of the protection a current into the packs passes, and how soon. They are the bare
 * ones, without margin: what really opens.
 *
 * <p>A charge trip is passed at once; the voltage of the cells rises with their resistance and
 * passes an over-voltage trip where {@code u + I·r(t)} reaches it, found in closed form.
 *
 * <p>Assumption: the current stays what it is at the beginning of the stop, where it falls with the
 * speed; so nothing opens later than is told.
 */
final class Tripping {

    private final BatteryModel battery;
    private final double charge;
    private final double cellsC;

    /**
     * Looks at packs.
     *
     * @param battery out of which or into which currents flow
     * @param charge of all [1]
     * @param cellsC cell temperature [°C]
     */
    Tripping(BatteryModel battery, double charge, double cellsC) {
        this.battery = battery.into();
        this.charge = charge;
        this.cellsC = cellsC;
    }

    /**
     * A trip that is passed.
     *
     * @param opening which
     * @param place of its pack, from 0
     * @param current of that pack [A]
     * @param share what of the pulse resistance must be there for it [1]
     * @param passedAfter the current began [s]
     * @param told how long it then waits, where that is known [s]
     */
    record Trip(
            FirstStop.Opening opening,
            int place,
            double current,
            double share,
            double passedAfter,
            OptionalDouble told) {

        /** How long it waits: as told, or as such a device typically does [s]. */
        double delay() {
            return told.orElse(opening.typicalDelay());
        }

        FirstStop.Passed passed() {
            return new FirstStop.Passed(place, current, share, passedAfter, delay());
        }
    }

    /** The trips that a current passes [A], pack by pack. */
    List<Trip> passedBy(double current) {
        List<Trip> passed = new ArrayList<>();
        for (int place = 0; place < battery.packs().size(); place++) {
            Protection protection = battery.packs().get(place).pack().protection();
            if (passes(FirstStop.Opening.CHARGE_TRIP, place, current)) {
                passed.add(
                        new Trip(
                                FirstStop.Opening.CHARGE_TRIP,
                                place,
                                own(place, current),
                                0.0,
                                0.0,
                                protection.chargeTripDelay()));
            }
            if (passes(FirstStop.Opening.OVERVOLTAGE_TRIP, place, current)) {
                double share = shareNeeded(place, current);
                passed.add(
                        new Trip(
                                FirstStop.Opening.OVERVOLTAGE_TRIP,
                                place,
                                own(place, current),
                                share,
                                onset(place).reaches(share),
                                protection.overvoltageTripDelay()));
            }
        }
        return passed;
    }

    /** Whether a current passes a trip of a pack, within the pulse at the latest. */
    boolean passes(FirstStop.Opening trip, int place, double current) {
        if (!(current > 0.0)) {
            return false;
        }
        PackModel pack = battery.packs().get(place);
        Protection protection = pack.pack().protection();
        double own = own(place, current);
        return switch (trip) {
            case NOTHING -> false;
            case CHARGE_TRIP -> own > protection.chargeTrip().orElse(Double.POSITIVE_INFINITY);
            case OVERVOLTAGE_TRIP ->
                    pack.highestCellVoltage(own, ownCharge(place), cellsC, Cell.PULSE)
                            > protection.cellOvervoltageTrip().orElse(Double.POSITIVE_INFINITY);
        };
    }

    /** What of the pulse resistance must be there; the pulse is enough, but for rounding. */
    private double shareNeeded(int place, double current) {
        PackModel pack = battery.packs().get(place);
        WorstGroup fullest = pack.worst(WorstGroup.End.FULLEST);
        double resistance = pack.groupResistance(fullest, ownCharge(place), cellsC, Cell.PULSE);
        double headroom =
                pack.pack().protection().cellOvervoltageTrip().orElseThrow()
                        - fullest.openCircuitVoltage(ownCharge(place));
        return Math.min(1.0, headroom / (own(place, current) * resistance));
    }

    private Onset onset(int place) {
        return battery.packs().get(place).pack().cell().relaxation().onset();
    }

    private double own(int place, double current) {
        return current * battery.share(place, charge, cellsC);
    }

    private double ownCharge(int place) {
        return battery.chargeOf(place, charge);
    }
}
