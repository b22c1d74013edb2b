package brakewright.limit;

import brakewright.spec.Input;

/**
 * Where the ratings of a wiring are given.
 *
 * @param fuse its rating
 * @param wireAmpacity of its conductors
 * @param plugRating of its plug
 */
record WiringInputs(Input fuse, Input wireAmpacity, Input plugRating) {

    /** The wiring of one pack. */
    static final WiringInputs OF_PACK =
            new WiringInputs(
                    Input.WIRING_FUSE, Input.WIRING_WIRE_AMPACITY, Input.WIRING_PLUG_RATING);

    /** What carries the current of all packs together. */
    static final WiringInputs OF_TRUNK =
            new WiringInputs(Input.TRUNK_FUSE, Input.TRUNK_WIRE_AMPACITY, Input.TRUNK_PLUG_RATING);
}
