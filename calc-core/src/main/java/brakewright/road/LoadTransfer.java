package brakewright.road;

import brakewright.spec.Axles;

/**
 * How hard the wheels of one axle can brake or drive before they slide, with the load shifting
 * between the axles as they do, and when the vehicle tips. All results are multiples of g on level
 * road; of {@code g·cosθ} on a slope, as it is the force on the wheels that shifts the load there.
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
     * <p>Assumption: where both axles are driven, they brake as they are loaded at that
     * deceleration, so that both begin to slide at once. Motors that all pull alike reach less: see
     * {@link #evenBrakingGrip}.
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
     * Returns what grip leaves the driven wheels to brake with while a friction brake slows the
     * vehicle too.
     *
     * <p>With f the deceleration by the friction brake, {@code μ' = μ − f} is left of the grip of
     * each axle, and the load shifts by the whole deceleration {@code f + a}: from {@code a = μ'·(b
     * − (f + a)·h)/L} follow rear {@code μ'·(b − f·h)/(L + μ'·h)}, likewise front {@code μ'·(L − b
     * + f·h)/(L − μ'·h)}, both {@code μ'}. No axle carries more than the weight, so none gives more
     * than {@code μ'}. Without friction brake this is {@link #brakingGrip}, where no wheel lifts.
     *
     * <p>Assumption: the friction brake acts on both axles as they are loaded, so it takes the same
     * part of the grip of each; a brake on one axle takes more of that one and leaves the other
     * all. Rolling resistance and air shift no load (they are a few per cent of a hard stop).
     *
     * @param grip μ [1]
     * @param friction deceleration by the friction brake alone, as a multiple of g [1], not
     *     negative
     * @return a/g of the driven wheels' own braking; 0 where the friction brake uses the grip up or
     *     the driven rear wheels lift
     */
    public double brakingGripBeside(double grip, double friction) {
        double left = Math.max(0.0, grip - friction);
        double multiple =
                switch (axles.driven()) {
                    case REAR -> unloading(left, behindFront - friction * height);
                    case FRONT -> loading(left, aheadOfRear + friction * height);
                    case BOTH -> left;
                };
        return Math.max(0.0, Math.min(left, multiple));
    }

    /**
     * Returns the deceleration at which the first wheels slide if both axles brake with the same
     * force.
     *
     * <p>Half the force on an axle, {@code a/2 = μ·N/(m·g)}: rear {@code 2·μ·b/(L + 2·μ·h)}, front
     * {@code 2·μ·(L−b)/(L − 2·μ·h)}, the least of both. It is at most μ, and μ only where both
     * axles are loaded alike at that deceleration.
     *
     * <p>Assumption: equal motors on both axles, each braking with the same current, make equal
     * forces.
     *
     * @param grip μ [1]
     * @return a/g
     */
    public double evenBrakingGrip(double grip) {
        return Math.min(unloading(2.0 * grip, behindFront), loading(2.0 * grip, aheadOfRear));
    }

    /**
     * Returns the acceleration at which the driven wheels spin.
     *
     * <p>rear {@code μ·b/(L − μ·h)}, front {@code μ·(L−b)/(L + μ·h)}, both {@code μ}.
     *
     * <p>Assumption: where both axles are driven, they drive as they are loaded at that
     * acceleration, so that both begin to spin at once.
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
     * <p>Assumption: where both axles are driven, they drive as they are loaded on that slope.
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
     * @return [1] a/g = b/h, since the vehicle turns about the front axle
     */
    public double brakingTip() {
        return behindFront / height;
    }

    /**
     * Returns the acceleration at which the front wheels lift; the slope at which they do at steady
     * speed is the same number.
     *
     * @return [1] a/g, or tanθ, = (L−b)/h
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
