package brakewright.replay;

import java.util.Locale;

/** How a ride along a route ends. */
public enum RouteEnd {
    /** It arrives. */
    ARRIVES,
    /** The charge in use is gone on the way. */
    CHARGE_USED,
    /** It stands: a slope or a headwind is too much for what pulls. */
    STUCK,
    /** It cannot stop where it has to. */
    CANNOT_STOP;

    /**
     * Returns the name that files use.
     *
     * @return lower case with hyphens
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
