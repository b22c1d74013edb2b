package brakewright.replay;

/**
 * A stretch on which something held the vehicle back, or the brakes were too weak for it.
 *
 * @param holder what it was
 * @param isTooFast whether it went faster than the route allows; else more slowly
 * @param from where it began [m]
 * @param to where it ended [m]
 * @param worst its lowest speed, or its highest where it was too fast [m/s]
 * @param allowed there [m/s]
 */
public record HeldBack(
        Holder holder, boolean isTooFast, double from, double to, double worst, double allowed) {

    /** Whether another stretch goes on with it. */
    boolean isContinuedBy(HeldBack next) {
        return holder == next.holder && isTooFast == next.isTooFast && to == next.from;
    }

    HeldBack plus(HeldBack next) {
        boolean isWorse = isTooFast ? next.worst > worst : next.worst < worst;
        return new HeldBack(
                holder,
                isTooFast,
                from,
                next.to,
                isWorse ? next.worst : worst,
                isWorse ? next.allowed : allowed);
    }
}
