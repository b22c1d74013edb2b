package brakewright.battery;

import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Pack;
import brakewright.spec.Relaxation;
import brakewright.spec.ResistanceByCharge;
import java.util.Optional;

/**
 * The packs as a current finds them that has flowed for many minutes: every cell has the resistance
 * of an endless current, and what its maker permits for a short time does not count.
 *
 * <p>Source: first-order equivalent circuit, as in {@link PackModel}, for {@code t → ∞}.
 *
 * <p>Assumption: a cell that is charged relaxes as one that is drawn from; the rise of resistance
 * is known from discharging alone.
 */
public final class SustainedBattery {

    private SustainedBattery() {}

    /**
     * Returns a vehicle with its packs as a lasting current finds them.
     *
     * @param build the vehicle
     * @return a changed copy
     */
    public static Build in(Build build) {
        return build.withBattery(of(build.battery()));
    }

    /**
     * Returns the packs as a lasting current finds them.
     *
     * @param battery the packs
     * @return a changed copy, whose pulse resistances are those of an endless current
     */
    public static Battery of(Battery battery) {
        return battery.withPacks(battery.packs().stream().map(SustainedBattery::of).toList());
    }

    private static Pack of(Pack pack) {
        return pack.withCell(of(pack.cell()));
    }

    private static Cell of(Cell cell) {
        Relaxation relaxation = cell.relaxation();
        ResistanceByCharge byCharge = cell.resistanceByCharge();
        return cell.withResistanceByCharge(
                        byCharge.withDrawn(
                                byCharge.drawn().plus(relaxation.byCharge(), relaxation.rise())))
                .withRelaxation(new Relaxation(0.0, relaxation.timeConstant()))
                .withPulse(Optional.empty());
    }
}
