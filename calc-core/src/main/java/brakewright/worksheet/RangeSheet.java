package brakewright.worksheet;

import brakewright.driving.Cruise;
import brakewright.driving.MeasuredRange;
import brakewright.driving.Road;
import brakewright.driving.StopAndGo;
import brakewright.numeric.Accuracy;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.Climate;
import brakewright.spec.Rider;
import brakewright.spec.Riding;
import brakewright.spec.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far the vehicle goes from the fullest to the emptiest charge in use.
 *
 * @param cruise at the cruise speed, level, against the headwind in use
 * @param steady at other speeds, slowest first
 * @param town with stops; empty where the file asks for none or the vehicle cannot ride them
 * @param measured from a consumption measured on the road; empty where none is told
 * @param effects what one change each does to the range at the cruise speed
 */
public record RangeSheet(
        Cruise cruise,
        List<Cruise> steady,
        Optional<StopAndGo> town,
        Optional<MeasuredRange> measured,
        List<Effect> effects) {

    private static final double METRES_PER_KILOMETRE = 1000.0;
    private static final double JOULES_PER_WATT_HOUR = 3600.0;

    /** Assumption: our own choice of what a small vehicle may be expected to take [Wh/km]. */
    private static final double LEAST_EXPECTED = 3.0;

    private static final double MOST_EXPECTED = 50.0;

    /** Copies the lists. */
    public RangeSheet {
        steady = List.copyOf(steady);
        effects = List.copyOf(effects);
    }

    /** One thing that changes. */
    public enum Change {
        /** The rider weighs 10 kg more. */
        RIDER_HEAVIER,
        /** Air and cells are 15 K colder. */
        COLDER,
        /** The road lies 1000 m higher. */
        HIGHER,
        /** The wind blows 3 m/s stronger from ahead. */
        HEADWIND,
        /** The road rises by 1 % throughout. */
        UPHILL
    }

    /**
     * What a change does.
     *
     * @param change the change
     * @param distance the range with it [m]
     */
    public record Effect(Change change, double distance) {}

    /**
     * Computes how far a vehicle goes.
     *
     * @param build the vehicle
     * @param operation its settings in effect
     * @return the range
     */
    static RangeSheet of(Build build, Operation operation) {
        Riding riding = build.use().riding();
        ElectricDrive drive = operation.drive();
        Road road = new Road(0.0, riding.headwind());
        List<Cruise> steady = new ArrayList<>();
        for (double speed : speeds(riding.cruiseSpeed(), operation.topSpeed())) {
            steady.add(Cruise.of(build, drive, road, speed));
        }
        List<Effect> effects = new ArrayList<>();
        for (Change change : Change.values()) {
            effects.add(new Effect(change, changed(build, drive, change)));
        }
        return new RangeSheet(
                Cruise.of(build, drive, road, riding.cruiseSpeed()),
                steady,
                riding.stopsPerMetre() > 0.0
                        ? StopAndGo.of(
                                build,
                                drive,
                                operation.brake(),
                                riding.cruiseSpeed(),
                                riding.stopsPerMetre())
                        : Optional.empty(),
                riding.measured().map(measured -> MeasuredRange.of(build, drive, measured)),
                effects);
    }

    /**
     * Returns what cruising takes at the pack's terminals.
     *
     * @return energy per distance [J/m]: at the cruise speed, or of the slower ride where that is
     *     not held
     */
    public double cruiseConsumption() {
        return cruise.isHeld() ? cruise.consumption() : cruise.consumptionInAll();
    }

    /**
     * Returns whether that may be expected of a small vehicle.
     *
     * @return true from 3 to 50 Wh/km
     */
    public boolean isCruisePlausible() {
        double taken = cruiseConsumption() * METRES_PER_KILOMETRE / JOULES_PER_WATT_HOUR;
        return taken >= LEAST_EXPECTED && taken <= MOST_EXPECTED;
    }

    /**
     * Returns by how much a change alters the range.
     *
     * @param effect the change and the range with it, finite
     * @return the share of the range without it [1], negative where it is less
     */
    public double change(Effect effect) {
        return effect.distance() / cruise.distance() - 1.0;
    }

    /** The cruise speed is told by itself. */
    private static List<Double> speeds(double cruise, double top) {
        return TableSpeeds.upTo(top).stream()
                .filter(speed -> Math.abs(speed - cruise) > Accuracy.TOLD.size())
                .toList();
    }

    /** The settings stay; only what they meet changes. */
    private static double changed(Build build, ElectricDrive drive, Change change) {
        Use use = build.use();
        double wind = use.riding().headwind();
        double speed = use.riding().cruiseSpeed();
        return switch (change) {
            case RIDER_HEAVIER -> {
                Rider rider = build.rider();
                yield distance(
                        build.withRider(rider.withMass(rider.mass() + 10.0)),
                        drive,
                        new Road(0.0, wind),
                        speed);
            }
            case COLDER -> {
                Climate climate = use.climate();
                Build colder =
                        build.withUse(
                                        use.withClimate(
                                                climate.withAmbientC(
                                                        Math.max(
                                                                -40.0, climate.ambientC() - 15.0))))
                                .withBattery(
                                        build.battery()
                                                .at(
                                                        Math.max(
                                                                -60.0,
                                                                build.battery().temperatureC()
                                                                        - 15.0)));
                yield distance(colder, drive, new Road(0.0, wind), speed);
            }
            case HIGHER -> {
                Climate climate = use.climate();
                yield distance(
                        build.withUse(
                                use.withClimate(
                                        climate.withAltitude(
                                                Math.min(9000.0, climate.altitude() + 1000.0)))),
                        drive,
                        new Road(0.0, wind),
                        speed);
            }
            case HEADWIND -> distance(build, drive, new Road(0.0, wind + 3.0), speed);
            case UPHILL -> distance(build, drive, new Road(0.01, wind), speed);
        };
    }

    /** The windings are as warm as the air of the changed vehicle. */
    private static double distance(Build build, ElectricDrive set, Road road, double speed) {
        ElectricDrive drive =
                new ElectricDrive(
                        Powertrain.of(build), set.motorCurrent(), set.packCurrent(), set.taper());
        return Cruise.of(build, drive, road, speed).distance();
    }
}
