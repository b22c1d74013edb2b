package brakewright.spec;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The values at which the pack's protection disconnects it while riding. An empty value is one that
 * is not known, which is a reason for caution and not a permission.
 *
 * <p>A protection on the charge lead alone has no such value: what braking returns and driving
 * draws goes past it, so that it opens at nothing and protects from nothing.
 *
 * @param dischargeTrip pack current out [A], positive
 * @param chargeTrip pack current in [A], positive
 * @param cellOvervoltageTrip [V], positive
 * @param cellUndervoltageTrip [V], positive
 * @param path which currents pass through it
 * @param chargeTripDelay how long the charge trip waits [s]; empty where not known
 * @param overvoltageTripDelay how long the over-voltage trip waits [s]; empty where not known
 * @param dischargeTripDelay how long the discharge trip waits [s]; empty where not known
 * @param undervoltageTripDelay how long the under-voltage trip waits [s]; empty where not known
 */
public record Protection(
        OptionalDouble dischargeTrip,
        OptionalDouble chargeTrip,
        OptionalDouble cellOvervoltageTrip,
        OptionalDouble cellUndervoltageTrip,
        Path path,
        OptionalDouble chargeTripDelay,
        OptionalDouble overvoltageTripDelay,
        OptionalDouble dischargeTripDelay,
        OptionalDouble undervoltageTripDelay) {

    /** Nothing is known of the protection. */
    public static final Protection UNKNOWN =
            new Protection(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());

    /** It sits on the charge lead alone: nothing opens while riding. */
    public static final Protection BYPASSED =
            new Protection(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Path.CHARGE_LEAD,
                    OptionalDouble.empty(),
                    OptionalDouble.empty());

    /** Which currents pass through a protection. */
    public enum Path {
        /** The charger's and those of riding, either way. */
        BOTH("both"),
        /** The charger's alone; the controllers are wired past it. */
        CHARGE_LEAD("charge-lead");

        private final String key;

        Path(String key) {
            this.key = key;
        }

        /**
         * Returns the word a build file uses.
         *
         * @return the key
         */
        public String key() {
            return key;
        }
    }

    /**
     * A protection that all currents pass through, its delays not known.
     *
     * @param dischargeTrip pack current out [A], positive
     * @param chargeTrip pack current in [A], positive
     * @param cellOvervoltageTrip [V], positive
     * @param cellUndervoltageTrip [V], positive
     */
    public Protection(
            OptionalDouble dischargeTrip,
            OptionalDouble chargeTrip,
            OptionalDouble cellOvervoltageTrip,
            OptionalDouble cellUndervoltageTrip) {
        this(
                dischargeTrip,
                chargeTrip,
                cellOvervoltageTrip,
                cellUndervoltageTrip,
                Path.BOTH,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /**
     * A protection whose delays while it is drawn from are not known.
     *
     * @param dischargeTrip pack current out [A], positive
     * @param chargeTrip pack current in [A], positive
     * @param cellOvervoltageTrip [V], positive
     * @param cellUndervoltageTrip [V], positive
     * @param path which currents pass through it
     * @param chargeTripDelay how long the charge trip waits [s]
     * @param overvoltageTripDelay how long the over-voltage trip waits [s]
     */
    public Protection(
            OptionalDouble dischargeTrip,
            OptionalDouble chargeTrip,
            OptionalDouble cellOvervoltageTrip,
            OptionalDouble cellUndervoltageTrip,
            Path path,
            OptionalDouble chargeTripDelay,
            OptionalDouble overvoltageTripDelay) {
        this(
                dischargeTrip,
                chargeTrip,
                cellOvervoltageTrip,
                cellUndervoltageTrip,
                path,
                chargeTripDelay,
                overvoltageTripDelay,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /**
     * Validates the trips.
     *
     * @throws IllegalArgumentException if a number is not positive, or there is a trip though no
     *     current of riding passes through it
     */
    public Protection {
        if (path == Path.CHARGE_LEAD
                && List.of(dischargeTrip, chargeTrip, cellOvervoltageTrip, cellUndervoltageTrip)
                        .stream()
                        .anyMatch(OptionalDouble::isPresent)) {
            throw new IllegalArgumentException(
                    "a protection on the charge lead has no trip while riding");
        }
        Require.positive("discharge trip", dischargeTrip, Unit.AMPERE);
        Require.positive("charge trip", chargeTrip, Unit.AMPERE);
        Require.positive("cell over-voltage trip", cellOvervoltageTrip, Unit.VOLT);
        Require.positive("cell under-voltage trip", cellUndervoltageTrip, Unit.VOLT);
        chargeTripDelay.ifPresent(
                value -> Require.notNegative("charge-trip delay", value, Unit.SECOND));
        overvoltageTripDelay.ifPresent(
                value -> Require.notNegative("over-voltage-trip delay", value, Unit.SECOND));
        dischargeTripDelay.ifPresent(
                value -> Require.notNegative("discharge-trip delay", value, Unit.SECOND));
        undervoltageTripDelay.ifPresent(
                value -> Require.notNegative("under-voltage-trip delay", value, Unit.SECOND));
    }

    /**
     * Returns whether the currents of riding go past it.
     *
     * @return true where it opens at nothing
     */
    public boolean isBypassed() {
        return path == Path.CHARGE_LEAD;
    }

    /**
     * Returns this protection with another trip of the current out.
     *
     * @param replacement pack current out [A], positive; empty where not known
     * @return a changed copy
     */
    public Protection withDischargeTrip(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.dischargeTrip = replacement;
        return copy.made();
    }

    /**
     * Returns this protection with another trip of the current in.
     *
     * @param replacement pack current in [A], positive; empty where not known
     * @return a changed copy
     */
    public Protection withChargeTrip(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.chargeTrip = replacement;
        return copy.made();
    }

    /**
     * Returns this protection with another over-voltage trip.
     *
     * @param replacement of a cell [V], positive; empty where not known
     * @return a changed copy
     */
    public Protection withCellOvervoltageTrip(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.cellOvervoltageTrip = replacement;
        return copy.made();
    }

    /**
     * Returns this protection with another under-voltage trip.
     *
     * @param replacement of a cell [V], positive; empty where not known
     * @return a changed copy
     */
    public Protection withCellUndervoltageTrip(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.cellUndervoltageTrip = replacement;
        return copy.made();
    }

    /**
     * Returns this protection with another delay of its charge trip.
     *
     * @param replacement how long it waits [s]; empty where not known
     * @return a changed copy
     */
    public Protection withChargeTripDelay(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.chargeTripDelay = replacement;
        return copy.made();
    }

    /**
     * Returns this protection with another delay of its over-voltage trip.
     *
     * @param replacement how long it waits [s]; empty where not known
     * @return a changed copy
     */
    public Protection withOvervoltageTripDelay(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.overvoltageTripDelay = replacement;
        return copy.made();
    }

    /** What a changed copy is made of: the one place that lists all components. */
    private static final class Copy {

        private OptionalDouble dischargeTrip;
        private OptionalDouble chargeTrip;
        private OptionalDouble cellOvervoltageTrip;
        private OptionalDouble cellUndervoltageTrip;
        private final Path path;
        private OptionalDouble chargeTripDelay;
        private OptionalDouble overvoltageTripDelay;

        Copy(Protection from) {
            this.dischargeTrip = from.dischargeTrip;
            this.chargeTrip = from.chargeTrip;
            this.cellOvervoltageTrip = from.cellOvervoltageTrip;
            this.cellUndervoltageTrip = from.cellUndervoltageTrip;
            this.path = from.path;
            this.chargeTripDelay = from.chargeTripDelay;
            this.overvoltageTripDelay = from.overvoltageTripDelay;
        }

        Protection made() {
            return new Protection(
                    dischargeTrip,
                    chargeTrip,
                    cellOvervoltageTrip,
                    cellUndervoltageTrip,
                    path,
                    chargeTripDelay,
                    overvoltageTripDelay);
        }
    }
}
