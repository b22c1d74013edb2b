package brakewright.road;

import brakewright.spec.Axles;

/**
 * How hard the wheels of one axle can brake or drive before they slide, with the load shifting
 * between the axles as they do, and when the vehicle tips. All results are multiples of g on level
 * road.
 *
 * <p>With wheelbase L, the mass centre b behind the front axle at height h, and grip μ, braking
 * leaves the rear axle {@code m·g·(b − (a/g)·h)/L} and the front the rest.
 *
 * <p>Source: equilibrium of a rigid two-axle vehicle, e.g. Cossalter, Motorcycle Dynamics; Limpert,
 * Brake Design and Safety.
 */
public final class LoadTransfer {

    private final double wheelbase;
    private final double height;
    private final double behindFront;
    private final double aheadOfRear;
    private final Axles axles;

    /**
     * Sets up the equilibrium.
     *
     * @param axles where the axles stand
     */
    public LoadTransfer(Axles axles) {
        this.axles = axles;
        this.wheelbase = axles.wheelbase();
        this.height = axles.massCentreHeight();
        this.behindFront = axles.massCentreFromFront();
        this.aheadOfRear = wheelbase - behindFront;
    }

    /**
     * Returns the deceleration at which the braked wheels slide.
     *
     * <p>rear {@code μ·b/(L + μ·h)}, front {@code μ·(L−b)/(L − μ·h)}, both {@code μ}.
     *
     * @param grip μ [1]
     * @return a/g; infinite where the braked front axle never slides because the vehicle tips first
     */
    public double brakingGrip(double grip) {
        return switch (axles.driven()) {
            case REAR -> unloading(grip, behindFront);
            case FRONT -> loading(grip, aheadOfRear);
            case BOTH -> grip;
        };
    }

    /**
     * Returns the acceleration at which the driven wheels spin.
     *
     * <p>rear {@code μ·b/(L − μ·h)}, front {@code μ·(L−b)/(L + μ·h)}, both {@code μ}.
     *
     * @param grip μ [1]
     * @return a/g; infinite where the driven rear axle never spins because the vehicle tips first
     */
    public double drivingGrip(double grip) {
        return switch (axles.driven()) {
            case REAR -> loading(grip, behindFront);
            case FRONT -> unloading(grip, aheadOfRear);
            case BOTH -> grip;
        };
    }

    /**
     * Returns the steepest slope that the driven wheels can climb steadily without spinning.
     *
     * <p>{@code sinθ + crr·cosθ = μ·N/(m·g)} with the driven axle's load on the slope: rear {@code
     * tanθ = (μ·b/L − crr)/(1 − μ·h/L)}, front {@code tanθ = (μ·(L−b)/L − crr)/(1 + μ·h/L)}, both
     * {@code tanθ = μ − crr}.
     *
     * @param grip μ [1]
     * @param rollingResistance crr [1]
     * @return rise over run; negative where they spin on the level already, infinite where the
     *     vehicle tips before
     */
    public double climbingGrip(double grip, double rollingResistance) {
        double shift = grip * height / wheelbase;
        return switch (axles.driven()) {
            case REAR ->
                    shift < 1.0
                            ? (grip * behindFront / wheelbase - rollingResistance) / (1.0 - shift)
                            : Double.POSITIVE_INFINITY;
            case FRONT -> (grip * aheadOfRear / wheelbase - rollingResistance) / (1.0 + shift);
            case BOTH -> grip - rollingResistance;
        };
    }

    /**
     * Returns the deceleration at which the rear wheels lift.
     *
     * @return a/g = b/h, since the vehicle turns about the front axle
     */
    public double brakingTip() {
        return behindFront / height;
    }

    /**
     * Returns the acceleration at which the front wheels lift; the slope at which they do at steady
     * speed is the same number.
     *
     * @return a/g, or tanθ, = (L−b)/h
     */
    public double drivingTip() {
        return aheadOfRear / height;
    }

    private double unloading(double grip, double lever) {
        return grip * lever / (wheelbase + grip * height);
    }

    private double loading(double grip, double lever) {
        double remaining = wheelbase - grip * height;
        return remaining > 0.0 ? grip * lever / remaining : Double.POSITIVE_INFINITY;
    }
}
