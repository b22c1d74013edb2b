package brakewright.spec;

/**
 * How the motors reach the road.
 *
 * @param motors how many, at least one
 * @param reduction motor turns per wheel turn [1], positive
 * @param efficiency of belt, chain or gears, the same both ways [1], above 0 to 1
 */
public record Drive(int motors, double reduction, double efficiency) {

    /**
     * Validates the drive.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Drive {
        Require.atLeastOne("number of motors", motors);
        Require.positive("reduction", reduction, Unit.RATIO);
        Require.positive("drive efficiency", efficiency, Unit.RATIO);
        Require.within("drive efficiency", efficiency, 0.0, 1.0, Unit.RATIO);
    }
}
