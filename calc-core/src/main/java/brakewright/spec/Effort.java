package brakewright.spec;

/**
 * How long the rider asks for everything.
 *
 * @param hardPull longest pull at the drive setting [s], positive
 * @param hardBrake longest braking at the brake setting [s], positive
 * @param reaction from seeing to acting [s], not negative
 * @param buildUp until the brakes act in full [s], not negative
 */
public record Effort(double hardPull, double hardBrake, double reaction, double buildUp) {

    /**
     * Validates the effort.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Effort {
        Require.positive("hard pull", hardPull, Unit.SECOND);
        Require.positive("hard brake", hardBrake, Unit.SECOND);
        Require.notNegative("reaction time", reaction, Unit.SECOND);
        Require.notNegative("brake build-up", buildUp, Unit.SECOND);
    }

    /**
     * Returns this effort with another hard pull.
     *
     * @param replacement how long it lasts [s], positive
     * @return a changed copy
     */
    public Effort withHardPull(double replacement) {
        return new Effort(replacement, hardBrake, reaction, buildUp);
    }

    /**
     * Returns this effort with other hard braking.
     *
     * @param replacement how long it lasts [s], positive
     * @return a changed copy
     */
    public Effort withHardBrake(double replacement) {
        return new Effort(hardPull, replacement, reaction, buildUp);
    }

    /**
     * Returns this effort with another reaction.
     *
     * @param replacement its time [s], not negative
     * @return a changed copy
     */
    public Effort withReaction(double replacement) {
        return new Effort(hardPull, hardBrake, replacement, buildUp);
    }

    /**
     * Returns this effort with brakes that build up otherwise.
     *
     * @param replacement the time that takes [s], not negative
     * @return a changed copy
     */
    public Effort withBuildUp(double replacement) {
        return new Effort(hardPull, hardBrake, reaction, replacement);
    }
}
