package brakewright.braking;

import brakewright.powertrain.ElectricBrake;
import brakewright.spec.Build;

/** What brakes do at a moment, for tests that follow something else through a stop. */
public final class BrakesInMotion {

    private final Braking braking;
    private final double[] rates = new double[Counted.COUNT];

    public BrakesInMotion(Build build, ElectricBrake brake, Surroundings surroundings) {
        this.braking = new Braking(build, brake, surroundings);
    }

    /**
     * What they do.
     *
     * @param motorCurrent per motor [A]
     * @param deceleration of the vehicle [m/s²]
     * @param chargeRate at which the packs fill [1/s]
     */
    public record Moment(double motorCurrent, double deceleration, double chargeRate) {}

    /** The moment at a speed and charge state with a share of the brakes built up. */
    public Moment at(double speed, double charge, double share) {
        double force = Tally.rates(braking, speed, charge, share, rates);
        return new Moment(
                Math.sqrt(Counted.CURRENT_SQUARED.in(rates)),
                force / braking.inertia(),
                Counted.CHARGE.in(rates));
    }
}
