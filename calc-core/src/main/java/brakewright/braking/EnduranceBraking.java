package brakewright.braking;

import brakewright.battery.BatteryModel;
import brakewright.battery.SustainedBattery;
import brakewright.battery.WorstGroup;
import brakewright.charge.ChargeIntegral;
import brakewright.charge.ReserveWalk;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.PackLimit;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;

/**
 * Holding a speed with the electric brake for many minutes, which regulations on brakes call
 * endurance braking. The power is the same all the way; as the charge moves, the current and what
 * is permitted change.
 *
 * <p>Reserves are told as powers, since for the power p at the terminals both a current I and a
 * voltage V are bounded by what is a straight line wherever U(s) and R(s) are: {@code p ≤ I·(U +
 * I·R)}, and {@code V·(V − U) ≥ p·R}. So each is used up at most once between two knots. For a
 * power that is drawn the same holds of any voltage above half the open-circuit voltage.
 */
final class EnduranceBraking {

    private final BatteryModel model;
    private final ElectricBrake brake;
    private final PackLimit permitted;
    private final ChargeIntegral integral;
    private final ReserveWalk walk;
    private final double speed;
    private final double cellsC;
    private final double power;
    private final double passed;

    EnduranceBraking(
            Build build,
            ElectricBrake brake,
            Limits limits,
            double cellsC,
            double speed,
            double current) {
        Powertrain powertrain = brake.powertrain();
        this.model = new BatteryModel(SustainedBattery.of(build.battery()));
        this.brake = brake;
        this.integral = new ChargeIntegral(model);
        this.speed = speed;
        this.cellsC = cellsC;
        this.power = powertrain.returnedPower(current, speed);
        this.passed =
                powertrain.returnedPower(powertrain.mostReturningCurrent(current, speed), speed);
        this.walk =
                new ReserveWalk(
                        model.points(
                                power >= 0.0 ? WorstGroup.End.FULLEST : WorstGroup.End.EMPTIEST));
        this.permitted = (power >= 0.0 ? limits.packRegen() : limits.packDischarge()).sustained();
    }

    /** Into the packs; negative where holding draws [W]. */
    double power() {
        return power;
    }

    /** The packs with the resistance of an endless current. */
    PackState pack(double charge) {
        return PackState.of(model, charge, cellsC);
    }

    /** Into the packs; negative where holding draws [A]. */
    double packCurrent(double charge) {
        return pack(charge).currentInto(power);
    }

    double cellVoltage(double charge) {
        return model.cellVoltage(packCurrent(charge), charge, cellsC);
    }

    /**
     * What the settings leave: a controller that raises the current from nothing passes the current
     * that returns most [W].
     */
    double brakeReserve(double charge) {
        PackState pack = pack(charge);
        return pack.powerReturnedBy(brake.settledPackLimit(pack)) - passed;
    }

    /** What the packs bear for many minutes, and are able to give at all [W]. */
    double packReserve(double charge) {
        PackState pack = pack(charge);
        double most = permitted.valueAt(charge, cellsC);
        return power >= 0.0 ? pack.powerReturnedBy(most) - power : pack.powerDrawnBy(most) + power;
    }

    /** What binds the packs at a charge state. */
    ConstraintId binding(double charge) {
        return permitted.at(charge, cellsC).binding().id();
    }

    /** Follows the charge from one state towards another as far as it goes. */
    double lastHeld(double from, double to) {
        return walk.lastWithReserve(
                from, to, charge -> Math.min(brakeReserve(charge), packReserve(charge)));
    }

    /** {@code ∫3600·Q·ds/I(s)} between two charge states, in any order [s]. */
    double time(double one, double other) {
        return integral.over(
                        Math.max(one, other),
                        Math.min(one, other),
                        charge -> new ChargeIntegral.Moment(Math.abs(packCurrent(charge)), speed))
                .time();
    }
}
