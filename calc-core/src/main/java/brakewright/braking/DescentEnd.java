package brakewright.braking;

/** What ends a steady descent that is held by the electric brake. */
public enum DescentEnd {
    /** The brake as it is set is too weak from the beginning: the vehicle gains speed. */
    NOT_HELD,
    /** The pack regen current set, or the high-voltage taper, leaves too little of the brake. */
    BRAKE_FADES,
    /** A limit on what the packs may take or give for many minutes is reached. */
    PACK_REFUSES,
    /** The packs are full. */
    FULL,
    /** The lowest charge in use is reached, as holding draws from the packs. */
    LOWEST_CHARGE,
    /** Nothing flows into or out of the packs, so nothing ends it. */
    NEVER
}
