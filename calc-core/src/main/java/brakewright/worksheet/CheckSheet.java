package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.braking.Descent;
import brakewright.heat.RepeatedStops;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.review.Finding;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * A proposal held beside the present settings.
 *
 * @param present the worksheet of the present settings
 * @param proposed the worksheet of the proposal
 * @param safeChargePresent the charge state up to which braking is safe for the pack at the
 *     coldest, its own and the warmest cells; 0 where it is at none in use [1]
 * @param safeChargeProposed the same for the proposal [1]
 * @param uselessAbove the speed above which the proposed motor brake current brakes no harder than
 *     the present one, at the fullest pack in use [m/s]; empty where it is not raised or the pack
 *     never holds it back below the highest speed
 * @param hardestPresent the hardest braking with the present settings
 * @param hardestProposed the same for the proposal
 */
public record CheckSheet(
        Worksheet present,
        Worksheet proposed,
        double safeChargePresent,
        double safeChargeProposed,
        OptionalDouble uselessAbove,
        HardestBraking hardestPresent,
        HardestBraking hardestProposed) {

    /**
     * Holds a proposal beside the present settings.
     *
     * @param build the vehicle with its present settings
     * @param changes the settings to change; the others stay
     * @return the comparison
     */
    public static CheckSheet of(Build build, Settings changes) {
        return of(build, build.withSettings(build.settings().overlaidBy(changes)));
    }

    /**
     * Holds a proposal beside the present settings.
     *
     * @param build the vehicle with its present settings
     * @param changed the same vehicle with the settings proposed
     * @return the comparison
     */
    public static CheckSheet of(Build build, Build changed) {
        Worksheet present = Worksheet.of(build);
        Worksheet proposed = Worksheet.of(changed);
        double safePresent = present.review().safeCharge();
        double safeProposed = proposed.review().safeCharge();
        return new CheckSheet(
                present,
                proposed,
                safePresent,
                safeProposed,
                uselessAbove(present, proposed),
                hardest(present),
                hardest(proposed));
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

    /**
     * Returns the speeds from which stops are told.
     *
     * @return those of a table of stops up to the higher of both highest speeds, and the lower one
     *     [m/s]
     */
    public double[] stopSpeeds() {
        double before = present.operation().topSpeed();
        double after = proposed.operation().topSpeed();
        return DoubleStream.concat(
                        DoubleStream.of(Math.min(before, after)),
                        Arrays.stream(StopTable.speeds(Math.max(before, after))))
                .sorted()
                .distinct()
                .toArray();
    }

    /**
     * Returns what is found for the proposal and not at present.
     *
     * @return the findings, gravest first
     */
    public List<Finding> findingsAdded() {
        return without(proposed.review().findings(), present.review().findings());
    }

    /**
     * Returns what is found at present and no longer for the proposal.
     *
     * @return the findings, gravest first
     */
    public List<Finding> findingsMended() {
        return without(present.review().findings(), proposed.review().findings());
    }

    /** Findings are alike where they are about the same thing at the same cell temperature. */
    private static List<Finding> without(List<Finding> findings, List<Finding> others) {
        return findings.stream()
                .filter(
                        finding ->
                                others.stream()
                                        .noneMatch(
                                                other ->
                                                        other.id().equals(finding.id())
                                                                && other.signal()
                                                                        == finding.signal()
                                                                && other.temperatureC()
                                                                        .equals(
                                                                                finding
                                                                                        .temperatureC())))
                .toList();
    }

    private static HardestBraking hardest(Worksheet sheet) {
        return HardestBraking.of(sheet.build(), sheet.limits(), sheet.operation());
    }

    /**
     * Returns whether it is the high-voltage taper, not the pack regen current, that makes a raise
     * useless with the fullest pack in use.
     *
     * @return true where the taper of the proposal decides
     */
    public boolean isUselessForTaper() {
        return proposed.operation().brake().isHeldByTaper(fullest(proposed.build()));
    }

    /**
     * Returns the highest current that settings send into the pack at any speed in use, as it is
     * judged: a taper too narrow to hold is not counted.
     *
     * @param sheet one of both
     * @param state the state of its pack
     * @return the current [A]
     */
    public static double greatestReturn(Worksheet sheet, PackState state) {
        return sheet.operation()
                .trusted(sheet.limits())
                .brake()
                .greatestReturn(sheet.operation().topSpeed(), state);
    }

    /**
     * Computes the heat of stops in a row from the highest speed.
     *
     * @param sheet one of both
     * @param stops how many, at least one
     * @return the heat; empty where it is not known
     */
    public static Optional<RepeatedStops> repeatedStops(Worksheet sheet, int stops) {
        return RepeatedStops.hottest(
                sheet.build(),
                sheet.operation().brake(),
                sheet.operation().drive(),
                sheet.operation().topSpeed(),
                stops);
    }

    /**
     * Computes the steepest slope in use, begun with the fullest pack in use, which takes least.
     *
     * @param sheet one of both
     * @return its descent, both at the speed of the proposal
     */
    public Descent descent(Worksheet sheet) {
        Build build = proposed.build();
        return Descent.of(
                sheet.build(),
                sheet.operation().brake(),
                sheet.limits(),
                build.battery().temperatureC(),
                build.use().slope(),
                build.use().speedMax(),
                build.use().chargeFrom());
    }

    private static PackState fullest(Build build) {
        return PackState.of(
                new BatteryModel(build.battery()),
                build.use().chargeFrom(),
                build.battery().temperatureC());
    }

    /** Above the speed where the pack limit holds back the present current, both brake alike. */
    private static OptionalDouble uselessAbove(Worksheet present, Worksheet proposed) {
        ElectricBrake before = present.operation().brake();
        ElectricBrake after = proposed.operation().brake();
        if (after.motorCurrent() <= before.motorCurrent()) {
            return OptionalDouble.empty();
        }
        PackState full = fullest(proposed.build());
        double speed = before.speedReturning(after.settledPackLimit(full), full);
        return speed < proposed.operation().topSpeed()
                ? OptionalDouble.of(speed)
                : OptionalDouble.empty();
    }
}
