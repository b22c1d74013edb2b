package brakewright.powertrain;

import brakewright.spec.Taper;

/**
 * What a tapered limit lets through in steady state: where it meets the voltage that the current
 * itself shifts.
 *
 * <p>With d from the voltage V under current to the end of the band b the limit is {@code I =
 * Iset·d/b}, and {@code d = d0 − I·R} with the same distance d0 at rest: {@code I = Iset·d0/(b +
 * Iset·R)}.
 */
final class TaperedLimit {

    private TaperedLimit() {}

    /**
     * Returns the pack current.
     *
     * @param set the limit without its taper [A]
     * @param taper over which it fades
     * @param left from the voltage at rest to the taper's end [V]; negative beyond it
     * @param resistance of the pack, the way that the current flows [Ω]
     * @return from nothing to what is set [A]
     */
    static double settled(double set, Taper taper, double left, double resistance) {
        double settled = set * left / (taper.band() + set * resistance);
        return Math.max(0.0, Math.min(set, settled));
    }
}
