package brakewright.driving;

import brakewright.battery.BatteryModel;
import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.numeric.Accuracy;
import brakewright.numeric.GaussRule;
import brakewright.numeric.Pieces;
import brakewright.numeric.Root;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Require;
import brakewright.spec.Unit;
import brakewright.spec.Use;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A ride with stops at even distances on level road, against the headwind in use: pull away with
 * all that is permitted, hold the speed, stop with the electric brake as it is set, again and again
 * until the charge in use is gone.
 *
 * <p>What one leg takes and brings back is worked out at several charge states and integrated over
 * the charge, {@code dx = D·Q·ds/q(s)} with the net charge q of a leg of length D. The full pack
 * takes back less, which counts. Where the leg is too short for the speed, the highest that fits is
 * ridden.
 *
 * <p>Source: conservation of energy.
 *
 * @param length of a leg [m]
 * @param speed asked for [m/s]
 * @param reached the highest speed of a leg at mid charge [m/s]
 * @param meanSpeed over the whole ride, standing time left out [m/s]
 * @param distance in all [m]
 * @param consumption net at the pack's terminals [J/m]
 * @param returnedShare of what leaves the pack, the part that stops bring back [1]
 * @param middle the leg at mid charge; empty where none fits there
 * @param parts the distance over the charge, fullest first
 */
public record StopAndGo(
        double length,
        double speed,
        double reached,
        double meanSpeed,
        double distance,
        double consumption,
        double returnedShare,
        Optional<Leg> middle,
        List<Part> parts) {

    /** Assumption: our own choice; the full pack takes back least, so pieces are narrow there. */
    static final double[] PIECES = {1.0, 0.95, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1, 0.0};

    /** Ends of the parts that are told, each the end of a piece. */
    private static final double[] TOLD = {0.0, 0.3, 0.6, 0.9};

    static final GaussRule RULE = GaussRule.of(2);
    private static final double SLOWEST = 0.3;

    /**
     * Computes a ride with stops.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @param brake its electric brake as it is set
     * @param speed asked for [m/s], positive
     * @param stopsPerMetre [1/m], positive
     * @return the ride; empty where the vehicle cannot ride a leg at some charge state in use
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static Optional<StopAndGo> of(
            Build build,
            ElectricDrive drive,
            ElectricBrake brake,
            double speed,
            double stopsPerMetre) {
        Require.positive("speed", speed, Unit.METRE_PER_SECOND);
        Require.positive("stops per distance", stopsPerMetre, Unit.PER_METRE);
        return new Ride(build, drive, brake, 1.0 / stopsPerMetre).at(speed);
    }

    /**
     * Computes one leg of such a ride.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @param brake its electric brake as it is set
     * @param speed asked for [m/s], positive
     * @param stopsPerMetre [1/m], positive
     * @param charge at which it is ridden [1]
     * @return the leg; empty where none fits
     * @throws IllegalArgumentException if the speed or the stops are not positive
     */
    public static Optional<Leg> leg(
            Build build,
            ElectricDrive drive,
            ElectricBrake brake,
            double speed,
            double stopsPerMetre,
            double charge) {
        Require.positive("speed", speed, Unit.METRE_PER_SECOND);
        Require.positive("stops per distance", stopsPerMetre, Unit.PER_METRE);
        return new Ride(build, drive, brake, 1.0 / stopsPerMetre).leg(speed, charge);
    }

    /** Copies the list. */
    public StopAndGo {
        parts = List.copyOf(parts);
    }

    /**
     * What is ridden between two charge states.
     *
     * @param from the higher [1]
     * @param to the lower [1]
     * @param distance [m]
     */
    public record Part(double from, double to, double distance) {}

    /**
     * One leg; energies are those at the pack's terminals.
     *
     * @param charge at which it is ridden [1]
     * @param reached its highest speed [m/s]
     * @param pull how it is reached
     * @param stopped how it is left
     * @param steadyDistance at that speed [m]
     * @param steadyTime at that speed [s]
     * @param steadyCurrent out of the pack at that speed [A]
     * @param broughtBack charge that stopping returns, what electronics draw left aside [C]
     * @param drawn [J]
     * @param returned [J]
     * @param netCharge out of the pack [C]
     * @param perFullCharge how far all that the packs hold would last in such legs [m]
     */
    public record Leg(
            double charge,
            double reached,
            StandingStart.Reached pull,
            StopOutcome.Stopped stopped,
            double steadyDistance,
            double steadyTime,
            double steadyCurrent,
            double broughtBack,
            double drawn,
            double returned,
            double netCharge,
            double perFullCharge) {

        /**
         * Returns how long it takes.
         *
         * @return the time, standing left out [s]
         */
        public double time() {
            return pull.time() + steadyTime + stopped.time();
        }

        /**
         * Returns the steady current that takes as much charge out of the packs.
         *
         * @return the mean, what flows back taken off [A]
         */
        public double meanCurrent() {
            return netCharge / time();
        }

        /**
         * Returns the steady current that heats the cells as much, wherever it flows to.
         *
         * <p>{@code √((E_p/R + I²·t)/T)} with the energy E_p that pulling away and stopping leave
         * in the packs, whose resistance they meet.
         *
         * @param resistance of all packs that they meet [Ω], positive
         * @return the root of the mean square [A]
         */
        public double effectiveCurrent(double resistance) {
            double uneven = (pull.spent().pack() + stopped.spent().pack()) / resistance;
            return Math.sqrt((uneven + steadyCurrent * steadyCurrent * steadyTime) / time());
        }
    }

    private static final class Ride {

        private final Use use;
        private final double cellsC;
        private final double idlePower;
        private final double length;
        private final BatteryModel model;
        private final Propulsion propulsion;
        private final StandingStart start;
        private final Stop stop;

        Ride(Build build, ElectricDrive drive, ElectricBrake brake, double length) {
            this.use = build.use();
            this.cellsC = build.battery().temperatureC();
            this.idlePower = use.riding().idlePower();
            this.length = length;
            this.model = new BatteryModel(build.battery());
            Road road = Road.ofUse(build);
            this.propulsion = new Propulsion(build, drive, road);
            this.start = new StandingStart(build, drive, road);
            this.stop =
                    new Stop(
                            build,
                            brake,
                            Surroundings.of(build)
                                    .withoutFrictionBrake()
                                    .withHeadwind(road.headwind()));
        }

        Optional<StopAndGo> at(double speed) {
            double legs = 0.0;
            double time = 0.0;
            double drawn = 0.0;
            double returned = 0.0;
            double coulombs = 3600.0 * model.capacityAh();
            double[] ends = Pieces.of(PIECES, use.chargeTo(), use.chargeFrom());
            List<Part> parts = new ArrayList<>();
            for (int piece = ends.length - 1; piece > 0; piece--) {
                double before = legs;
                for (int node = 0; node < RULE.nodes(); node++) {
                    Optional<Leg> leg = leg(speed, RULE.point(node, ends[piece - 1], ends[piece]));
                    if (leg.isEmpty() || leg.get().netCharge() <= 0.0) {
                        return Optional.empty();
                    }
                    double weight =
                            RULE.weight(node, ends[piece - 1], ends[piece])
                                    * coulombs
                                    / leg.get().netCharge();
                    legs += weight;
                    time += weight * leg.get().time();
                    drawn += weight * leg.get().drawn();
                    returned += weight * leg.get().returned();
                }
                append(parts, ends[piece], ends[piece - 1], (legs - before) * length);
            }
            double distance = legs * length;
            double middle = 0.5 * (use.chargeFrom() + use.chargeTo());
            Optional<Leg> there = leg(speed, middle);
            return Optional.of(
                    new StopAndGo(
                            length,
                            speed,
                            there.map(Leg::reached).orElse(0.0),
                            distance / time,
                            distance,
                            (drawn - returned) / distance,
                            returned / drawn,
                            there,
                            parts));
        }

        /** Adds a piece to the last part, unless that ends where the next begins. */
        private static void append(List<Part> parts, double from, double to, double distance) {
            boolean begins = parts.isEmpty() || Arrays.stream(TOLD).anyMatch(end -> end == from);
            Part last = begins ? new Part(from, from, 0.0) : parts.remove(parts.size() - 1);
            parts.add(new Part(last.from(), to, last.distance() + distance));
        }

        /** Propulsion away and stopping at a charge state. */
        private record Ends(double speed, StandingStart.Reached pull, StopOutcome.Stopped stopped) {

            double distance() {
                return pull.distance() + stopped.distance();
            }
        }

        /** The leg at the speed asked for, or at the highest that the length leaves room for. */
        private Optional<Leg> leg(double speed, double charge) {
            PackState pack = PackState.of(model, charge, cellsC);
            Optional<Ends> ends = ends(speed, pack);
            if (excess(ends) <= 0.0) {
                return ends.map(fitting -> ridden(fitting, pack));
            }
            if (speed <= SLOWEST || excess(ends(SLOWEST, pack)) > 0.0) {
                return Optional.empty();
            }
            double highest =
                    Root.between(each -> excess(ends(each, pack)), SLOWEST, speed, Accuracy.TOLD);
            return ends(highest, pack).map(fitting -> ridden(fitting, pack));
        }

        private Optional<Ends> ends(double speed, PackState pack) {
            return start.to(speed, pack)
                    .flatMap(
                            pull ->
                                    stop.from(speed, pack.charge())
                                                    instanceof StopOutcome.Stopped stopped
                                            ? Optional.of(new Ends(speed, pull, stopped))
                                            : Optional.empty());
        }

        /** How far pulling away and stopping together exceed the leg; all of it if impossible. */
        private double excess(Optional<Ends> ends) {
            return ends.map(each -> Math.min(length, each.distance() - length)).orElse(length);
        }

        private Leg ridden(Ends ends, PackState pack) {
            double speed = ends.speed();
            StandingStart.Reached pull = ends.pull();
            StopOutcome.Stopped stopped = ends.stopped();
            double left = Math.max(0.0, length - pull.distance() - stopped.distance());
            double steady = left / speed;
            double holding = propulsion.holdingCurrent(speed);
            double steadyPower = propulsion.terminalPower(holding, speed);
            double pulled = pull.spent().atTerminals();
            double idleStopping = idlePower * stopped.time();
            double toPack = stopped.returned();
            double drawn = pulled + steadyPower * steady + idleStopping + Math.max(0.0, -toPack);
            double returned = Math.max(0.0, toPack);
            double pulledCurrent = (pull.spent().sum()) / pack.voltage();
            double steadyCurrent = -pack.currentInto(-steadyPower);
            double broughtBack =
                    (stopped.endCharge() - pack.charge()) * 3600.0 * model.capacityAh();
            double netCharge =
                    pulledCurrent
                            + steadyCurrent * steady
                            - (broughtBack - idleStopping / pack.voltage());
            return new Leg(
                    pack.charge(),
                    speed,
                    pull,
                    stopped,
                    left,
                    steady,
                    steadyCurrent,
                    broughtBack,
                    drawn,
                    returned,
                    netCharge,
                    3600.0 * model.capacityAh() * length / netCharge);
        }
    }
}
