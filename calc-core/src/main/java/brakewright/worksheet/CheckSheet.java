package brakewright.worksheet;

import brakewright.braking.Descent;
import brakewright.heat.RepeatedStops;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.numeric.Rounding;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.review.Finding;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Use;
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
                uselessAbove(present, proposed, fullest(proposed)),
                hardest(present),
                hardest(proposed));
    }

    /**
     * Returns whether the proposal is no less safe than the present settings.
     *
     * @return true if its verdict is no worse and it is safe up to the same charge
     */
    boolean isNoLessSafe() {
        Verdict.Outcome before = present.review().verdict().outcome();
        Verdict.Outcome after = proposed.review().verdict().outcome();
        return after.compareTo(before) <= 0
                && safeChargeProposed >= safeChargePresent - Rounding.OF_A_RESULT;
    }

    /** Those of a table of stops up to the higher of both highest speeds, and the lower one. */
    private double[] stopSpeeds() {
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
        return proposed.operation().brake().isHeldByTaper(fullest(proposed));
    }

    /**
     * Returns both worksheets.
     *
     * @return of the present settings and of the proposal
     */
    public Both<Worksheet> sheets() {
        return new Both<>(present, proposed);
    }

    /**
     * Returns the hardest braking.
     *
     * @return at any speed and charge in use
     */
    public Both<HardestBraking> hardest() {
        return new Both<>(hardestPresent, hardestProposed);
    }

    /**
     * Returns the charge states of a table over the charge in use.
     *
     * @return both ends and every 5 % between, ascending [1]
     */
    public double[] charges() {
        Use use = proposed.build().use();
        return BrakeMap.charges(use.chargeTo(), use.chargeFrom());
    }

    /**
     * Computes the most that braking sends into the packs.
     *
     * @param charges the charge states [1]
     * @return one row for each, in their order
     */
    public List<ReturnRow> returned(double... charges) {
        return Arrays.stream(charges).mapToObj(charge -> ReturnRow.of(sheets(), charge)).toList();
    }

    /**
     * Computes the currents into the packs over speed.
     *
     * @param charges the charge states [1]
     * @param speeds the speeds [m/s]
     * @return one for each charge state, in their order
     */
    public List<CheckedCurrents> currents(double[] charges, double[] speeds) {
        return Arrays.stream(charges)
                .mapToObj(charge -> CheckedCurrents.of(sheets(), charge, speeds))
                .toList();
    }

    /**
     * Computes how hard the electric brake slows with the fullest pack in use, its taper as it is
     * set.
     *
     * @param speeds the speeds [m/s]
     * @return force and deceleration, in their order
     */
    public Both<BrakeForce> forces(double... speeds) {
        PackState full = fullest(proposed);
        return sheets().map(
                        sheet ->
                                BrakeForce.of(
                                        proposed.build(), sheet.operation().brake(), full, speeds));
    }

    /**
     * Computes stops with the fullest pack in use on dry and on wet road.
     *
     * @return from slow to fast
     */
    public List<CheckedStop> stops() {
        return CheckedStop.all(sheets(), stopSpeeds());
    }

    /**
     * Computes the stops from either highest speed with the fullest pack in use.
     *
     * @return what the proposal buys there
     */
    public OwnStop stopFull() {
        return OwnStop.at(proposed.build().use().chargeFrom(), sheets());
    }

    /**
     * Computes the same half way through the charge in use.
     *
     * @return what the proposal buys there
     */
    public OwnStop stopHalfWay() {
        return OwnStop.at(proposed.build().use().middleCharge(), sheets());
    }

    /**
     * Returns the charge states at which one rides.
     *
     * @return those of the proposal
     */
    public RiddenCharges ridden() {
        return proposed.ridden();
    }

    /**
     * Computes the same at each charge state at which one rides.
     *
     * @return what the proposal buys there, from the fullest pack down
     */
    public List<OwnStop> stopsRidden() {
        return ridden().charges().stream().map(charge -> OwnStop.at(charge, sheets())).toList();
    }

    /**
     * Computes above which speed the proposed motor brake current brakes no harder than the present
     * one.
     *
     * @return at the charge state that stands for the ride, or at the fullest where braking is safe
     *     at none; empty where it is not raised or the pack never holds it back
     */
    public Optional<Fading> uselessRidden() {
        double charge = ridden().highestSafe().orElse(proposed.build().use().chargeFrom());
        PackState state =
                PackState.of(
                        proposed.limits().battery(),
                        charge,
                        proposed.build().battery().temperatureC());
        OptionalDouble speed = uselessAbove(present, proposed, state);
        return speed.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Fading(
                                charge,
                                speed.getAsDouble(),
                                proposed.operation().brake().isHeldByTaper(state)));
    }

    /**
     * Computes what tyres, vehicle and rider bear.
     *
     * @return without the margins of the limits
     */
    public Bearing bears() {
        return Bearing.of(proposed.build());
    }

    /**
     * Computes the heat of stops in a row from either highest speed.
     *
     * @param stops how many, at least one
     * @return the heat; empty where it is not known
     */
    public Both<Optional<RepeatedStops>> repeatedStops(int stops) {
        return sheets().map(
                        sheet ->
                                RepeatedStops.hottest(
                                        sheet.build(),
                                        sheet.operation().brake(),
                                        sheet.operation().drive(),
                                        sheet.operation().topSpeed(),
                                        stops));
    }

    /**
     * Computes the steepest slope in use, begun with the fullest pack in use, which takes least.
     *
     * @return the descents, both at the speed of the proposal
     */
    public Both<Descent> descent() {
        Build build = proposed.build();
        return sheets().map(
                        sheet ->
                                Descent.of(
                                        sheet.build(),
                                        sheet.operation().brake(),
                                        sheet.limits(),
                                        build.battery().temperatureC(),
                                        build.use().slope(),
                                        build.use().speedMax(),
                                        build.use().chargeFrom()));
    }

    /**
     * Computes how the vehicle slows on that slope without the electric brake.
     *
     * @return the deceleration [m/s²], negative where it gains speed
     */
    public double leftDownhill() {
        Build build = proposed.build();
        return LeftBraking.downhill(build, build.use().speedMax(), build.use().slope());
    }

    /**
     * Returns which other setting of the proposal exceeds a constraint.
     *
     * @param constraint which
     * @param asked the setting that is asked about
     * @return the first that does; empty where none does
     */
    public Optional<LimitId> otherBeyond(ConstraintId constraint, LimitId asked) {
        return proposed.review().findings().stream()
                .filter(finding -> finding.condition().isPresent())
                .filter(finding -> finding.constraint().equals(Optional.of(constraint)))
                .flatMap(finding -> finding.subject().stream())
                .filter(subject -> subject != asked)
                .findFirst();
    }

    private static PackState fullest(Worksheet sheet) {
        Build build = sheet.build();
        return PackState.of(
                sheet.limits().battery(), build.use().chargeFrom(), build.battery().temperatureC());
    }

    /** Above the speed where the pack limit holds back the present current, both brake alike. */
    private static OptionalDouble uselessAbove(
            Worksheet present, Worksheet proposed, PackState state) {
        ElectricBrake before = present.operation().brake();
        ElectricBrake after = proposed.operation().brake();
        if (after.motorCurrent() <= before.motorCurrent()) {
            return OptionalDouble.empty();
        }
        double speed = before.speedReturning(after.settledPackLimit(state), state);
        return speed < proposed.operation().topSpeed()
                ? OptionalDouble.of(speed)
                : OptionalDouble.empty();
    }
}
