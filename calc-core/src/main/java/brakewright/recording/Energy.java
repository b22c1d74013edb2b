package brakewright.recording;

import java.util.OptionalDouble;

/**
 * What flowed out of the pack and back into it, where a current was recorded.
 *
 * @param seconds over which there is a current [s]
 * @param outAh out of the pack [Ah]
 * @param backAh back into it [Ah]
 * @param outWh likewise [Wh]; empty where there is no voltage
 * @param backWh likewise [Wh]; empty where there is no voltage
 * @param perKilometre net, over the distance that was ridden meanwhile [Wh/km]; empty where there
 *     is no voltage or nothing was ridden
 * @param idlePower while it stood for 3 s and more [W]; empty where it never did, or there is no
 *     voltage
 * @param wholeChargeAh net charge over the share of the charge that it used, within pieces [Ah];
 *     empty where no charge was recorded, or less than 1 % of it used
 */
public record Energy(
        double seconds,
        double outAh,
        double backAh,
        OptionalDouble outWh,
        OptionalDouble backWh,
        OptionalDouble perKilometre,
        OptionalDouble idlePower,
        OptionalDouble wholeChargeAh) {

    private static final double HOUR = 3600.0;

    /** Assumption: our own choice; less is hardly more than the last digit of what is shown. */
    private static final double LEAST_CHARGE = 0.01;

    /** Assumption: our own choice; shorter stands are full of starting and stopping [s]. */
    private static final double LEAST_STAND = 3.0;

    static Energy of(Speeds.Settled settled) {
        Recording recording = settled.recording();
        Integral charge =
                Integral.of(recording, (piece, row) -> piece.value(Quantity.PACK_CURRENT, row));
        Integral energy = Integral.of(recording, Energy::power);
        boolean hasPower = energy.seconds() > 0.0;
        return new Energy(
                charge.seconds(),
                charge.above() / HOUR,
                charge.below() / HOUR,
                hasPower ? OptionalDouble.of(energy.above() / HOUR) : OptionalDouble.empty(),
                hasPower ? OptionalDouble.of(energy.below() / HOUR) : OptionalDouble.empty(),
                perKilometre(settled),
                idlePower(settled),
                wholeCharge(recording));
    }

    /**
     * Returns what came back of what went out.
     *
     * @return the share of the energy, or of the charge where there is no voltage [1]; 0 where
     *     nothing went out
     */
    public double returned() {
        double out = outWh.orElse(outAh);
        return out > 0.0 ? backWh.orElse(backAh) / out : 0.0;
    }

    /**
     * Returns what the ride took.
     *
     * @return out less back [Wh]; empty where there is no voltage
     */
    public OptionalDouble netWh() {
        return outWh.isPresent()
                ? OptionalDouble.of(outWh.getAsDouble() - backWh.orElse(0.0))
                : OptionalDouble.empty();
    }

    /**
     * Returns the charge that the ride took.
     *
     * @return out less back [Ah]
     */
    public double netAh() {
        return outAh - backAh;
    }

    private static double power(Piece piece, int row) {
        return piece.value(Quantity.PACK_VOLTAGE, row) * piece.value(Quantity.PACK_CURRENT, row);
    }

    /** Only rows that have both count on either side of the fraction. */
    private static OptionalDouble perKilometre(Speeds.Settled settled) {
        Quantity speed = settled.quantity();
        double way =
                Integral.of(
                                settled.recording(),
                                (piece, row) ->
                                        Double.isNaN(power(piece, row))
                                                ? Double.NaN
                                                : Math.abs(piece.value(speed, row)))
                        .above();
        double joules =
                Integral.of(
                                settled.recording(),
                                (piece, row) ->
                                        Double.isNaN(piece.value(speed, row))
                                                ? Double.NaN
                                                : power(piece, row))
                        .net();
        return way > 0.0
                ? OptionalDouble.of(joules / HOUR / (way / 1000.0))
                : OptionalDouble.empty();
    }

    private static OptionalDouble idlePower(Speeds.Settled settled) {
        Recording recording = settled.recording();
        double joules = 0.0;
        double seconds = 0.0;
        for (Piece piece : recording.pieces()) {
            int from = 0;
            for (int row = 0; row <= piece.rows(); row++) {
                boolean isStanding =
                        row < piece.rows()
                                && Math.abs(piece.value(settled.quantity(), row))
                                        < Joining.STANDING;
                if (isStanding) {
                    continue;
                }
                if (row > from && piece.time(row - 1) - piece.time(from) >= LEAST_STAND) {
                    Integral stand =
                            Integral.of(piece, recording.longestStep(), Energy::power, from, row);
                    joules += stand.net();
                    seconds += stand.seconds();
                }
                from = row + 1;
            }
        }
        return seconds > 0.0 ? OptionalDouble.of(joules / seconds) : OptionalDouble.empty();
    }

    private static OptionalDouble wholeCharge(Recording recording) {
        double ampereSeconds = 0.0;
        double used = 0.0;
        for (Piece piece : recording.pieces()) {
            int first = -1;
            int last = -1;
            for (int row = 0; row < piece.rows(); row++) {
                boolean hasBoth =
                        !Double.isNaN(
                                piece.value(Quantity.CHARGE, row)
                                        + piece.value(Quantity.PACK_CURRENT, row));
                first = hasBoth && first < 0 ? row : first;
                last = hasBoth ? row : last;
            }
            if (last > first) {
                used += piece.value(Quantity.CHARGE, first) - piece.value(Quantity.CHARGE, last);
                ampereSeconds +=
                        Integral.of(
                                        piece,
                                        recording.longestStep(),
                                        (its, row) -> its.value(Quantity.PACK_CURRENT, row),
                                        first,
                                        last + 1)
                                .net();
            }
        }
        return used >= LEAST_CHARGE
                ? OptionalDouble.of(ampereSeconds / HOUR / used)
                : OptionalDouble.empty();
    }
}
