package brakewright.spec;

/**
 * What a controller means by the current of a motor. The two differ by a factor of 2/√3 for the
 * same torque, so a build must say which one its settings use.
 */
public enum CurrentBasis {
    /** Peak of the sinusoidal phase current (field-oriented control, amplitude-invariant). */
    PHASE_PEAK("phase-peak"),
    /** Current through two of the three phases in series (six-step commutation). */
    DC_EQUIVALENT("dc-equivalent");

    private final String key;

    CurrentBasis(String key) {
        this.key = key;
    }

    /**
     * Returns the word a build file uses.
     *
     * @return the key
     */
    public String key() {
        return key;
    }
}
