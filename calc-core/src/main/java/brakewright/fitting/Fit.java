package brakewright.fitting;

/** A value that a recorded ride tells, or why it does not. */
public sealed interface Fit {

    /**
     * Returns what it is about.
     *
     * @return the value
     */
    Fitted what();

    /**
     * The recording carries it.
     *
     * @param what it is about
     * @param value in the unit of it
     * @param doubt in 95 of 100 cases it is not further off, as far as events differ from each
     *     other by chance; what is described wrongly comes on top
     * @param events how many events it rests on
     */
    record Found(Fitted what, double value, double doubt, int events) implements Fit {}

    /**
     * The recording does not carry it.
     *
     * @param what it is about
     * @param reason a clause
     */
    record Refused(Fitted what, String reason) implements Fit {}
}
