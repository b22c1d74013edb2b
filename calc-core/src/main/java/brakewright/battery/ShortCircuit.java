package brakewright.battery;

import brakewright.spec.Battery;
import brakewright.spec.Joining;
import java.util.List;

/**
 * What a fuse has to interrupt when its circuit is shorted: the voltage of full packs, and the
 * current that they drive through their least resistance ({@link PackModel#leastResistance}).
 *
 * <p>{@code I = U/r} of a pack with {@code U = S·u_max}. Of packs in parallel every one feeds a
 * fault: {@code Σ U/r} behind the common fuse; through the fuse of one pack what that pack drives
 * out of itself, or what all others drive into it, whichever is more. Packs in series drive one
 * current, {@code Σ U/Σ r}, at the sum of their voltages, or one of them its own.
 *
 * <p>Source: Ohm's and Kirchhoff's laws. Joints, leads and the fuse itself would lower the current
 * and are left out: an upper bound.
 */
public final class ShortCircuit {

    private final boolean inSeries;
    private final List<FullPack> packs;

    /**
     * A full pack behind its least resistance.
     *
     * @param voltage at rest [V]
     * @param resistance of the first instant [Ω]
     */
    public record FullPack(double voltage, double resistance) {

        static FullPack of(PackModel model) {
            return new FullPack(
                    model.pack().series() * model.pack().cell().voltageMax(),
                    model.leastResistance());
        }

        /**
         * Returns what it drives through a short of its own terminals.
         *
         * @return the current [A]
         */
        public double current() {
            return voltage / resistance;
        }
    }

    /**
     * Looks at a battery.
     *
     * @param battery its packs
     */
    public ShortCircuit(Battery battery) {
        this.inSeries = battery.joining() == Joining.SERIES;
        this.packs = battery.packs().stream().map(PackModel::new).map(FullPack::of).toList();
    }

    /**
     * Returns what feeds it.
     *
     * @return the packs, in their order
     */
    public List<FullPack> packs() {
        return packs;
    }

    /**
     * Returns the highest voltage that any fuse of the battery may have to break.
     *
     * @return that of the fullest pack, or of all in series [V]
     */
    public double voltage() {
        return inSeries
                ? packs.stream().mapToDouble(FullPack::voltage).sum()
                : packs.stream().mapToDouble(FullPack::voltage).max().orElseThrow();
    }

    /**
     * Returns the current of a short behind all packs.
     *
     * @return the prospective current through a fuse that is common to all [A]
     */
    double current() {
        return inSeries
                ? voltage() / packs.stream().mapToDouble(FullPack::resistance).sum()
                : packs.stream().mapToDouble(FullPack::current).sum();
    }

    /**
     * Returns the greatest current that a short may drive through the fuse of one pack.
     *
     * @param pack its place in the battery, from 0
     * @return the prospective current through its fuse [A]
     */
    double currentThrough(int pack) {
        double out = packs.get(pack).current();
        return Math.max(out, inSeries ? current() : current() - out);
    }
}
