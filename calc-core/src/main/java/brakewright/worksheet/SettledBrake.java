package brakewright.worksheet;

import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import java.util.Optional;

/**
 * The electric brake as it settles at one charge state: where a high-voltage taper is set, what it
 * leaves there takes the place of the pack regen current.
 */
public final class SettledBrake {

    private SettledBrake() {}

    /**
     * Returns a brake without a taper that does, at one state of the pack, what this one settles
     * at.
     *
     * @param brake the electric brake as it is set
     * @param pack the state of the pack
     * @return the same motor current, held back by what is let into the pack in steady state
     */
    public static ElectricBrake of(ElectricBrake brake, PackState pack) {
        return new ElectricBrake(
                brake.powertrain(),
                brake.motorCurrent(),
                brake.settledPackLimit(pack),
                Optional.empty());
    }

    /**
     * Returns whether the taper lets less into the pack than the pack regen current does.
     *
     * @param brake the electric brake as it is set
     * @param pack the state of the pack
     * @return true where the taper, not the pack regen current, holds the brake back
     */
    public static boolean isHeldByTaper(ElectricBrake brake, PackState pack) {
        return brake.settledPackLimit(pack) < brake.packCurrent();
    }
}
