package brakewright.replay;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.heat.OneBody;
import brakewright.powertrain.PackState;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Relaxation;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The packs while the current changes: what a current takes off the voltage at once, what it takes
 * off within seconds, and what within minutes.
 *
 * <p>{@code V = U(s) − R0·I − η1 − η2} with {@code dη/dt = (R·I − η)/τ}, where R0 is the resistance
 * of the first instant, R0 + R1 that of a pulse and R0 + R1 + R2 that of an endless pull, as {@link
 * PackModel} has them: a current that lasts meets the same resistance as there.
 *
 * <p>Source: equivalent circuit of two resistances with capacitors, e.g. Plett, Battery Management
 * Systems, vol. 1 (2015), chapter 2.
 *
 * <p>Assumption: after 10 s the fast part is there but for {@code e^(−10 s/τ)}, where the pulse
 * resistance has it whole; the slow part, which begins at once here, makes up for about as much.
 * Packs that differ relax with the mean of their times. All the voltage that is lost is heat, at
 * once, though a part of it is stored for the next seconds.
 */
final class PackUnderway {

    private final BatteryModel model;
    private final double coulombs;
    private final double fastTime;
    private final double slowTime;
    private final double trunkResistance;
    private final Optional<OneBody> body;

    /** The last found: most steps of a recording are equally long. */
    private Left left = new Left(0.0, 1.0, 1.0, 1.0, 1.0);

    /**
     * What a time leaves of the sags at its beginning, on its average and at its end [1].
     *
     * @param seconds the time [s]
     */
    private record Left(
            double seconds, double fastMean, double slowMean, double fastEnd, double slowEnd) {}

    /** What a current of one way meets, and what of it comes within seconds and minutes [Ω]. */
    private record Way(PackState met, double fast, double slow) {}

    PackUnderway(Build build) {
        Battery battery = build.battery();
        this.model = new BatteryModel(battery);
        this.coulombs = 3600.0 * model.capacityAh();
        this.fastTime = mean(relaxation -> relaxation.onset().timeConstant());
        this.slowTime = mean(Relaxation::timeConstant);
        this.trunkResistance = battery.trunkResistance();
        this.body = body(build);
    }

    private double mean(ToDoubleFunction<Relaxation> time) {
        return model.packs().stream()
                .mapToDouble(pack -> time.applyAsDouble(pack.pack().cell().relaxation()))
                .average()
                .orElseThrow();
    }

    /** All cells as one body; empty where the heat capacity of some is not known. */
    private Optional<OneBody> body(Build build) {
        double capacity = 0.0;
        double conductance = 0.0;
        for (PackModel each : model.packs()) {
            OptionalDouble ofCell = each.pack().cell().heatCapacity();
            if (ofCell.isEmpty()) {
                return Optional.empty();
            }
            capacity += each.pack().series() * each.pack().parallel() * ofCell.getAsDouble();
            conductance += 1.0 / each.pack().toAir().orElse(Double.POSITIVE_INFINITY);
        }
        return Optional.of(
                new OneBody(
                        capacity,
                        conductance > 0.0
                                ? OptionalDouble.of(1.0 / conductance)
                                : OptionalDouble.empty(),
                        build.use().climate().ambientC()));
    }

    /**
     * What the packs are in a step.
     *
     * @param from the state at its beginning
     * @param current out of the packs, as far as it is known: it moves the charge by a hair [A]
     * @param seconds how long it lasts [s]
     */
    Step during(Underway from, double current, double seconds) {
        return new Step(from, current, seconds);
    }

    /**
     * The mean of a step, seen as a voltage behind a resistance: over a time t a current I adds
     * {@code R·I·(1 − b)} to the mean of a sag, of which the share {@code b = (1 − e^(−t/τ))·τ/t}
     * is still the one at the beginning.
     */
    final class Step {

        private final Underway from;
        private final double seconds;
        private final double charge;
        private final double voltage;
        private final Left left;
        private @Nullable Way out;
        private @Nullable Way into;

        private Step(Underway from, double guess, double seconds) {
            this.from = from;
            this.seconds = seconds;
            this.charge = within(from.charge() - 0.5 * guess * seconds / coulombs);
            this.voltage = model.openCircuitVoltage(charge);
            this.left = left(seconds);
        }

        private Way way(double current) {
            return current >= 0.0 ? wayOut() : wayInto();
        }

        private double at(BatteryModel way, double time) {
            return way.resistance(charge, from.cellsC(), time);
        }

        /** As whoever drives meets it. */
        PackState out() {
            return wayOut().met();
        }

        /** As whoever brakes meets it. */
        PackState into() {
            return wayInto().met();
        }

        private Way wayOut() {
            Way found = out;
            if (found == null) {
                found = along(model);
                out = found;
            }
            return found;
        }

        private Way wayInto() {
            Way found = into;
            if (found == null) {
                found = along(model.into());
                into = found;
            }
            return found;
        }

        private Way along(BatteryModel way) {
            double instant = at(way, 0.0);
            double pulse = at(way, Cell.PULSE);
            double fast = pulse - instant;
            double slow = at(way, Double.POSITIVE_INFINITY) - pulse;
            return new Way(
                    new PackState(
                            charge,
                            from.cellsC(),
                            voltage
                                    - left.fastMean() * from.fastSag()
                                    - left.slowMean() * from.slowSag(),
                            instant
                                    + fast * (1.0 - left.fastMean())
                                    + slow * (1.0 - left.slowMean())),
                    fast,
                    slow);
        }

        /** The current out of the packs for a power at their terminals; infinite for too much. */
        double current(double power) {
            return -(power >= 0.0 ? out() : into()).currentInto(-power);
        }

        /** At the terminals [V]. */
        double voltage(double current) {
            return (current >= 0.0 ? out() : into()).terminalVoltage(-current);
        }

        /** What is lost between the cells and the terminals [W]. */
        double loss(double current) {
            return (voltage - voltage(current)) * current;
        }

        double chargeAfter(double current) {
            return from.charge() - current * seconds / coulombs;
        }

        double fastSagAfter(double current) {
            return after(from.fastSag(), way(current).fast() * current, left.fastEnd());
        }

        double slowSagAfter(double current) {
            return after(from.slowSag(), way(current).slow() * current, left.slowEnd());
        }

        double cellsAfterC(double current) {
            return body.isEmpty()
                    ? from.cellsC()
                    : body.get().after(from.cellsC(), loss(current) - jointLoss(current), seconds);
        }

        private double jointLoss(double current) {
            double resistance = trunkResistance;
            for (int place = 0; place < model.packs().size(); place++) {
                double share = model.share(place, charge, from.cellsC());
                resistance += share * share * model.packs().get(place).pack().jointResistance();
            }
            return current * current * resistance;
        }
    }

    /** A ride that begins full or empty leaves the tabulated charge by a hair. */
    private static double within(double charge) {
        return Math.max(0.0, Math.min(1.0, charge));
    }

    private static double after(double start, double settled, double left) {
        return settled + (start - settled) * left;
    }

    private Left left(double seconds) {
        Left found = left;
        if (found.seconds() != seconds) {
            double fast = seconds / fastTime;
            double slow = seconds / slowTime;
            found = new Left(seconds, mean(fast), mean(slow), Math.exp(-fast), Math.exp(-slow));
            left = found;
        }
        return found;
    }

    /** The mean of {@code e^(−t)} from nothing to so many times. */
    private static double mean(double times) {
        return times == 0.0 ? 1.0 : -Math.expm1(-times) / times;
    }

    /** Whether it is known how cells warm. */
    boolean isHeatKnown() {
        return body.isPresent();
    }

    /** The highest temperature at which all cells may be discharged [°C]. */
    double warmestC() {
        return model.packs().stream()
                .mapToDouble(pack -> pack.pack().cell().discharging().highestC())
                .min()
                .orElseThrow();
    }
}
