package brakewright.explain;

import java.util.Arrays;
import java.util.Optional;

/** The results of the driving half whose working can be shown. */
public enum ResultId {
    /** Steady speed on level road in calm air. */
    TOP_SPEED("top-speed"),
    /** Acceleration from a standstill. */
    LAUNCH("launch"),
    /** Steepest slope held at a crawl. */
    CLIMB("climb"),
    /** Time from a standstill to the cruise speed. */
    TIME_TO_CRUISE("time-to-cruise"),
    /** How far the voltage falls while the set current is drawn. */
    SAG("sag"),
    /** Distance at the cruise speed. */
    RANGE("range"),
    /** Distance with stops. */
    TOWN_RANGE("town-range"),
    /** Energy for a distance at the cruise speed. */
    CONSUMPTION("consumption"),
    /** Current that a motor bears for ever. */
    CONTINUOUS_CURRENT("continuous-current"),
    /** How long a motor bears the drive current. */
    PULL_TIME("pull-time"),
    /** How long an overheated motor rests. */
    RECOVERY("recovery"),
    /** How warm the cells are at the end of a ride. */
    PACK_WARMING("pack-warming"),
    /** What one of several packs carries. */
    PACK_SHARING("pack-sharing"),
    /** How far apart in voltage packs may be when they are joined. */
    JOINING("joining"),
    /** How soon the protection opens in the first stop after a full charge. */
    FIRST_STOP_TRIP("first-stop-trip"),
    /** How soon the protection opens in a hard pull. */
    HARD_PULL_TRIP("hard-pull-trip"),
    /** The current that a fuse must break. */
    SHORT_CIRCUIT_CURRENT("short-circuit-current");

    private final String key;

    ResultId(String key) {
        this.key = key;
    }

    /**
     * Returns the name that the command line uses.
     *
     * @return the name, lower case with hyphens
     */
    public String key() {
        return key;
    }

    /**
     * Finds a result by its name.
     *
     * @param key the name
     * @return the result; empty if there is none of that name
     */
    public static Optional<ResultId> ofKey(String key) {
        return Arrays.stream(values()).filter(id -> id.key.equals(key)).findFirst();
    }
}
