package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.operation.Sag;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Taper;
import java.util.List;
import java.util.Optional;

/** The voltage that is left while the pack is drawn from, over its charge, and what it meets. */
public final class SagSheet {

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final BatteryModel model;
    private final List<Sag.Case> cases;

    SagSheet(Build build, Limits limits, Operation operation) {
        this.build = build;
        this.limits = limits;
        this.operation = operation;
        this.model = limits.battery();
        this.cases = Sag.of(build, limits, operation).cases();
    }

    /**
     * The voltages under a whole draw, as if no taper held it down.
     *
     * @param pack of all packs together [V]; not positive where they cannot give the current
     * @param cell of the cells that are lowest, those of the emptiest group of the worst pack [V];
     *     not positive likewise
     * @param isFading whether the low-voltage taper lets less flow by then, so that the voltage is
     *     higher
     * @param isBelowFloor whether the cells of any pack are below their maker's lowest voltage
     */
    public record Loaded(double pack, double cell, boolean isFading, boolean isBelowFloor) {

        /**
         * Returns whether the packs give the current.
         *
         * @return false where nothing is left of the voltage
         */
        public boolean isGiven() {
            return pack > 0.0;
        }
    }

    /**
     * What the low-voltage taper leaves of a draw.
     *
     * @param current out of the packs [A]
     * @param pack the voltage then, of all packs together [V]
     */
    public record Faded(double current, double pack) {}

    /**
     * Returns what was looked at.
     *
     * @return the set draw first, a short pulse before the pull without end
     */
    public List<Sag.Case> cases() {
        return cases;
    }

    /**
     * Computes the voltages under a draw.
     *
     * @param draw what flows
     * @param charge the charge state [1]
     * @return the voltages there
     */
    public Loaded loaded(Sag.Draw draw, double charge) {
        double pack = draw.pack(model, charge).terminalVoltage(-draw.current());
        Optional<Taper> taper = operation.drive().taper();
        return new Loaded(
                pack,
                draw.lowestCellVoltage(model, charge),
                taper.isPresent() && pack < taper.get().begins(),
                draw.isBelowFloor(model, charge));
    }

    /**
     * Computes what the low-voltage taper leaves of a draw.
     *
     * @param draw what would flow without it
     * @param charge the charge state [1]
     * @return current and voltage there
     */
    public Faded faded(Sag.Draw draw, double charge) {
        ElectricDrive set = operation.drive();
        PackState pack = draw.pack(model, charge);
        double left =
                new ElectricDrive(set.powertrain(), set.motorCurrent(), draw.current(), set.taper())
                        .settledPackLimit(pack);
        return new Faded(left, pack.terminalVoltage(-left));
    }

    /**
     * Returns whether only the taper keeps the cells above their floor to the lowest charge in use.
     *
     * @param draw what would flow without it
     * @return true where the whole draw would take them below it
     */
    public boolean isKeptByTaper(Sag.Draw draw) {
        return operation.drive().taper().isPresent()
                && draw.isBelowFloor(model, build.use().chargeTo());
    }

    /**
     * Returns whether the recommended low-voltage taper would begin above the voltage of the
     * fullest pack in use.
     *
     * @return true where a lower draw is the only way
     */
    public boolean isTaperBeyondFull() {
        double full = model.openCircuitVoltage(build.use().chargeFrom());
        return limits.lowVoltageTaper().value().filter(taper -> taper.begins() > full).isPresent();
    }
}
