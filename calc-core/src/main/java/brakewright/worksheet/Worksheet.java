package brakewright.worksheet;

import brakewright.battery.FuseDuty;
import brakewright.limit.Limits;
import brakewright.limit.UsedInput;
import brakewright.operation.FirstStop;
import brakewright.operation.HardPull;
import brakewright.operation.Operation;
import brakewright.operation.Sharing;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.review.Review;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * The worksheet of one vehicle. What it tells beyond limits and findings is found when it is first
 * asked for: a page shows a part of it. Threads that ask at once may each find it, and find the
 * same.
 */
public final class Worksheet {

    private static final double[] QUARTERS = {1.0, 0.75, 0.5, 0.25, 0.1};

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final Review review;
    private volatile @Nullable List<PackRow> pack;
    private volatile @Nullable DriveSheet drive;
    private volatile @Nullable HeatSheet heat;
    private volatile @Nullable List<FirstStop> firstStops;

    private Worksheet(Build build, Limits limits, Operation operation) {
        this.build = build;
        this.limits = limits;
        this.operation = operation;
        this.review = Review.of(build, limits, operation);
    }

    /**
     * Computes the worksheet of a vehicle.
     *
     * @param build the vehicle
     * @return its worksheet
     */
    public static Worksheet of(Build build) {
        Limits limits = Limits.of(build);
        return new Worksheet(build, limits, Operation.of(build, limits));
    }

    /**
     * Returns the vehicle.
     *
     * @return as it was given
     */
    public Build build() {
        return build;
    }

    /**
     * Returns what is permitted.
     *
     * @return the limits
     */
    public Limits limits() {
        return limits;
    }

    /**
     * Returns how the vehicle is operated.
     *
     * @return the settings in effect
     */
    public Operation operation() {
        return operation;
    }

    /**
     * Returns what was found.
     *
     * @return the settings held against the limits
     */
    public Review review() {
        return review;
    }

    /**
     * Returns the pack over its charge state.
     *
     * @return the rows, fullest first
     */
    public List<PackRow> pack() {
        List<PackRow> found = pack;
        if (found == null) {
            found = List.copyOf(PackRow.all(build, limits.battery(), limits, operation));
            pack = found;
        }
        return found;
    }

    /**
     * Returns what the drive achieves with the fullest pack in use.
     *
     * @return the sheet
     */
    public DriveSheet drive() {
        DriveSheet found = drive;
        if (found == null) {
            found = DriveSheet.of(build, operation, build.use().chargeFrom());
            drive = found;
        }
        return found;
    }

    /**
     * Returns how the motor warms.
     *
     * @return the sheet
     */
    public HeatSheet heat() {
        HeatSheet found = heat;
        if (found == null) {
            found = HeatSheet.of(build, operation, drive());
            heat = found;
        }
        return found;
    }

    /**
     * Returns the first stop after a full charge.
     *
     * @return cells at their own temperature, then the coldest and the warmest in use where they
     *     differ
     */
    public List<FirstStop> firstStops() {
        List<FirstStop> found = firstStops;
        if (found == null) {
            found =
                    Arrays.stream(build.cellTemperatures())
                            .mapToObj(cells -> FirstStop.of(build, limits, operation, cells))
                            .toList();
            firstStops = found;
        }
        return found;
    }

    /**
     * Returns what opens soonest in a hard pull at the set draw.
     *
     * @return for each cell temperature at which something opens, that of the cells' own first
     */
    public List<HardPull.Opened> hardPulls() {
        Operation trusted = operation.trusted(limits);
        return Arrays.stream(build.cellTemperatures())
                .mapToObj(cells -> new HardPull(build, limits, trusted, cells).opensFirst())
                .flatMap(Optional::stream)
                .toList();
    }

    /**
     * Returns the findings, those together that differ only in cell temperature or pack.
     *
     * @return gravest first
     */
    public List<AlikeFindings> alikeFindings() {
        return AlikeFindings.of(review);
    }

    /**
     * Computes the electric brake over speed and charge state.
     *
     * @return the map, made anew each time
     */
    public BrakeMap brakeMap() {
        return BrakeMap.of(build, limits.battery(), limits, operation);
    }

    /**
     * Computes stops from 10 km/h to the highest speed over the charge in use.
     *
     * @return the stops, made anew each time
     */
    public List<StopTable.Row> stops() {
        return StopTable.of(
                build,
                operation,
                BrakeMap.charges(build.use().chargeTo(), build.use().chargeFrom()));
    }

    /**
     * Computes what the drive achieves quarter by quarter of the charge, as far as it is in use.
     *
     * @return at 100, 75, 50, 25 and 10 %, and at both ends of the charge in use, fullest first;
     *     made anew each time
     */
    public List<DriveSheet> driveByCharge() {
        double from = build.use().chargeFrom();
        double to = build.use().chargeTo();
        return DoubleStream.concat(DoubleStream.of(from, to), DoubleStream.of(QUARTERS))
                .filter(charge -> charge <= from && charge >= to)
                .distinct()
                .boxed()
                .sorted(Comparator.reverseOrder())
                .map(charge -> DriveSheet.of(build, operation, charge))
                .toList();
    }

    /**
     * Computes the thrust over speed and charge state, from standstill to the top speed of the
     * fullest pack or the highest speed in use, whichever is greater.
     *
     * @return the map, made anew each time
     */
    public ThrustMap thrustMap() {
        return ThrustMap.upTo(thrustTop(), build, limits.battery(), operation);
    }

    /**
     * Computes the thrust at chosen charge states and speeds.
     *
     * @param charges the charge states [1]
     * @param speeds the speeds [m/s]
     * @return the map, both in the order given
     */
    public ThrustMap thrustAt(double[] charges, double[] speeds) {
        return ThrustMap.of(build, limits.battery(), operation, charges, speeds);
    }

    /**
     * Returns the highest speed for which a thrust is told.
     *
     * @return the top speed of the fullest pack or the highest speed in use, whichever is greater
     *     [m/s]
     */
    public double thrustTop() {
        return Math.max(drive().topSpeedFlat().speed(), operation.topSpeed());
    }

    /**
     * Returns what is permitted.
     *
     * @return the limits, each derived when it is first asked for
     */
    public LimitSheet permitted() {
        return new LimitSheet(build, limits);
    }

    /**
     * Returns the settings that this sheet counts with.
     *
     * @return those given, and for each current that is not given its limit
     */
    public SettingsInEffect inEffect() {
        return SettingsInEffect.of(limits, operation);
    }

    /**
     * Computes the pack at chosen charge states.
     *
     * @param charges the charge states [1]
     * @return one row for each, in their order
     */
    public List<PackRow> packAt(double... charges) {
        return Arrays.stream(charges)
                .mapToObj(charge -> PackRow.at(charge, build, limits.battery(), limits, operation))
                .toList();
    }

    /**
     * Computes the electric brake at chosen charge states and speeds, as it is judged.
     *
     * @param charges the charge states [1]
     * @param speeds the speeds [m/s]
     * @return one row for each charge state, in their order
     */
    public List<BrakeRow> brakeAt(double[] charges, double[] speeds) {
        ElectricBrake trusted = operation.trusted(limits).brake();
        double cellsC = build.battery().temperatureC();
        return Arrays.stream(charges)
                .mapToObj(
                        charge ->
                                BrakeRow.of(
                                        trusted,
                                        PackState.of(limits.battery(), charge, cellsC),
                                        limits.packRegen().valueAt(charge, cellsC),
                                        speeds))
                .toList();
    }

    /**
     * Computes what braking in full sends into the pack, as it is judged.
     *
     * @param charges the charge states [1]
     * @param speeds the speeds [m/s]
     * @return the map, both in the order given
     */
    public ReturnMap returnMap(double[] charges, double[] speeds) {
        return ReturnMap.of(
                operation.trusted(limits).brake(),
                limits.battery(),
                limits.packRegen(),
                build.battery().temperatureC(),
                charges,
                speeds);
    }

    /**
     * Computes stops at one charge state, and what they would be at the wanted deceleration.
     *
     * @param charge the charge state at their beginning [1]
     * @param speeds at which they begin [m/s]
     * @return the stops, in the order of the speeds
     */
    public StopCourse stopsAt(double charge, double... speeds) {
        return StopCourse.of(build, operation, charge, speeds);
    }

    /**
     * Computes how a winding warms at the drive current that is set.
     *
     * @return its course; empty where the motor's thermal figures are not known
     */
    public Optional<PullCourse> pullCourse() {
        return PullCourse.of(build, operation);
    }

    /**
     * Computes what a slope takes in calm air.
     *
     * @param slope rise over run [1]
     * @param speeds the speeds [m/s]
     * @return the force, in their order [N]
     */
    public double[] roadTakes(double slope, double... speeds) {
        RoadLoad load = RoadLoad.of(build);
        return Arrays.stream(speeds).map(speed -> load.force(speed, slope, 0.0)).toArray();
    }

    /**
     * Computes how hard the electric brake slows with the fullest pack in use, as it is judged.
     *
     * @param speeds the speeds [m/s]
     * @return force and deceleration, in their order
     */
    public BrakeForce brakeForce(double... speeds) {
        return brakeForceAt(build.use().chargeFrom(), speeds);
    }

    /**
     * Computes how hard the electric brake slows at some charge state, as it is judged.
     *
     * @param charge the charge state [1]
     * @param speeds the speeds [m/s]
     * @return force and deceleration, in their order
     */
    public BrakeForce brakeForceAt(double charge, double... speeds) {
        return BrakeForce.of(
                build,
                operation.trusted(limits).brake(),
                PackState.of(limits.battery(), charge, build.battery().temperatureC()),
                speeds);
    }

    /**
     * Returns the charge states at which one rides.
     *
     * @return where stops and maps are told
     */
    public RiddenCharges ridden() {
        return RiddenCharges.of(build.use(), review.safeCharge());
    }

    /**
     * Computes the stops from the highest speed at the charge states ridden and at the lowest in
     * use, on level dry road, as if nothing opened.
     *
     * @return from the fullest pack down
     */
    public List<RiddenStop> riddenStops() {
        return RiddenStop.all(build, operation, ridden());
    }

    /**
     * Computes from which speed on the pack decides how hard the vehicle brakes.
     *
     * @return at the charge state that stands for the ride, or at the fullest where braking is safe
     *     at none; empty where the pack holds nothing back
     */
    public Optional<Fading> fading() {
        double charge = ridden().highestSafe().orElse(build.use().chargeFrom());
        return Fading.at(
                charge,
                PackState.of(limits.battery(), charge, build.battery().temperatureC()),
                operation);
    }

    /**
     * Computes what makes the first stop after a full charge safe.
     *
     * @return the help, made anew each time
     */
    public FirstStopHelp firstStopHelp() {
        return FirstStopHelp.of(this);
    }

    /**
     * Computes what is left of braking where the pack refuses.
     *
     * @return the stops, made anew each time
     */
    public List<LeftBraking> leftBraking() {
        return LeftBraking.all(build, limits, operation);
    }

    /**
     * Returns what the verdict on pack and parts rests on.
     *
     * @return the inputs that the working of the limits names, made anew each time
     */
    public Set<UsedInput> restsOn() {
        return UsedInput.of(build, limits);
    }

    /**
     * Computes what a short circuit asks of each fuse.
     *
     * @return those that are described, made anew each time
     */
    public List<FuseDuty> fuses() {
        return FuseDuty.of(build.battery());
    }

    /**
     * Computes how the voltage sags and what it meets first.
     *
     * @return the sag, made anew each time
     */
    public SagSheet sag() {
        return new SagSheet(build, limits, operation);
    }

    /**
     * Computes how several packs share the current.
     *
     * @return the sharing, empty for one pack; made anew each time
     */
    public Sharing sharing() {
        return Sharing.of(build, limits, operation);
    }

    /**
     * Computes how far the vehicle goes.
     *
     * @return the range, made anew each time
     */
    public RangeSheet range() {
        return RangeSheet.of(build, operation);
    }
}
