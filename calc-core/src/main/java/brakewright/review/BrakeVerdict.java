package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.heat.WarmRide;
import brakewright.limit.Limits;
import brakewright.limit.Severity;
import brakewright.numeric.Accuracy;
import brakewright.numeric.Greatest;
import brakewright.numeric.Pieces;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.FrictionBrake;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * What the settings leave of the brakes where they are weakest in the use: over its charge, its
 * cell temperatures and its speeds, on level dry road.
 *
 * <p>The electric brake counts as the settings and a settled high-voltage taper leave it, the
 * friction brake as far as the road carries it. Whether the pack bears what is sent back is the
 * other verdict's question.
 *
 * @param word in a word
 * @param deceleration the least that all brakes reach, the road's part included [m/s²]
 * @param wanted the deceleration wanted [m/s²]
 * @param charge the charge state where it is least; where there is no brake, where that is [1]
 * @param cellsC the cell temperature there [°C]
 * @param speed the speed there [m/s]
 * @param left the least that the brakes add to what road and drag take away anyway [m/s²]
 * @param downhill the least deceleration down the steepest slope in use; negative where the vehicle
 *     gains speed on it [m/s²]
 */
public record BrakeVerdict(
        Word word,
        double deceleration,
        double wanted,
        double charge,
        double cellsC,
        double speed,
        double left,
        double downhill) {

    /** Assumption: our own choice; below a tenth of the top speed there is little left to stop. */
    private static final double FIRST_PART = 0.1;

    /**
     * Assumption: our own choice; a brake that adds less than a fifth of what is wanted is none.
     */
    private static final double NO_BRAKE = 0.2;

    /** The verdict on the brake in a word, best first. */
    public enum Word {
        /** The deceleration wanted is reached in all of the use. */
        ENOUGH("enough"),
        /** It is not, or the vehicle gains speed on the steepest slope in use. */
        WEAK("weak"),
        /** In a state that the use includes there is no brake to speak of. */
        NONE("none");

        private final String key;

        Word(String key) {
            this.key = key;
        }

        /**
         * Returns the word that worksheets use.
         *
         * @return lower case
         */
        public String key() {
            return key;
        }
    }

    /**
     * Looks at the brakes of a vehicle.
     *
     * @param build the vehicle with its settings
     * @return the verdict
     */
    public static BrakeVerdict of(Build build) {
        Limits limits = Limits.of(build);
        return of(build, limits, Operation.of(build, limits));
    }

    /**
     * Looks at the brakes of a vehicle whose limits are known.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @return the verdict
     */
    public static BrakeVerdict of(Build build, Limits limits, Operation operation) {
        return new Work(build, operation).verdict(limits.battery(), operation.bends(build, limits));
    }

    /**
     * Returns the deceleration below which there is no brake to speak of.
     *
     * @return that the brakes must add at least [m/s²]
     */
    double least() {
        return NO_BRAKE * wanted;
    }

    /**
     * Puts verdicts in an order, the worse the greater.
     *
     * @return the word first, then what the deceleration lacks [1]
     */
    public double badness() {
        return 2.0 * word.ordinal() - deceleration / (1.0 + Math.abs(deceleration));
    }

    private static final class Work {

        private final Build build;
        private final ElectricBrake brake;
        private final Powertrain powertrain;
        private final RoadLoad road;
        private final double top;
        private final double friction;
        private final double gripForce;
        private final double[] temperatures;

        Work(Build build, Operation operation) {
            this.build = build;
            this.brake = operation.brake();
            this.powertrain = brake.powertrain();
            this.road = RoadLoad.of(build);
            this.top = operation.topSpeed();
            this.temperatures = WarmRide.temperatures(build, operation.drive());
            double grip = build.vehicle().grip();
            this.friction = FrictionBrake.force(build, grip, 0.0);
            double multiple =
                    new LoadTransfer(build.vehicle().axles())
                            .brakingGripBeside(
                                    grip,
                                    FrictionBrake.deceleration(build, grip, 0.0)
                                            / Gravity.STANDARD);
            this.gripForce = multiple * build.mass() * Gravity.STANDARD;
        }

        /** A state of the pack, and what the brake settles at in it. */
        private record Braked(PackState state, ElectricBrake settled) {}

        /**
         * The pack reaches into the brake by two powers alone: what it is let take, and what it can
         * give where braking draws. So the weakest brake is found where one of them is least.
         */
        BrakeVerdict verdict(BatteryModel model, double[] charges) {
            Braked takesLeast =
                    least(
                            model,
                            charges,
                            state -> state.powerReturnedBy(brake.settledPackLimit(state)));
            Braked givesLeast = least(model, charges, PackState::greatestPower);
            Felt total = this::total;
            Felt added = this::added;
            double weakest = weakest(total, takesLeast);
            double drawing = weakest(total, givesLeast);
            boolean isTaking = total(weakest, takesLeast) <= total(drawing, givesLeast);
            Braked where = isTaking ? takesLeast : givesLeast;
            double speed = isTaking ? weakest : drawing;
            double deceleration = total(speed, where);
            double idleTaking = weakest(added, takesLeast);
            double idleGiving = weakest(added, givesLeast);
            boolean isIdleTaking = added(idleTaking, takesLeast) <= added(idleGiving, givesLeast);
            double left =
                    isIdleTaking ? added(idleTaking, takesLeast) : added(idleGiving, givesLeast);
            double wanted = build.criteria().decelerationMin();
            double downhill = deceleration - downhillPull();
            Word word =
                    Severity.excess(NO_BRAKE * wanted, Math.max(0.0, left)) > 0.0
                            ? Word.NONE
                            : Severity.excess(wanted, deceleration) > 0.0 || downhill < 0.0
                                    ? Word.WEAK
                                    : Word.ENOUGH;
            if (word == Word.NONE) {
                where = isIdleTaking ? takesLeast : givesLeast;
                speed = isIdleTaking ? idleTaking : idleGiving;
            }
            return new BrakeVerdict(
                    word,
                    deceleration,
                    wanted,
                    where.state().charge(),
                    where.state().temperatureC(),
                    speed,
                    left,
                    downhill);
        }

        private Braked least(
                BatteryModel model, double[] charges, ToDoubleFunction<PackState> power) {
            PackState least = null;
            double lowest = Double.POSITIVE_INFINITY;
            for (double cellsC : temperatures) {
                for (double charge : charges) {
                    PackState state = PackState.of(model, charge, cellsC);
                    double here = power.applyAsDouble(state);
                    if (least == null || here < lowest) {
                        least = state;
                        lowest = here;
                    }
                }
            }
            PackState found = Objects.requireNonNull(least);
            return new Braked(found, brake.settled(found));
        }

        /** What the slope takes off, against level road at any speed [m/s²]. */
        private double downhillPull() {
            return (road.force(0.0, 0.0, 0.0) - road.force(0.0, -build.use().slope(), 0.0))
                    / build.inertia();
        }

        private interface Felt {
            double at(double speed, Braked at);
        }

        private double weakest(Felt felt, Braked at) {
            double first = FIRST_PART * top;
            double[] bends = {
                powertrain.crossoverSpeed(brake.motorCurrent()),
                brake.settled(at.state()).fadeSpeed(at.state()),
                Math.nextDown(brake.endsBelow()),
                brake.endsBelow()
            };
            double[] corners = Pieces.of(bends, first, top);
            DoubleUnaryOperator weakness = speed -> -felt.at(speed, at);
            double where = top;
            double weakest = weakness.applyAsDouble(top);
            for (int i = 0; i < corners.length; i++) {
                double here = weakness.applyAsDouble(corners[i]);
                if (here > weakest) {
                    where = corners[i];
                    weakest = here;
                }
                if (i > 0) {
                    double between =
                            Greatest.between(weakness, corners[i - 1], corners[i], Accuracy.MODEL);
                    double there = weakness.applyAsDouble(between);
                    if (there > weakest) {
                        where = between;
                        weakest = there;
                    }
                }
            }
            return where;
        }

        private double total(double speed, Braked at) {
            return (electric(speed, at) + friction + road.force(speed, 0.0, 0.0)) / build.inertia();
        }

        private double added(double speed, Braked at) {
            return (electric(speed, at) - powertrain.brakeForce(0.0, speed) + friction)
                    / build.inertia();
        }

        private double electric(double speed, Braked at) {
            return Math.min(
                    powertrain.brakeForce(at.settled().motorCurrent(speed, at.state()), speed),
                    gripForce);
        }
    }
}
