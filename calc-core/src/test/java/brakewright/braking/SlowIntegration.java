package brakewright.braking;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.WeakPack;
import brakewright.road.RoadLoad;
import brakewright.spec.Axles;
import brakewright.spec.Build;
import brakewright.spec.DrivenAxle;

/**
 * A stop computed another way: the equation of motion from the laws of the parts, solved by the
 * classical Runge-Kutta method in many equal steps, of time while the brakes build up and of speed
 * from there on. A step over which the force changes by more than {@link #JUMP} is halved again and
 * again, so that a jump of the brake ends up within one of the narrowest.
 */
final class SlowIntegration {

    /**
     * Over 755 stops of any vehicle distance, time and charge lay within 6e-8, 3e-7 and 3e-10 of
     * those in ten times as many steps, the highest current within 8e-4.
     */
    private static final int STEPS = 2000;

    /** Narrowest: a step that straddles a jump may lie on the wrong side of it by 5e-7 of all. */
    private static final int HALVINGS = 10;

    /** Just before standstill [m/s]; at it, a pack that takes nothing no longer matters. */
    private static final double CREEP = 1e-9;

    /** More than this over a step is looked at closely [1]. */
    private static final double JUMP = 1e-2;

    private static final double GRAVITY = 9.80665;

    private final Build build;
    private final ElectricBrake brake;
    private final Surroundings surroundings;
    private final BatteryModel pack;
    private final RoadLoad load;
    private final double inertia;

    /** What presses on the road [N]. */
    private final double weight;

    private final double[] rates = new double[4];
    private double packCurrent;
    private double packCharge;
    private double peak;
    private double peakCellVoltage;
    private double beside = Double.NaN;
    private double gripForce;

    SlowIntegration(Build build, ElectricBrake brake, Surroundings surroundings) {
        this.build = build;
        this.brake = brake;
        this.surroundings = surroundings;
        this.pack = new BatteryModel(build.battery());
        this.load = RoadLoad.of(build);
        this.weight = build.mass() * GRAVITY * Math.cos(Math.atan(surroundings.slope()));
        this.inertia = build.mass() * (1.0 + build.vehicle().rotatingShare());
    }

    /**
     * What comes of it.
     *
     * @param distance [m]
     * @param time [s]
     * @param endCharge [1]
     * @param peak highest current into the pack [A]
     * @param peakCellVoltage highest while that current flows [V]
     */
    record Result(
            double distance, double time, double endCharge, double peak, double peakCellVoltage) {}

    /** The force that slows the vehicle with a share of the brakes built up [N]. */
    double force(double speed, double charge, double share) {
        PackState state = PackState.of(pack, Math.min(1.0, charge), surroundings.cellsC());
        Powertrain train = brake.powertrain();
        double current =
                Math.min(
                        train.limitedBrakeCurrent(
                                supplied(
                                        speed < build.controllers().brakeEndsBelow()
                                                ? 0.0
                                                : share * brake.motorCurrent(),
                                        speed,
                                        state),
                                speed,
                                state.powerReturnedBy(brake.settledPackLimit(state))),
                        train.brakeCurrent(grip(share), speed));
        packCurrent = state.currentInto(train.returnedPower(current, speed));
        packCharge = state.charge();
        return Math.min(grip(share), train.brakeForce(current, speed))
                + friction(share)
                + load.force(speed, surroundings.slope(), 0.0);
    }

    /** Where braking draws, no more than the pack can give [A]. */
    private double supplied(double asked, double speed, PackState state) {
        Powertrain train = brake.powertrain();
        return WeakPack.supplied(
                asked,
                WeakPack.greatestPower(state),
                current -> -train.returnedPower(current, speed));
    }

    /** Stops; the vehicle must not come to a stand before the brakes have built up. */
    Result stop(double speed, double charge) {
        double[] state = {speed, charge, 0.0, 0.0};
        peak = 0.0;
        peakCellVoltage = 0.0;
        double buildUp = build.use().effort().buildUp();
        if (buildUp > 0.0) {
            for (int step = 0; step < STEPS; step++) {
                state = builtUp(state, step, step + 1.0, buildUp / STEPS, 0);
            }
        }
        double developed = state[0];
        double[] bySpeed = {state[1], state[2], state[3]};
        for (int i = 0; i < STEPS; i++) {
            double from = developed - developed * i / STEPS;
            double to = developed - developed * (i + 1) / STEPS;
            bySpeed = slowed(bySpeed, from, Math.max(CREEP, to), 0);
        }
        return new Result(bySpeed[1], bySpeed[2], bySpeed[0], peak, peakCellVoltage);
    }

    /** The charge state once the brakes, fully built up, have slowed the vehicle that far [1]. */
    double chargeAfter(double speed, double charge, double slowedTo) {
        double[] state = {charge, 0.0, 0.0};
        for (int i = 0; i < STEPS; i++) {
            double from = speed + (slowedTo - speed) * i / STEPS;
            state = slowed(state, from, speed + (slowedTo - speed) * (i + 1) / STEPS, 0);
        }
        return state[0];
    }

    /** From one time to another, both told in steps [1]. */
    private double[] builtUp(double[] state, double from, double to, double step, int halvings) {
        double before = force(Math.max(0.0, state[0]), state[1], from / STEPS);
        double[] k1 = byTime(state, from / STEPS);
        double middle = 0.5 * (from + to);
        double h = step * (to - from);
        double[] k2 = byTime(plus(state, k1, 0.5 * h), middle / STEPS);
        double[] k3 = byTime(plus(state, k2, 0.5 * h), middle / STEPS);
        double[] k4 = byTime(plus(state, k3, h), to / STEPS);
        double[] next = state.clone();
        for (int j = 0; j < next.length; j++) {
            next[j] += h / 6.0 * (k1[j] + 2.0 * k2[j] + 2.0 * k3[j] + k4[j]);
        }
        double after = force(Math.max(0.0, next[0]), next[1], to / STEPS);
        if (halvings == HALVINGS || !isJump(before, after)) {
            return next;
        }
        double[] half = builtUp(state, from, middle, step, halvings + 1);
        return builtUp(half, middle, to, step, halvings + 1);
    }

    /** From one speed down to another [m/s]. */
    private double[] slowed(double[] state, double from, double to, int halvings) {
        double middle = 0.5 * (from + to);
        double h = to - from;
        double[] k1 = bySpeed(from, state);
        double[] k2 = bySpeed(middle, plus(state, k1, 0.5 * h));
        double[] k3 = bySpeed(middle, plus(state, k2, 0.5 * h));
        double[] k4 = bySpeed(to, plus(state, k3, h));
        double[] next = state.clone();
        for (int j = 0; j < next.length; j++) {
            next[j] += h / 6.0 * (k1[j] + 2.0 * k2[j] + 2.0 * k3[j] + k4[j]);
        }
        // the time per speed is the inertia over the force, with its sign
        if (halvings == HALVINGS || !isJump(1.0 / k1[2], 1.0 / k4[2])) {
            return next;
        }
        double[] half = slowed(state, from, middle, halvings + 1);
        return slowed(half, middle, to, halvings + 1);
    }

    private static boolean isJump(double before, double after) {
        return Math.abs(after - before) > JUMP * Math.min(Math.abs(before), Math.abs(after));
    }

    /** Rates of speed, charge, distance and time. */
    private double[] byTime(double[] state, double share) {
        double speed = Math.max(0.0, state[0]);
        rates[0] = -force(speed, state[1], share) / inertia;
        meetPeak();
        rates[1] = packCurrent * perCoulomb();
        rates[2] = speed;
        rates[3] = 1.0;
        return rates.clone();
    }

    /** Changes of charge, distance and time per change of speed. */
    private double[] bySpeed(double speed, double[] state) {
        double slowing = -force(speed, state[0], 1.0) / inertia;
        meetPeak();
        return new double[] {packCurrent * perCoulomb() / slowing, speed / slowing, 1.0 / slowing};
    }

    private void meetPeak() {
        if (packCurrent <= 0.0 || packCurrent < peak * (1.0 - 1e-9)) {
            return;
        }
        double cell = pack.cellVoltage(packCurrent, packCharge, surroundings.cellsC());
        boolean same = packCurrent <= peak * (1.0 + 1e-9);
        peakCellVoltage = same ? Math.max(peakCellVoltage, cell) : cell;
        peak = Math.max(peak, packCurrent);
    }

    /** The friction brake takes no more than the road carries [N]. */
    private double friction(double share) {
        double deceleration =
                surroundings.frictionBrake() ? build.vehicle().frictionBrake().orElse(0.0) : 0.0;
        return Math.min(share * deceleration * build.mass(), surroundings.grip() * weight);
    }

    /**
     * The force of the driven wheels at which one of them slides, sought by halving: the loads of
     * the axles, the part of the friction brake that each carries, and what is left [N].
     */
    private double grip(double share) {
        double friction = friction(share);
        if (friction != beside) {
            beside = friction;
            double holds = 0.0;
            double slides = surroundings.grip() * weight;
            for (int halving = 0; halving < 50; halving++) {
                double middle = 0.5 * (holds + slides);
                if (slides(middle, friction)) {
                    slides = middle;
                } else {
                    holds = middle;
                }
            }
            gripForce = holds;
        }
        return gripForce;
    }

    private boolean slides(double electric, double friction) {
        Axles axles = build.vehicle().axles();
        double moment =
                weight * axles.massCentreFromFront()
                        - (electric + friction) * axles.massCentreHeight();
        double rear = Math.max(0.0, Math.min(weight, moment / axles.wheelbase()));
        double driven =
                axles.driven() == DrivenAxle.BOTH
                        ? weight
                        : axles.driven() == DrivenAxle.REAR ? rear : weight - rear;
        return electric + friction * driven / weight > surroundings.grip() * driven;
    }

    private double perCoulomb() {
        return 1.0 / (3600.0 * pack.capacityAh());
    }

    private static double[] plus(double[] state, double[] rates, double step) {
        double[] sum = state.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += step * rates[i];
        }
        return sum;
    }
}
