package brakewright.recording;

import brakewright.spec.Require;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a ride was, from its recording alone.
 *
 * @param recording with the speed that was settled on
 * @param speed which of its quantities that is
 * @param ways how far it went
 * @param satellites how well they were received; empty where nothing is from them
 * @param pace how fast
 * @param energy what that took; empty where no current was recorded
 * @param stops the hard ones, in order
 * @param pulls the hard ones, in order
 * @param extremes the highest and lowest, as far as they were recorded
 * @param bands how the top speed fell with the charge, from full to empty
 * @param untold what the recording cannot tell
 * @param repairs what was not taken as it stood
 */
public record Ride(
        Recording recording,
        Quantity speed,
        Ways ways,
        Optional<Satellites> satellites,
        Pace pace,
        Optional<Energy> energy,
        List<HardChange> stops,
        List<HardChange> pulls,
        Map<Extreme, Moment> extremes,
        List<ChargeBand> bands,
        List<Untold> untold,
        List<Repair> repairs) {

    /** Copies the lists. */
    public Ride {
        stops = List.copyOf(stops);
        pulls = List.copyOf(pulls);
        extremes = Collections.unmodifiableMap(new EnumMap<>(extremes));
        bands = List.copyOf(bands);
        untold = List.copyOf(untold);
        repairs = List.copyOf(repairs);
    }

    /**
     * Tells what a ride was.
     *
     * @param recording its current positive out of the pack
     * @param hold how long a speed must last to count as held [s], positive
     * @param unrecorded what was ridden on the same charge without being recorded [m]
     * @param repairs what was repaired so far; a speed that contradicts the positions is added
     * @return the ride; empty where there is no speed, no position and no distance
     * @throws IllegalArgumentException if a number is out of its range
     */
    public static Optional<Ride> of(
            Recording recording, double hold, double unrecorded, Repairs repairs) {
        Require.positive("time that a speed is held", hold, Unit.SECOND);
        Require.notNegative("distance that was not recorded", unrecorded, Unit.METRE);
        Optional<Satellites> satellites = Satellites.of(recording);
        return Speeds.of(recording, repairs)
                .map(settled -> told(settled, satellites, hold, unrecorded, repairs));
    }

    private static Ride told(
            Speeds.Settled settled,
            Optional<Satellites> satellites,
            double hold,
            double unrecorded,
            Repairs repairs) {
        Recording recording = settled.recording();
        Quantity speed = settled.quantity();
        Pace pace = Pace.of(settled, hold);
        return new Ride(
                recording,
                speed,
                Ways.of(settled, unrecorded),
                satellites,
                pace,
                recording.has(Quantity.PACK_CURRENT)
                        ? Optional.of(Energy.of(settled))
                        : Optional.empty(),
                HardChange.all(recording, speed, -1),
                HardChange.all(recording, speed, 1),
                extremes(recording, speed),
                ChargeBand.all(settled, hold),
                untold(settled, pace),
                repairs.all());
    }

    private static List<Untold> untold(Speeds.Settled settled, Pace pace) {
        Recording recording = settled.recording();
        List<Untold> untold = new ArrayList<>();
        if (!recording.has(Quantity.PACK_CURRENT)) {
            untold.add(Untold.ENERGY);
        } else if (!recording.has(Quantity.PACK_VOLTAGE)) {
            untold.add(Untold.POWER);
        }
        if (!recording.has(Quantity.LATITUDE)) {
            untold.add(Untold.WHEEL_CHECK);
        }
        if (!recording.has(Quantity.CHARGE)) {
            untold.add(Untold.CHARGE);
        }
        if (!HardChange.canBeTold(recording, settled.quantity())) {
            untold.add(Untold.HARD_CHANGES);
        }
        if (pace.held().isEmpty()) {
            untold.add(Untold.HELD_SPEED);
        }
        return untold;
    }

    private static Map<Extreme, Moment> extremes(Recording recording, Quantity speed) {
        Map<Extreme, Moment> all = new EnumMap<>(Extreme.class);
        for (Piece piece : recording.pieces()) {
            for (int row = 0; row < piece.rows(); row++) {
                double current = piece.value(Quantity.PACK_CURRENT, row);
                double voltage = piece.value(Quantity.PACK_VOLTAGE, row);
                double motor = Math.abs(piece.value(Quantity.MOTOR_CURRENT, row));
                Found found = new Found(all, piece, row, speed);
                found.highest(Extreme.HIGHEST_SPEED, Math.abs(piece.value(speed, row)));
                found.highest(Extreme.HIGHEST_VOLTAGE, voltage);
                found.lowest(Extreme.LOWEST_VOLTAGE, voltage);
                found.positive(Extreme.HIGHEST_CURRENT_OUT, current);
                found.positive(Extreme.HIGHEST_CURRENT_BACK, -current);
                found.positive(Extreme.HIGHEST_MOTOR_CURRENT, motor);
                found.highest(Extreme.WARMEST_PACK, piece.value(Quantity.PACK_TEMPERATURE, row));
                found.highest(Extreme.WARMEST_MOTOR, piece.value(Quantity.MOTOR_TEMPERATURE, row));
            }
        }
        return all;
    }

    private record Found(Map<Extreme, Moment> all, Piece piece, int row, Quantity speed) {

        void highest(Extreme extreme, double value) {
            Moment known = all.get(extreme);
            if (known == null ? !Double.isNaN(value) : value > known.value()) {
                all.put(extreme, Moment.of(value, piece, row, speed));
            }
        }

        void lowest(Extreme extreme, double value) {
            Moment known = all.get(extreme);
            if (known == null ? !Double.isNaN(value) : value < known.value()) {
                all.put(extreme, Moment.of(value, piece, row, speed));
            }
        }

        void positive(Extreme extreme, double value) {
            if (value > 0.0) {
                highest(extreme, value);
            }
        }
    }
}
