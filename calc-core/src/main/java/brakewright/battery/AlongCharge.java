package brakewright.battery;

import brakewright.spec.Curve;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * All packs {@linkplain AtCharge at} several charge states.
 *
 * <p>For one thread; made anew for each judgement.
 */
public final class AlongCharge {

    private final BatteryModel model;
    private final double[] charges;
    private final AtCharge[] places;
    private final @Nullable OfPack[] packs;

    /** The last found: every pack asks for its share at the same temperature. */
    private double sharedAtC = Double.NaN;

    private double[][] shares = new double[0][];

    private AlongCharge(BatteryModel model, double[] charges, AtCharge[] places) {
        this.model = model;
        this.charges = charges;
        this.places = places;
        this.packs = new @Nullable OfPack[model.packs().size()];
    }

    static AlongCharge of(BatteryModel model, double[] charges) {
        AtCharge[] places = new AtCharge[charges.length];
        for (int i = 0; i < places.length; i++) {
            places[i] = model.at(charges[i]);
        }
        return new AlongCharge(model, charges, places);
    }

    /**
     * Looks at other charge states; where it has looked already, nothing is read again.
     *
     * @param others ascending, as its own have to be [1]
     * @return the same packs there
     */
    public AlongCharge along(double[] others) {
        AtCharge[] there = new AtCharge[others.length];
        int known = 0;
        for (int i = 0; i < there.length; i++) {
            while (known < charges.length && charges[known] < others[i]) {
                known++;
            }
            boolean isKnown = known < charges.length && charges[known] == others[i];
            there[i] = isKnown ? places[known] : model.at(others[i]);
        }
        return new AlongCharge(model, others, there);
    }

    /**
     * Returns the packs.
     *
     * @return their model, for the way in which the current flows
     */
    public BatteryModel model() {
        return model;
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
     * Returns the packs at one of the charge states.
     *
     * @param place among the charge states, from 0
     * @return the packs there
     */
    public AtCharge at(int place) {
        return places[place];
    }

    /**
     * Returns one of the packs.
     *
     * @param place in the battery, from 0
     * @return the pack at its own charge states
     */
    public OfPack pack(int place) {
        OfPack found = packs[place];
        if (found == null) {
            found = new OfPack(place);
            packs[place] = found;
        }
        return found;
    }

    /**
     * Returns the open-circuit voltages of all packs together.
     *
     * @return in the order of the charge states [V]
     */
    public double[] voltages() {
        return each(AtCharge::voltage);
    }

    /**
     * Returns the resistances of all packs together after a current has flowed for a time.
     *
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; 10 s for the pulse resistance, infinite for ever
     * @return in the order of the charge states [Ω]
     */
    public double[] resistances(double temperatureC, double seconds) {
        return each(at -> at.resistance(temperatureC, seconds));
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
            shares = new double[packs.length][places.length];
            for (int i = 0; i < places.length; i++) {
                double[] here = places[i].shares(temperatureC);
                for (int k = 0; k < here.length; k++) {
                    shares[k][i] = here[k];
                }
            }
            sharedAtC = temperatureC;
        }
        return shares[place];
    }

    private double[] each(ToDoubleFunction<AtCharge> finder) {
        double[] found = new double[places.length];
        for (int i = 0; i < found.length; i++) {
            found[i] = finder.applyAsDouble(places[i]);
        }
        return found;
    }

    /** One of the packs at several charge states of all together. */
    public final class OfPack {

        private final int pack;
        private final Group fullest;
        private final Group emptiest;

        private OfPack(int pack) {
            this.pack = pack;
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
            return each(at -> at.read(pack, curve));
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

        /** A worst group of the pack at several charge states of all together. */
        public final class Group {

            private final WorstGroup.End end;

            /** The last found: a bound and a trip of the same cells ask alike. */
            private double foundAtC = Double.NaN;

            private double foundAfter = Double.NaN;
            private double[] resistances = new double[0];

            private Group(WorstGroup.End end) {
                this.end = end;
            }

            /**
             * Returns the voltages of its cells at rest.
             *
             * @return in the order of the charge states [V]
             */
            public double[] voltages() {
                return each(at -> at.groupVoltage(end, pack));
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
                    resistances = each(at -> at.groupResistance(end, pack, temperatureC, seconds));
                    foundAtC = temperatureC;
                    foundAfter = seconds;
                }
                return resistances;
            }
        }
    }
}
