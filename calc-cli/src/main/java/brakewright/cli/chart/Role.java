package brakewright.cli.chart;

import java.util.Locale;

/** What a line or a bound is; colour and stroke follow from it. */
public enum Role {
    /** As it is set now. */
    PRESENT,
    /** As it would be. */
    PROPOSED,
    /** Another state of the same. */
    OTHER,
    /** One state more. */
    FURTHER,
    /** As it was recorded. */
    MEASURED,
    /** What must not be passed. */
    LIMIT,
    /** What is wished for. */
    WANTED,
    /** What stands around it, such as the road. */
    GROUND;

    /** The class of what is drawn. */
    String style() {
        return "c-" + name().toLowerCase(Locale.ROOT);
    }
}
