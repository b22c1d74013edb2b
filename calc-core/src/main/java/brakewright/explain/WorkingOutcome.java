package brakewright.explain;

/** How a result came about, or why there is none. */
public sealed interface WorkingOutcome permits Working, WorkingMissing {

    /**
     * Returns which result it is about.
     *
     * @return the result
     */
    ResultId id();
}
