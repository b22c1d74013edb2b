package brakewright.powertrain;

/**
 * Where what the cells give is spent: the one ledger of energy, of steady rides, of pulling away
 * and of stops. Every part is power [W] or energy [J] alike, and the parts leave nothing out: what
 * a part gives back is negative, as speed does in a stop and height downhill, and so is the sum
 * where the cells are charged.
 *
 * <p>Source: conservation of energy.
 *
 * @param air moving the air
 * @param rolling in the tyres
 * @param climbing gaining height; negative downhill
 * @param moving gaining speed; negative where it is lost
 * @param friction lost in the friction brake
 * @param drive lost in belt, chain or gears
 * @param motorDrag lost in the motors' friction and iron
 * @param copper lost in the windings
 * @param controller lost in the controllers
 * @param idle electronics and lights
 * @param pack lost in the resistance of the pack
 */
public record Spending(
        double air,
        double rolling,
        double climbing,
        double moving,
        double friction,
        double drive,
        double motorDrag,
        double copper,
        double controller,
        double idle,
        double pack) {

    /** Nothing is spent. */
    public static final Spending NONE = new Spending(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    /**
     * Returns the sum of all parts.
     *
     * @return what the cells give; negative where they are charged
     */
    public double sum() {
        return air
                + rolling
                + climbing
                + moving
                + friction
                + drive
                + motorDrag
                + copper
                + controller
                + idle
                + pack;
    }

    /**
     * Returns what leaves the pack's terminals.
     *
     * @return the sum without the loss in the pack; negative where it enters there
     */
    public double atTerminals() {
        return sum() - pack;
    }

    /**
     * Returns the parts as shares of their sum.
     *
     * @return the shares [1]; not numbers where nothing is spent
     */
    public Spending shares() {
        double sum = sum();
        return new Spending(
                air / sum,
                rolling / sum,
                climbing / sum,
                moving / sum,
                friction / sum,
                drive / sum,
                motorDrag / sum,
                copper / sum,
                controller / sum,
                idle / sum,
                pack / sum);
    }

    /**
     * Returns the same with another loss in the pack.
     *
     * @param loss in its resistance, also what it stores for the next seconds
     * @return a changed copy
     */
    public Spending withPack(double loss) {
        return new Spending(
                air,
                rolling,
                climbing,
                moving,
                friction,
                drive,
                motorDrag,
                copper,
                controller,
                idle,
                loss);
    }

    /**
     * Adds another spending.
     *
     * @param other the other
     * @param times how often
     * @return the sum, part by part
     */
    public Spending plus(Spending other, double times) {
        return new Spending(
                air + times * other.air,
                rolling + times * other.rolling,
                climbing + times * other.climbing,
                moving + times * other.moving,
                friction + times * other.friction,
                drive + times * other.drive,
                motorDrag + times * other.motorDrag,
                copper + times * other.copper,
                controller + times * other.controller,
                idle + times * other.idle,
                pack + times * other.pack);
    }
}
