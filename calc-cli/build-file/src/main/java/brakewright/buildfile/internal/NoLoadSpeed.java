package brakewright.buildfile.internal;

/** How fast a driven wheel in the air would carry a vehicle. */
public final class NoLoadSpeed {

    private NoLoadSpeed() {}

    /**
     * Returns the speed.
     *
     * <p>{@code π·d·kv·U/(60·i)}: the definition of the speed constant.
     *
     * @param voltage of the pack [V]
     * @param kv turns per minute and volt [rpm/V]
     * @param reduction motor turns per wheel turn [1]
     * @param wheel diameter [m]
     * @return [m/s]
     */
    public static double of(double voltage, double kv, double reduction, double wheel) {
        return voltage * kv / 60.0 / reduction * Math.PI * wheel;
    }
}
