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

    private Cautions() {}

    /**
     * Returns the cautions.
     *
     * @return sentences
     */
    public static List<String> all() {
        return TEXTS;
    }
}
