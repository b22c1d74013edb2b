package brakewright.spec;

/**
 * What a controller means by the current of a motor. For the same torque a direct current is told
 * as √3/2 of the peak of a phase, an effective one as 1/√2 of it, so a build must say which one its
 * settings use. The ratings of motors and controllers are told in the same.
 */
public enum CurrentBasis {
    /** Peak of the sinusoidal phase current (field-oriented control, amplitude-invariant). */
    PHASE_PEAK("phase-peak", 1.0),
    /**
     * Effective value (root mean square) of the sinusoidal phase current: 1/√2 of its peak, so that
     * the same number makes 41 % more torque.
     */
    PHASE_RMS("phase-rms", Math.sqrt(2.0)),
    /** Current through two of the three phases in series (six-step commutation). */
    DC_EQUIVALENT("dc-equivalent", 2.0 / Math.sqrt(3.0));

    private final String key;
    private final double phasePeak;

    CurrentBasis(String key, double phasePeak) {
        this.key = key;
        this.phasePeak = phasePeak;
    }

    /**
     * Returns the word a build file uses.
     *
     * @return the key
     */
    public String key() {
        return key;
    }

    /**
     * Returns the peak of the sinusoidal phase current that makes the torque of one ampere.
     *
     * @return peak over the current in this basis [1]
     */
    public double phasePeak() {
        return phasePeak;
    }

    /**
     * Returns whether the phase currents are sines.
     *
     * @return false for six-step commutation
     */
    public boolean isSinusoidal() {
        return this != DC_EQUIVALENT;
    }
}
