package brakewright.recording;

import java.util.Locale;
import java.util.Optional;

/**
 * Which way a recorded current counts.
 *
 * @param isOutPositive whether the file counts a current out of the pack as positive
 * @param proof what shows it
 */
public record CurrentSign(boolean isOutPositive, Proof proof) {

    /** What shows which way a current counts. */
    public enum Proof {
        /** It was told. */
        GIVEN("as told"),
        /** While it brakes the current is lower than while it pulls. */
        BRAKING("braking returns what pulling draws"),
        /** The voltage sags while it flows out. */
        SAG("the voltage sags while it flows out"),
        /** More of it flows one way, as a ride draws more than it returns. */
        BALANCE("a ride draws more than it returns");

        private final String meaning;

        Proof(String meaning) {
            this.meaning = meaning;
        }

        /**
         * Returns the name that files use.
         *
         * @return lower case
         */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * Returns why it shows the sign.
         *
         * @return a clause
         */
        public String meaning() {
            return meaning;
        }
    }

    /** Assumption: our own choice; slower changes of speed are rolling and wind [m/s²]. */
    private static final double CLEAR_RATE = 0.5;

    /** Assumption: our own choice; fewer rows prove nothing. */
    private static final int LEAST_ROWS = 10;

    /** Assumption: our own choice; what noise alone adds up to is rarely three times its spread. */
    private static final double CLEAR_SUM = 3.0;

    /**
     * Proves the sign of the current of a recording as it was read.
     *
     * @param recording with the current as the file counts it
     * @return the sign; empty where there is no current, nothing shows the sign, or braking and sag
     *     contradict each other
     */
    public static Optional<CurrentSign> proved(Recording recording) {
        double braking = byBraking(recording);
        double sag = bySag(recording);
        if (braking * sag < 0.0) {
            return Optional.empty();
        }
        if (braking != 0.0) {
            return Optional.of(new CurrentSign(braking > 0.0, Proof.BRAKING));
        }
        if (sag != 0.0) {
            return Optional.of(new CurrentSign(sag > 0.0, Proof.SAG));
        }
        double net =
                Integral.of(recording, (piece, row) -> piece.value(Quantity.PACK_CURRENT, row))
                        .net();
        return net == 0.0
                ? Optional.empty()
                : Optional.of(new CurrentSign(net > 0.0, Proof.BALANCE));
    }

    /**
     * Turns a recording's current so that it is positive out of the pack.
     *
     * @param recording with the current as the file counts it
     * @return the recording, changed where this sign is the other way round
     */
    public Recording settle(Recording recording) {
        return isOutPositive ? recording : recording.each(CurrentSign::turned);
    }

    private static Piece turned(Piece piece) {
        double[] current = piece.column(Quantity.PACK_CURRENT);
        for (int row = 0; row < current.length; row++) {
            current[row] = 0.0 - current[row];
        }
        return piece.with(Quantity.PACK_CURRENT, current);
    }

    /** Positive where a positive current flows out; 0 where nothing shows it. */
    private static double byBraking(Recording recording) {
        Quantity speed =
                recording.has(Quantity.WHEEL_SPEED)
                        ? Quantity.WHEEL_SPEED
                        : Quantity.SATELLITE_SPEED;
        double[] sums = new double[2];
        int[] counts = new int[2];
        for (Piece piece : recording.pieces()) {
            HardChange.Rates rates = new HardChange.Rates(piece, speed);
            for (int i = 0; i < rates.count(); i++) {
                double rate = rates.at(i);
                double current = piece.value(Quantity.PACK_CURRENT, rates.row(i));
                if (Math.abs(rate) > CLEAR_RATE && !Double.isNaN(current)) {
                    int side = rate > 0.0 ? 0 : 1;
                    sums[side] += current;
                    counts[side]++;
                }
            }
        }
        return counts[0] < LEAST_ROWS || counts[1] < LEAST_ROWS
                ? 0.0
                : sums[0] / counts[0] - sums[1] / counts[1];
    }

    /** Positive likewise: what the voltage falls while the current rises. */
    private static double bySag(Recording recording) {
        double sum = 0.0;
        double squares = 0.0;
        int count = 0;
        for (Piece piece : recording.pieces()) {
            for (int row = 1; row < piece.rows(); row++) {
                double fall =
                        piece.value(Quantity.PACK_VOLTAGE, row - 1)
                                - piece.value(Quantity.PACK_VOLTAGE, row);
                double rise =
                        piece.value(Quantity.PACK_CURRENT, row)
                                - piece.value(Quantity.PACK_CURRENT, row - 1);
                double both = fall * rise;
                if (!Double.isNaN(both) && both != 0.0) {
                    sum += both;
                    squares += both * both;
                    count++;
                }
            }
        }
        boolean isClear = Math.abs(sum) > CLEAR_SUM * Math.sqrt(squares);
        return count >= LEAST_ROWS && isClear ? sum : 0.0;
    }
}
