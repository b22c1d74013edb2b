package brakewright.battery;

import brakewright.spec.Require;
import brakewright.spec.Unit;
import java.util.List;

/**
 * Packs in parallel whose voltages at rest may differ: how a current divides among them.
 *
 * <p>{@code V = (Σ Uk/Rk − I)/Σ 1/Rk} and {@code Ik = (Uk − V)/Rk}.
 *
 * <p>Source: Millman's theorem; Kirchhoff's laws.
 */
public final class Branches {

    private final List<Branch> all;
    private final double conductance;
    private final double shortCurrent;

    /**
     * A pack in parallel with others.
     *
     * @param voltage open circuit [V]
     * @param resistance at its terminals [Ω], positive
     */
    public record Branch(double voltage, double resistance) {

        /**
         * Validates the pack.
         *
         * @throws IllegalArgumentException if the resistance is not positive
         */
        public Branch {
            Require.positive("resistance of a pack", resistance, Unit.OHM);
        }
    }

    /**
     * Joins packs.
     *
     * @param all the packs, at least one
     * @throws IllegalArgumentException if there is none
     */
    public Branches(List<Branch> all) {
        Require.atLeastOne("packs joined", all.size());
        this.all = List.copyOf(all);
        this.conductance = all.stream().mapToDouble(each -> 1.0 / each.resistance()).sum();
        this.shortCurrent =
                all.stream().mapToDouble(each -> each.voltage() / each.resistance()).sum();
    }

    /**
     * Returns the voltage at the common terminals.
     *
     * @param drawn current out of all packs together; negative when returned [A]
     * @return V [V]
     */
    public double voltage(double drawn) {
        return (shortCurrent - drawn) / conductance;
    }

    /**
     * Returns the current out of one pack.
     *
     * @param pack its place, from 0
     * @param drawn current out of all packs together; negative when returned [A]
     * @return its current; negative into the pack [A]
     */
    public double current(int pack, double drawn) {
        Branch own = all.get(pack);
        return (own.voltage() - voltage(drawn)) / own.resistance();
    }

    /**
     * Returns the current that flows from one pack into another when they are joined.
     *
     * @param higher the pack of higher voltage
     * @param lower the other
     * @return {@code (U1 − U2)/(R1 + R2)} [A]
     */
    public static double equalisingCurrent(Branch higher, Branch lower) {
        return (higher.voltage() - lower.voltage()) / (higher.resistance() + lower.resistance());
    }

    /**
     * Returns the difference of voltage at which two packs may be joined.
     *
     * @param current that both bear [A], not negative
     * @param one a pack
     * @param other the other
     * @return {@code I·(R1 + R2)} [V]
     */
    public static double acceptableDifference(double current, Branch one, Branch other) {
        return current * (one.resistance() + other.resistance());
    }
}
