package brakewright.cli.words;

import java.util.List;

/** What everyone who acts on a worksheet should know. */
public final class Cautions {

    private static final List<String> TEXTS =
            List.of(
                    "These are estimates from the inputs given, not a release. Where a maker's"
                            + " datasheet, local law or a qualified person says otherwise, that"
                            + " counts.",
                    "Have a brake that does not depend on the pack. The electric brake fades with"
                            + " a full, cold or disconnected pack and holds nothing when switched"
                            + " off.",
                    "Try every change at walking pace first, on closed level ground, with helmet,"
                            + " gloves and pads; raise speed and current in small steps.",
                    "A protection that opens while braking takes the brake away at once and can"
                            + " destroy the controller. Know its trips before you raise a limit.",
                    "Lithium cells burn. Charge within their temperature window, away from escape"
                            + " routes, never unattended; do not ride a damaged or wet pack.",
                    "Disconnect the pack before you work on it; insulate tools; a pack's short"
                            + " circuit can exceed what a fuse can interrupt.");

    private static final List<String> BRAKING =
            List.of(
                    "An electric brake is never a sole brake on slopes: it fades with a full or cold"
                            + " pack, and is gone when the pack is cut off.",
                    "A protection board that opens while braking takes the brake away within"
                            + " milliseconds to seconds, and can destroy the controller.",
                    "Try a raised brake current at walking pace first, on closed level ground, with"
                            + " helmet, gloves and pads; then in small steps of speed, with the pack"
                            + " between 30 and 70 % charge.",
                    "These are estimates from the inputs given. Makers' datasheets, local law and"
                            + " qualified practice come first; figures quoted from a regulation are"
                            + " that jurisdiction's and no legal advice.");

    private static final List<String> BRIEF =
            List.of(
                    "Estimates from the inputs given, no release: datasheets, law, qualified people"
                            + " come first.",
                    "Have a brake that does not depend on the pack: the electric one fades full,"
                            + " cold or cut off.",
                    "Try every change at walking pace, level, with helmet, gloves, pads; then in"
                            + " small steps.",
                    "A protection that opens takes the brake at once, for that stop, and may destroy"
                            + " the controller.",
                    "Lithium cells burn: charge them in their window; disconnect the pack before"
                            + " you work on it.");

    private static final List<String> TERSE =
            List.of(
                    "Estimates from the inputs; law, datasheets, qualified people first.",
                    "Have a brake that needs no pack: this one fades full, cold, cut off.",
                    "Try at walking pace, level, in helmet, gloves, pads; in small steps.",
                    "A protection that opens takes the brake, may kill the controller.",
                    "Cells burn: charge in their window; disconnect before you work.");

    private static final List<String> BRIEF_BRAKING =
            List.of(
                    "Never a sole brake on slopes: it fades full or cold, and is gone when the pack"
                            + " is cut off.",
                    "A protection that opens takes the brake within milliseconds to seconds.",
                    "Try it at walking pace, level, in helmet and gloves, between 30 and 70 %"
                            + " charge.",
                    "Estimates from the inputs given: datasheets, law, qualified people come"
                            + " first.");

    private Cautions() {}

    /**
     * Returns the cautions.
     *
     * @return sentences
     */
    public static List<String> all() {
        return TEXTS;
    }

    /**
     * Returns the same cautions, each short enough for a line.
     *
     * @return sentences of at most 94 letters
     */
    public static List<String> brief() {
        return BRIEF;
    }

    /**
     * Returns the same cautions, each short enough for a narrow line.
     *
     * @return sentences of at most 68 letters
     */
    public static List<String> terse() {
        return TERSE;
    }

    /**
     * Returns the cautions for raising a brake current, each short enough for a line.
     *
     * @return sentences of at most 94 letters
     */
    public static List<String> briefBraking() {
        return BRIEF_BRAKING;
    }

    /**
     * Returns the cautions for raising a brake current.
     *
     * @return sentences
     */
    public static List<String> braking() {
        return BRAKING;
    }
}
