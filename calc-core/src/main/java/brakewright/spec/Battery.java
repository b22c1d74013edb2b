package brakewright.spec;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What the vehicle is fed from: one pack, or several joined.
 *
 * @param packs at least one; all at one temperature
 * @param joining how several are joined; without meaning for one
 * @param trunk what carries the current of all packs together; for one pack its own wiring does
 * @param trunkResistance of that [Ω], not negative; 0 for one pack
 */
public record Battery(List<Pack> packs, Joining joining, Wiring trunk, double trunkResistance) {

    /** Assumption: our own choice; less than this is rounding [V]. */
    private static final double LEAST_RANGE = 1e-7;

    /**
     * Validates what concerns several packs at once.
     *
     * @throws IllegalArgumentException if there is no pack, their temperatures differ, or packs in
     *     parallel have no open-circuit voltage in common
     */
    public Battery {
        packs = List.copyOf(packs);
        Require.atLeastOne("number of packs", packs.size());
        Require.notNegative("trunk resistance", trunkResistance, Unit.OHM);
        double temperature = packs.get(0).temperatureC();
        if (packs.stream().anyMatch(pack -> pack.temperatureC() != temperature)) {
            throw new IllegalArgumentException("all packs must have one temperature");
        }
        if (joining == Joining.PARALLEL) {
            double lowest = packs.stream().mapToDouble(Battery::emptyVoltage).max().orElseThrow();
            double highest = packs.stream().mapToDouble(Battery::fullVoltage).min().orElseThrow();
            if (packs.size() > 1 && !(highest - lowest > LEAST_RANGE)) {
                throw new IllegalArgumentException(
                        "packs in parallel must have a range of open-circuit voltage in common; the"
                                + " fullest of one is "
                                + highest
                                + " V, the emptiest of another "
                                + lowest
                                + " V");
            }
        }
    }

    /**
     * Returns a battery of one pack.
     *
     * @param pack the pack
     * @return the battery
     */
    public static Battery of(Pack pack) {
        return new Battery(List.of(pack), Joining.PARALLEL, Wiring.NONE, 0.0);
    }

    /**
     * Returns the temperature of all cells.
     *
     * @return the temperature [°C]
     */
    public double temperatureC() {
        return packs.get(0).temperatureC();
    }

    /**
     * Returns this battery at another temperature.
     *
     * @param cellsC of all cells [°C]
     * @return a changed copy
     */
    public Battery at(double cellsC) {
        return withPacks(packs.stream().map(pack -> pack.at(cellsC)).toList());
    }

    /**
     * Returns this battery with other packs.
     *
     * @param replacement at least one
     * @return a changed copy
     */
    public Battery withPacks(List<Pack> replacement) {
        return new Battery(replacement, joining, trunk, trunkResistance);
    }

    /**
     * Returns whether there is a single pack.
     *
     * @return true for one
     */
    public boolean isOnePack() {
        return packs.size() == 1;
    }

    /**
     * Returns what something that is told of a pack is about.
     *
     * @param place of the pack, from 0
     * @return that pack; the whole where there is a single one
     */
    public WhichPack which(int place) {
        return isOnePack() ? WhichPack.WHOLE : WhichPack.of(place + 1);
    }

    /**
     * Returns the pack that something is about.
     *
     * @param which one of several, or the whole
     * @return that pack; for the whole the first, which a single one is
     * @throws IndexOutOfBoundsException if there are fewer packs than its number
     */
    public Pack pack(WhichPack which) {
        return packs.get(which.number().orElse(1) - 1);
    }

    /**
     * Returns whether every trip of every pack that can open while riding is known.
     *
     * @return false where one is missing
     */
    public boolean isProtectionKnown() {
        return packs.stream().map(Pack::protection).allMatch(Battery::isKnown);
    }

    /**
     * Returns whether every part that carries the current is described.
     *
     * @return false where one is missing
     */
    public boolean isWiringKnown() {
        return packs.stream().map(Pack::wiring).allMatch(Wiring::isKnown)
                && (isOnePack() || trunk.isKnown());
    }

    /**
     * Returns whether a protection can open while riding.
     *
     * @return false where those of all packs sit on the charge lead alone
     */
    public boolean isGuarded() {
        return packs.stream().map(Pack::protection).anyMatch(each -> !each.isBypassed());
    }

    private static boolean isKnown(Protection protection) {
        return protection.isBypassed()
                || List.of(
                                protection.dischargeTrip(),
                                protection.chargeTrip(),
                                protection.cellOvervoltageTrip(),
                                protection.cellUndervoltageTrip())
                        .stream()
                        .allMatch(OptionalDouble::isPresent);
    }

    private static double emptyVoltage(Pack pack) {
        return pack.series() * pack.cell().openCircuitVoltage().at(0.0);
    }

    private static double fullVoltage(Pack pack) {
        return pack.series() * pack.cell().openCircuitVoltage().at(1.0);
    }
}
