package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.limit.ConstraintId;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.review.ChargeCeiling;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import java.util.OptionalDouble;

/**
 * A proposal held beside the present settings.
 *
 * @param present the worksheet of the present settings
 * @param proposed the worksheet of the proposal
 * @param safeChargePresent the charge state up to which braking is safe for the pack at the
 *     coldest, its own and the warmest cells [1]
 * @param safeChargeProposed the same for the proposal [1]
 * @param uselessAbove the speed above which the proposed motor brake current brakes no harder than
 *     the present one, at the fullest pack in use [m/s]; empty where it is not raised or the pack
 *     never holds it back below the highest speed
 * @param highestBrake the highest motor brake current that stays within limits under the conditions
 *     of the present settings [A]
 * @param highestBrakeBoundBy what would be exceeded beyond
 */
public record Check(
        Worksheet present,
        Worksheet proposed,
        double safeChargePresent,
        double safeChargeProposed,
        OptionalDouble uselessAbove,
        double highestBrake,
        ConstraintId highestBrakeBoundBy) {

    /**
     * Holds a proposal beside the present settings.
     *
     * @param build the vehicle with its present settings
     * @param changes the settings to change; the others stay
     * @return the comparison
     */
    public static Check of(Build build, Settings changes) {
        Build changed = build.withSettings(build.settings().overlaidBy(changes));
        Worksheet present = Worksheet.of(build);
        Worksheet proposed = Worksheet.of(changed);
        double safePresent = ChargeCeiling.of(build, present.limits(), present.operation());
        double safeProposed = ChargeCeiling.of(changed, proposed.limits(), proposed.operation());
        return new Check(
                present,
                proposed,
                safePresent,
                safeProposed,
                uselessAbove(present, proposed),
                proposed.limits().motorBrake().value(),
                proposed.limits().motorBrake().binding().id());
    }

    /**
     * Returns whether the proposal is no less safe than the present settings.
     *
     * @return true if its verdict is no worse and it is safe up to the same charge
     */
    public boolean isNoLessSafe() {
        Verdict.Outcome before = present.review().verdict().outcome();
        Verdict.Outcome after = proposed.review().verdict().outcome();
        return after.compareTo(before) <= 0 && safeChargeProposed >= safeChargePresent - 1e-9;
    }

    /** Above the speed where the pack limit holds back the present current, both brake alike. */
    private static OptionalDouble uselessAbove(Worksheet present, Worksheet proposed) {
        ElectricBrake before = present.operation().brake();
        ElectricBrake after = proposed.operation().brake();
        if (after.motorCurrent() <= before.motorCurrent()) {
            return OptionalDouble.empty();
        }
        Build build = proposed.build();
        PackState full =
                PackState.of(
                        new BatteryModel(build.battery()),
                        build.use().chargeFrom(),
                        build.battery().temperatureC());
        double speed =
                before.powertrain()
                        .fadeSpeed(
                                before.motorCurrent(),
                                full.powerReturnedBy(after.settledPackLimit(full)));
        return speed < proposed.operation().topSpeed()
                ? OptionalDouble.of(speed)
                : OptionalDouble.empty();
    }
}
