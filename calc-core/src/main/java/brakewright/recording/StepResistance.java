package brakewright.recording;

import java.util.OptionalDouble;

/**
 * What the resistance of the pack was, by how its voltage answered when the current changed: the
 * least squares of what the voltage fell against what the current rose, through the origin, over
 * pairs of rows that lie a step apart.
 *
 * <p>What the rest voltage falls meanwhile is part of it: over 10 s about 3 mΩ for a pack of 10 Ah
 * whose voltage falls by 10 V from full to empty, and the less the bigger the pack.
 */
public sealed interface StepResistance {

    /** A step that shows what the cells do at once [s]. */
    double INSTANT = 1.0;

    /** A step that shows what they settle to in a pull [s]. */
    double PULL = 10.0;

    /**
     * Returns the step that it belongs to.
     *
     * @return [s]
     */
    double seconds();

    /**
     * A resistance was found.
     *
     * @param seconds how long a step lasted [s]
     * @param resistance of the whole pack [Ω]
     * @param doubt twice its standard error [Ω]: how far events differ from each other; rows of one
     *     event are not taken for independent. Source: the variance that is robust to clusters of
     *     Liang and Zeger, Biometrika 73 (1986), for a line through the origin
     * @param events how many events it rests on; one ends after twice the step
     * @param leastChange of the current, smaller ones are left out [A]
     * @param temperatureC the mean temperature of the cells at these steps [°C]; empty where none
     *     was recorded
     */
    record Measured(
            double seconds,
            double resistance,
            double doubt,
            int events,
            double leastChange,
            OptionalDouble temperatureC)
            implements StepResistance {}

    /**
     * The recording does not carry it.
     *
     * @param seconds how long a step would last [s]
     * @param reason why
     */
    record Refused(double seconds, Reason reason) implements StepResistance {}

    /** Why a recording tells no resistance. */
    enum Reason {
        /** Voltage or current is missing. */
        NOT_RECORDED("voltage and current of the pack were not recorded together"),
        /** No two rows lie as far apart as a step. */
        NO_ROWS_A_STEP_APART("no two rows lie as far apart as the step"),
        /** Fewer than five events. */
        STEADY_CURRENT("the current changed too little or too rarely"),
        /** The voltage rises with the current. */
        NO_SAG("the voltage does not fall as the current rises");

        private final String meaning;

        Reason(String meaning) {
            this.meaning = meaning;
        }

        /**
         * Returns why.
         *
         * @return a clause
         */
        public String meaning() {
            return meaning;
        }
    }

    /**
     * Finds the resistance with a least change of a quarter of the highest current, between 1 and
     * 20 A.
     *
     * <p>Assumption: our own choice; smaller changes tell more of the noise than of the pack.
     *
     * @param recording with the current positive out of the pack
     * @param seconds how long a step lasts [s]
     * @return the resistance, or why there is none
     * @throws IllegalArgumentException if the step is not positive
     */
    static StepResistance of(Recording recording, double seconds) {
        double highest = 0.0;
        for (Piece piece : recording.pieces()) {
            for (int row = 0; row < piece.rows(); row++) {
                double size = Math.abs(piece.value(Quantity.PACK_CURRENT, row));
                highest = size > highest ? size : highest;
            }
        }
        return of(recording, seconds, Math.max(1.0, Math.min(20.0, highest / 4.0)));
    }

    /**
     * Finds the resistance.
     *
     * @param recording with the current positive out of the pack
     * @param seconds how long a step lasts [s]
     * @param leastChange of the current: smaller ones are left out [A]
     * @return the resistance, or why there is none
     * @throws IllegalArgumentException if the step or the change is not positive
     */
    static StepResistance of(Recording recording, double seconds, double leastChange) {
        if (!(seconds > 0.0) || !(leastChange > 0.0)) {
            throw new IllegalArgumentException(
                    "step and least change must be positive, were "
                            + seconds
                            + " s and "
                            + leastChange
                            + " A");
        }
        return new StepFit(seconds, leastChange).over(recording);
    }
}
