package brakewright.fitting;

import brakewright.numeric.Student;
import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Ride;
import brakewright.recording.Speeds;
import brakewright.recording.Stretch;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Values that are the mean of several events, with the standard error of that mean times {@link
 * Student} as their doubt.
 */
final class Events {

    /** Assumption: our own choice; fewer say nothing of how far they differ from each other. */
    static final int LEAST = 3;

    /** Assumption: our own choice; shorter stands tell little [s]. */
    private static final double LEAST_STAND = 3.0;

    /** Assumption: our own choice; less is the scatter of a speed that is none [m/s]. */
    private static final double STANDING = 0.1;

    /**
     * Assumption: our own choice; over less the scatter of positions counts too much. By the wheels
     * a quarter more than {@link Speeds} asks for by positions, as the two may differ so far [m].
     */
    private static final double LEAST_WAY = 250.0;

    /** Assumption: our own choice; a wheel may be measured better by hand [1]. */
    private static final double MOST_DOUBT = 0.05;

    /** Assumption: our own choice; a braking that comes so near to the highest is held there. */
    private static final double NEAR = 0.95;

    private Events() {}

    static Fit idlePower(List<Stretch> stretches) {
        List<Double> powers = new ArrayList<>();
        List<Stretch> stand = new ArrayList<>();
        for (Stretch each : stretches) {
            boolean stands = each.length() <= STANDING * each.seconds() && each.drawn().isPresent();
            if (!stands || !each.follows()) {
                addStand(stand, powers);
                stand.clear();
            }
            if (stands) {
                stand.add(each);
            }
        }
        addStand(stand, powers);
        return mean(
                Fitted.IDLE_POWER,
                powers,
                "it stood for 3 s and a second before and behind fewer than three times");
    }

    /** Of a stand the first and the last stretch are still stopping and starting. */
    private static void addStand(List<Stretch> stand, List<Double> powers) {
        double joules = 0.0;
        double seconds = 0.0;
        for (int i = 1; i < stand.size() - 1; i++) {
            Stretch.Drawn drawn = stand.get(i).drawn().orElseThrow();
            joules += drawn.outJoules() - drawn.backJoules();
            seconds += stand.get(i).seconds();
        }
        if (seconds >= LEAST_STAND) {
            powers.add(joules / seconds);
        }
    }

    static Fit wheelDiameter(Build build, Ride ride) {
        List<Double> diameters = new ArrayList<>();
        if (ride.speed() == Quantity.WHEEL_SPEED && ride.ways().positionsOverWheels().isPresent()) {
            for (Piece piece : ride.recording().pieces()) {
                int begin = 0;
                double way = 0.0;
                for (int row = 1; row < piece.rows(); row++) {
                    double speed = Math.abs(piece.value(Quantity.WHEEL_SPEED, row));
                    double step = piece.time(row) - piece.time(row - 1);
                    way += Double.isNaN(speed) ? 0.0 : speed * step;
                    if (way >= LEAST_WAY) {
                        OptionalDouble ratio =
                                Speeds.positionsOver(
                                        List.of(piece.part(begin, row + 1)),
                                        ride.recording().longestStep(),
                                        Quantity.WHEEL_SPEED);
                        ratio.ifPresent(
                                found -> diameters.add(found * build.vehicle().wheelDiameter()));
                        begin = row;
                        way = 0.0;
                    }
                }
            }
        }
        Fit mean =
                mean(
                        Fitted.WHEEL_DIAMETER,
                        diameters,
                        "positions beside a wheel speed do not reach over three times 250 m");
        return mean instanceof Fit.Found found && found.doubt() > MOST_DOUBT * found.value()
                ? new Fit.Refused(
                        Fitted.WHEEL_DIAMETER,
                        "it may be off by more than a twentieth, which a tape does better")
                : mean;
    }

    static Fit regenPlateau(List<Stretch> stretches) {
        List<Double> highest = new ArrayList<>();
        double own = 0.0;
        for (Stretch each : stretches) {
            double back = each.drawn().map(drawn -> -drawn.current()).orElse(0.0);
            if (back <= 0.0 || !each.follows()) {
                if (own > 0.0) {
                    highest.add(own);
                }
                own = 0.0;
            }
            own = Math.max(own, back);
        }
        if (own > 0.0) {
            highest.add(own);
        }
        double top = highest.stream().mapToDouble(Double::doubleValue).max().orElse(0.0);
        return mean(
                Fitted.REGEN_PLATEAU,
                highest.stream().filter(each -> each >= NEAR * top).toList(),
                "fewer than three brakings reach one and the same current for a second");
    }

    static Fit mean(Fitted what, List<Double> events, String tooFew) {
        int count = events.size();
        if (count < LEAST) {
            return new Fit.Refused(what, tooFew);
        }
        double mean = events.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double squares = events.stream().mapToDouble(each -> (each - mean) * (each - mean)).sum();
        return mean > 0.0
                ? new Fit.Found(
                        what,
                        mean,
                        Student.factor(count - 1) * Math.sqrt(squares / (count - 1.0) / count),
                        count)
                : new Fit.Refused(what, "its mean is not above zero");
    }
}
