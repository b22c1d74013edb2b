package brakewright.battery;

import brakewright.spec.Cell;
import brakewright.spec.Curve;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * All packs at several charge states: what is the same at every temperature is read once. At each
 * of them it tells what {@link BatteryModel} tells there, to the last digit.
 *
 * <p>For one thread; made anew for each judgement.
 */
public final class AlongCharge {

    private final BatteryModel model;
    private final double[] charges;
    private final List<OfPack> packs;

    private double @Nullable [] voltages;

    /** The last found: every pack asks for its share at the same temperature. */
    private double sharedAtC = Double.NaN;

    private double[][] shares = new double[0][];

    AlongCharge(BatteryModel model, double[] charges) {
        this.model = model;
        this.charges = charges;
        this.packs = IntStream.range(0, model.packs().size()).mapToObj(OfPack::new).toList();
    }

    /**
     * Returns the charge states of all packs together.
     *
     * @return as they were asked for, not to be written to [1]
     */
    public double[] charges() {
        return charges;
    }

    /**
     * Returns one of the packs.
     *
     * @param place in the battery, from 0
     * @return the pack at its own charge states
     */
    public OfPack pack(int place) {
        return packs.get(place);
    }

    /**
     * Returns the open-circuit voltages of all packs together.
     *
     * @return in the order of the charge states, not to be written to [V]
     */
    public double[] voltages() {
        double[] found = voltages;
        if (found == null) {
            found = each(charges, model::openCircuitVoltage);
            voltages = found;
        }
        return found;
    }

    /**
     * Returns the resistances of all packs together after a current has flowed for a time.
     *
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; 10 s for the pulse resistance, infinite for ever
     * @return in the order of the charge states [Ω]
     */
    public double[] resistances(double temperatureC, double seconds) {
        double[] found = new double[charges.length];
        double[] each = new double[packs.size()];
        for (int i = 0; i < found.length; i++) {
            for (int k = 0; k < each.length; k++) {
                each[k] = packs.get(k).resistance(i, temperatureC, seconds);
            }
            found[i] = model.atTerminals(each);
        }
        return found;
    }

    /**
     * Returns the shares of the whole current that one pack carries.
     *
     * @param place of the pack in the battery, from 0
     * @param temperatureC the cell temperature [°C]
     * @return in the order of the charge states, not to be written to [1]
     */
    public double[] shares(int place, double temperatureC) {
        if (sharedAtC != temperatureC) {
            shares = new double[packs.size()][charges.length];
            double[] each = new double[packs.size()];
            for (int i = 0; i < charges.length; i++) {
                for (int k = 0; k < each.length; k++) {
                    each[k] = packs.get(k).resistance(i, temperatureC, Cell.PULSE);
                }
                double[] here = model.shares(each);
                for (int k = 0; k < each.length; k++) {
                    shares[k][i] = here[k];
                }
            }
            sharedAtC = temperatureC;
        }
        return shares[place];
    }

    /** What is found at each of some charge states. */
    static double[] each(double[] charges, DoubleUnaryOperator finder) {
        double[] found = new double[charges.length];
        for (int i = 0; i < found.length; i++) {
            found[i] = finder.applyAsDouble(charges[i]);
        }
        return found;
    }

    /** One of the packs at several charge states of all together. */
    public final class OfPack {

        private final PackModel pack;
        private final double[] own;
        private final Group fullest;
        private final Group emptiest;
        private @Nullable CellsAlong cells;

        private OfPack(int place) {
            this.pack = model.packs().get(place);
            this.own = each(charges, charge -> model.chargeOf(place, charge));
            this.fullest = new Group(WorstGroup.End.FULLEST);
            this.emptiest = new Group(WorstGroup.End.EMPTIEST);
        }

        /**
         * Reads a curve at its own charge states.
         *
         * @param curve over the charge state
         * @return in the order of those of all together
         */
        public double[] read(Curve curve) {
            return each(own, curve::at);
        }

        /**
         * Returns one of its worst groups.
         *
         * @param end which
         * @return the group at the same charge states
         */
        public Group group(WorstGroup.End end) {
            return end == WorstGroup.End.FULLEST ? fullest : emptiest;
        }

        private double resistance(int place, double temperatureC, double seconds) {
            CellsAlong found = cells;
            if (found == null) {
                found = pack.along(own);
                cells = found;
            }
            return pack.resistance(found.resistance(place, temperatureC, seconds));
        }

        /** A worst group of the pack at several charge states of all together. */
        public final class Group {

            private final WorstGroup group;
            private double @Nullable [] voltages;
            private @Nullable CellsAlong cells;

            /** The last found: a bound and a trip of the same cells ask alike. */
            private double foundAtC = Double.NaN;

            private double foundAfter = Double.NaN;
            private double[] resistances = new double[0];

            private Group(WorstGroup.End end) {
                this.group = pack.worst(end);
            }

            /**
             * Returns the voltages of its cells at rest.
             *
             * @return in the order of the charge states, not to be written to [V]
             */
            public double[] voltages() {
                double[] found = voltages;
                if (found == null) {
                    found = each(own, group::openCircuitVoltage);
                    voltages = found;
                }
                return found;
            }

            /**
             * Returns the resistances that the current of the pack meets in its cells.
             *
             * @param temperatureC the cell temperature [°C]
             * @param seconds how long the current has flowed [s]; infinite for ever
             * @return in the order of the charge states, not to be written to [Ω]
             */
            public double[] resistances(double temperatureC, double seconds) {
                if (foundAtC != temperatureC || foundAfter != seconds) {
                    resistances = found(temperatureC, seconds);
                    foundAtC = temperatureC;
                    foundAfter = seconds;
                }
                return resistances;
            }

            private double[] found(double temperatureC, double seconds) {
                CellsAlong along = cells;
                if (along == null) {
                    along = pack.along(group, own);
                    cells = along;
                }
                double[] found = new double[own.length];
                for (int i = 0; i < found.length; i++) {
                    found[i] =
                            pack.groupResistance(group, along.resistance(i, temperatureC, seconds));
                }
                return found;
            }
        }
    }
}
