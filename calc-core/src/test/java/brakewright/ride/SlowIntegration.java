package brakewright.ride;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.RoadLoad;
import brakewright.spec.Axles;
import brakewright.spec.Build;
import brakewright.spec.DrivenAxle;

/**
 * A stop computed another way: the equation of motion from the laws of the parts, solved by the
 * classical Runge-Kutta method in many equal steps, of time while the brakes build up and of speed
 * from there on.
 */
final class SlowIntegration {

    private static final int STEPS = 20_000;

    /** Just before standstill [m/s]; at it, a pack that takes nothing no longer matters. */
    private static final double CREEP = 1e-9;

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
    private double lastForce;
    private boolean jumped;

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
     * @param accuracy of the integration [1]: a step that straddles a jump of the brake may lie on
     *     the wrong side of it
     */
    record Result(
            double distance,
            double time,
            double endCharge,
            double peak,
            double peakCellVoltage,
            double accuracy) {}

    /** The force that slows the vehicle with a share of the brakes built up [N]. */
    double force(double speed, double charge, double share) {
        PackState state = PackState.of(pack, Math.min(1.0, charge), surroundings.cellsC());
        Powertrain train = brake.powertrain();
        double current =
                Math.min(
                        train.limitedBrakeCurrent(
                                share * brake.motorCurrent(),
                                speed,
                                state.powerReturnedBy(brake.settledPackLimit(state))),
                        train.brakeCurrent(grip(share), speed));
        packCurrent = state.currentInto(train.returnedPower(current, speed));
        packCharge = state.charge();
        return Math.min(grip(share), train.brakeForce(current, speed))
                + friction(share)
                + load.force(speed, surroundings.slope(), 0.0);
    }

    /** Stops; the vehicle must not come to a stand before the brakes have built up. */
    Result stop(double speed, double charge) {
        double[] state = {speed, charge, 0.0, 0.0};
        peak = 0.0;
        peakCellVoltage = 0.0;
        jumped = false;
        lastForce = Double.NaN;
        double buildUp = build.use().effort().buildUp();
        if (buildUp > 0.0) {
            for (int step = 0; step < STEPS; step++) {
                advance(state, buildUp * step / STEPS, buildUp / STEPS, buildUp);
            }
        }
        double developed = state[0];
        double step = -developed / STEPS;
        double[] bySpeed = {state[1], state[2], state[3]};
        for (int i = 0; i < STEPS; i++) {
            double here = developed + i * step;
            double[] k1 = bySpeed(here, bySpeed);
            double force = inertia / -k1[2];
            jumped |= Math.abs(force - lastForce) > JUMP * Math.abs(force);
            lastForce = force;
            double[] k2 = bySpeed(here + 0.5 * step, plus(bySpeed, k1, 0.5 * step));
            double[] k3 = bySpeed(here + 0.5 * step, plus(bySpeed, k2, 0.5 * step));
            double[] k4 = bySpeed(Math.max(CREEP, here + step), plus(bySpeed, k3, step));
            for (int j = 0; j < 3; j++) {
                bySpeed[j] += step / 6.0 * (k1[j] + 2.0 * k2[j] + 2.0 * k3[j] + k4[j]);
            }
        }
        return new Result(
                bySpeed[1],
                bySpeed[2],
                bySpeed[0],
                peak,
                peakCellVoltage,
                jumped ? 2.0 / STEPS : 0.0);
    }

    private void advance(double[] state, double time, double step, double buildUp) {
        double[] k1 = byTime(state, time / buildUp);
        double[] k2 = byTime(plus(state, k1, 0.5 * step), (time + 0.5 * step) / buildUp);
        double[] k3 = byTime(plus(state, k2, 0.5 * step), (time + 0.5 * step) / buildUp);
        double[] k4 = byTime(plus(state, k3, step), (time + step) / buildUp);
        for (int j = 0; j < 4; j++) {
            state[j] += step / 6.0 * (k1[j] + 2.0 * k2[j] + 2.0 * k3[j] + k4[j]);
        }
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
        return 1.0 / (3600.0 * new BatteryModel(build.battery()).capacityAh());
    }

    private static double[] plus(double[] state, double[] rates, double step) {
        double[] sum = state.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += step * rates[i];
        }
        return sum;
    }
}
