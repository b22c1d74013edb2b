package brakewright.replay;

/**
 * How it stands with a vehicle on its way.
 *
 * @param distance since the ride began [m]
 * @param time likewise [s]
 * @param speed [m/s]
 * @param charge the charge state [1]
 * @param fastSag voltage that a current of the last seconds has taken off and that comes back
 *     within seconds; negative after one into the pack [V]
 * @param slowSag likewise of the last minutes [V]
 * @param cellsC [°C]
 * @param windingC [°C]
 * @param caseC of the motors [°C]
 */
public record Underway(
        double distance,
        double time,
        double speed,
        double charge,
        double fastSag,
        double slowSag,
        double cellsC,
        double windingC,
        double caseC) {

    /**
     * Returns a vehicle that stands and has rested.
     *
     * @param charge the charge state [1]
     * @param cellsC its cells [°C]
     * @param airC around it, and its motors [°C]
     * @return at the beginning of a ride
     */
    public static Underway rested(double charge, double cellsC, double airC) {
        return new Underway(0.0, 0.0, 0.0, charge, 0.0, 0.0, cellsC, airC, airC);
    }
}
