package brakewright.ride;

import brakewright.numeric.Root;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Require;
import java.util.Arrays;

/**
 * A stop from a speed with all brakes applied in full.
 *
 * <p>{@code a(v) = (F_brake + F_friction + F_road)/(m·(1 + j))}, distance {@code ∫ v/a dv}; while
 * the brakes build up, both grow in proportion to time. The way ridden in the reaction time comes
 * on top.
 *
 * <p>Source: Newton's second law; mean fully developed deceleration as UN Regulation No. 13, Annex
 * 4, 1.1.2, defines it: {@code (vb² − ve²)/(2·(Se − Sb))} with {@code vb = 0.8·v0} and {@code ve =
 * 0.1·v0}.
 */
public final class Stop {

    private static final double DEVELOPED_FROM = 0.8;
    private static final double DEVELOPED_TO = 0.1;
    private static final int PROBES = 10;
    private static final double SPEED_ACCURACY = 1e-9;

    private final Build build;
    private final Braking braking;

    /**
     * Sets up stops of a vehicle.
     *
     * @param build the vehicle
     * @param brake its electric brake
     * @param surroundings where it brakes
     */
    public Stop(Build build, ElectricBrake brake, Surroundings surroundings) {
        this.build = build;
        this.braking = new Braking(build, brake, surroundings);
    }

    /**
     * Brakes to a standstill.
     *
     * @param speed at the beginning [m/s], positive
     * @param charge the charge state at the beginning [1], from 0 to 1
     * @return how it ends
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public StopOutcome from(double speed, double charge) {
        Require.positive("speed", speed, "m/s");
        Require.within("charge state", charge, 0.0, 1.0, "");
        double[] tally = new double[Tally.SIZE];
        tally[Tally.CHARGE] = charge;
        double duration = build.use().effort().buildUp();
        BuildUp buildUp = new BuildUp(braking, duration);
        double developed = duration > 0.0 ? buildUp.add(speed, tally) : speed;
        double held = heldAt(developed, tally[Tally.CHARGE]);
        if (held > 0.0) {
            return new StopOutcome.Unstoppable(held);
        }
        PackState state = braking.pack(tally[Tally.CHARGE]);
        SpeedIntegral integral = new SpeedIntegral(braking);
        double distanceFrom = Double.NaN;
        double distanceTo = Double.NaN;
        double vb = Math.min(developed, DEVELOPED_FROM * speed);
        double ve = Math.min(developed, DEVELOPED_TO * speed);
        double[] marks = marks(developed, vb, ve, state);
        double here = developed;
        if (here <= vb) {
            distanceFrom = tally[Tally.DISTANCE];
        }
        if (here <= ve) {
            distanceTo = tally[Tally.DISTANCE];
        }
        for (double mark : marks) {
            integral.add(here, mark, tally);
            here = mark;
            if (mark == vb) {
                distanceFrom = tally[Tally.DISTANCE];
            }
            if (mark == ve) {
                distanceTo = tally[Tally.DISTANCE];
            }
        }
        if (integral.leastForce() <= 0.0) {
            return new StopOutcome.Unstoppable(integral.leastForceSpeed());
        }
        double distance = tally[Tally.DISTANCE];
        double peak =
                Math.max(buildUp.greatestChargeRate(), integral.greatestChargeRate())
                        / braking.chargePerCoulomb();
        return new StopOutcome.Stopped(
                distance,
                tally[Tally.TIME],
                speed * speed / (2.0 * distance),
                leastDeceleration(integral, speed, tally),
                vb > ve
                        ? (vb * vb - ve * ve) / (2.0 * (distanceTo - distanceFrom))
                        : speed * speed / (2.0 * distance),
                braking.fadeSpeed(state),
                peak,
                braking.cellVoltage(peak, charge),
                tally[Tally.CHARGE],
                Math.sqrt(tally[Tally.CURRENT_SQUARED] / tally[Tally.TIME]),
                energy(tally));
    }

    private double leastDeceleration(SpeedIntegral integral, double speed, double[] tally) {
        return Double.isInfinite(integral.leastForce())
                ? speed / tally[Tally.TIME]
                : integral.leastForce() / braking.inertia();
    }

    /** The highest speed at which the brakes are no stronger than the slope; 0 if there is none. */
    private double heldAt(double speed, double charge) {
        double[] rates = new double[Tally.SIZE];
        double above = speed;
        for (int probe = PROBES; probe >= 1; probe--) {
            double probed = speed * probe / PROBES;
            if (Tally.rates(braking, probed, charge, 1.0, rates) <= 0.0) {
                return probe == PROBES ? speed : crossing(probed, above, charge, rates);
            }
            above = probed;
        }
        return 0.0;
    }

    private double crossing(double low, double high, double charge, double[] rates) {
        return Root.between(
                each -> Tally.rates(braking, each, charge, 1.0, rates), low, high, SPEED_ACCURACY);
    }

    /** The speeds below the start at which the integrand bends, descending, standstill last. */
    private double[] marks(double start, double vb, double ve, PackState state) {
        return Arrays.stream(
                        new double[] {
                            vb, ve, braking.fadeSpeed(state), braking.crossoverSpeed(), 0.0
                        })
                .filter(mark -> mark < start)
                .distinct()
                .map(mark -> -mark)
                .sorted()
                .map(mark -> -mark)
                .toArray();
    }

    private static StopOutcome.Energy energy(double[] tally) {
        return new StopOutcome.Energy(
                tally[Tally.PACK],
                tally[Tally.COPPER],
                tally[Tally.CONTROLLER],
                tally[Tally.MOTOR_DRAG],
                tally[Tally.DRIVE],
                tally[Tally.ROLLING],
                tally[Tally.AIR],
                tally[Tally.FRICTION],
                tally[Tally.CLIMBED]);
    }
}
