package brakewright.fitting;

import brakewright.limit.Limits;
import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.Powertrain;
import brakewright.recording.Stretch;
import brakewright.spec.Build;
import brakewright.spec.Taper;
import java.util.ArrayList;
import java.util.List;

/**
 * The motors' speed per volt from even riding at which neither the cap nor a current that is set
 * holds the speed down, so that the voltage does: the Kv with which the motors need just the
 * voltage that was there, at the current that the drawn power makes.
 *
 * <p>Nobody records how far the throttle was open. Where it was not, the voltage asks for less Kv
 * than the motors have; so the highest count, if several are alike, and if the speed follows the
 * voltage. Windings are taken to be as warm as the air.
 */
final class SpeedConstantFit {

    /** Assumption: our own choice; while the speed changes faster, it is not held [m/s²]. */
    private static final double EVEN = 0.1;

    /** Assumption: our own choice; shorter it may be a moment between two pushes [s]. */
    private static final double LEAST = 3.0;

    /** Assumption: our own choice; a longer one is told as several [s]. */
    private static final double MOST = 20.0;

    /** Assumption: our own choice; nearer to it, a limit that is set may hold the speed [1]. */
    private static final double FREE = 0.9;

    /** Assumption: our own choice; nearer to a cap, it may hold the speed [1]. */
    private static final double BELOW_CAP = 0.97;

    /** Assumption: our own choice; with so much less than the highest the throttle was open. */
    private static final double NEAR = 0.96;

    /**
     * Assumption: our own choice; with less between the lowest voltage and the highest nothing
     * shows that the speed follows [1].
     */
    private static final double VOLTAGES = 0.05;

    /** Assumption: our own choice; as the speed follows a voltage, the first power [1]. */
    private static final double LEAST_POWER = 0.6;

    private static final double MOST_POWER = 1.4;

    /**
     * Assumption: our own choice; windings 60 K warmer than taken move Kv by less, as the copper
     * takes some hundredths of the voltage [1].
     */
    private static final double OWN_ERROR = 0.01;

    private static final double SEARCHED = 8.0;

    private final Build build;
    private final ElectricDrive drive;
    private final List<Even> found = new ArrayList<>();

    /** An even ride: the Kv that it asks for, and at what voltage and speed. */
    private record Even(double kv, double voltage, double speed) {}

    private SpeedConstantFit(Build build) {
        this.build = build;
        this.drive = Operation.of(build, Limits.of(build)).drive();
    }

    static Fit of(Build build, List<Stretch> stretches) {
        if (stretches.stream().noneMatch(each -> each.drawn().isPresent())) {
            return refused("voltage and current were not recorded together");
        }
        SpeedConstantFit fit = new SpeedConstantFit(build);
        fit.gather(stretches);
        return fit.told();
    }

    private static Fit refused(String reason) {
        return new Fit.Refused(Fitted.SPEED_CONSTANT, reason);
    }

    private Fit told() {
        double top = found.stream().mapToDouble(Even::kv).max().orElse(0.0);
        List<Even> open = found.stream().filter(each -> each.kv() >= NEAR * top).toList();
        double low = open.stream().mapToDouble(Even::voltage).min().orElse(0.0);
        double high = open.stream().mapToDouble(Even::voltage).max().orElse(0.0);
        if (open.size() < Events.LEAST || high < (1.0 + VOLTAGES) * low) {
            return refused(
                    "fewer than three even stretches, at voltages a twentieth apart, at which"
                            + " neither cap nor current holds the speed down");
        }
        double power = power(open);
        if (!(power >= LEAST_POWER && power <= MOST_POWER)) {
            return refused("the highest speeds do not follow the voltage");
        }
        Fit mean =
                Events.mean(Fitted.SPEED_CONSTANT, open.stream().map(Even::kv).toList(), "too few");
        return mean instanceof Fit.Found of
                ? new Fit.Found(
                        of.what(), of.value(), of.doubt() + OWN_ERROR * of.value(), of.events())
                : mean;
    }

    /** With which power of the voltage the speed goes: the slope of their logarithms. */
    private static double power(List<Even> open) {
        double middle = open.stream().mapToDouble(each -> Math.log(each.voltage())).sum();
        middle /= open.size();
        double products = 0.0;
        double squares = 0.0;
        for (Even each : open) {
            double aside = Math.log(each.voltage()) - middle;
            products += aside * Math.log(each.speed());
            squares += aside * aside;
        }
        return products / squares;
    }

    private void gather(List<Stretch> stretches) {
        List<Stretch> run = new ArrayList<>();
        double seconds = 0.0;
        for (Stretch each : stretches) {
            if (!isEven(each) || !each.follows() || seconds >= MOST) {
                end(run, seconds);
                run.clear();
                seconds = 0.0;
            }
            if (isEven(each)) {
                run.add(each);
                seconds += each.seconds();
            }
        }
        end(run, seconds);
    }

    private static boolean isEven(Stretch stretch) {
        return stretch.drawn().filter(drawn -> drawn.current() > 0.0).isPresent()
                && Math.abs(stretch.to() - stretch.from()) <= EVEN * stretch.seconds();
    }

    private void end(List<Stretch> run, double seconds) {
        if (seconds < LEAST) {
            return;
        }
        double length = 0.0;
        double joules = 0.0;
        double voltage = 0.0;
        double current = 0.0;
        for (Stretch each : run) {
            Stretch.Drawn drawn = each.drawn().orElseThrow();
            length += each.length();
            joules += drawn.outJoules() - drawn.backJoules();
            voltage += drawn.voltage() * each.seconds();
            current += drawn.current() * each.seconds();
        }
        add(
                length / seconds,
                joules / seconds - build.use().riding().idlePower(),
                voltage / seconds,
                current / seconds);
    }

    private void add(double speed, double power, double voltage, double current) {
        double cap = build.settings().speedCap().orElse(Double.POSITIVE_INFINITY);
        boolean isHeld =
                speed > BELOW_CAP * cap
                        || current > FREE * drive.packCurrent()
                        || drive.taper()
                                .map(Taper::begins)
                                .filter(from -> voltage < from)
                                .isPresent();
        double known = build.motor().kvRpmPerVolt();
        if (isHeld || !(power > 0.0) || !(speed > 0.0)) {
            return;
        }
        double least = known / SEARCHED;
        double most = known * SEARCHED;
        if (!(lacking(least, speed, power, voltage) > 0.0)
                || !(lacking(most, speed, power, voltage) < 0.0)) {
            return;
        }
        double kv =
                Root.between(
                        each -> lacking(each, speed, power, voltage), least, most, Accuracy.TOLD);
        if (motorCurrent(kv, speed, power) <= FREE * drive.motorCurrent()) {
            found.add(new Even(kv, voltage, speed));
        }
    }

    private double lacking(double kv, double speed, double power, double voltage) {
        return with(kv).voltageNeed(motorCurrent(kv, speed, power), speed) - voltage;
    }

    private double motorCurrent(double kv, double speed, double power) {
        return with(kv).limitedDriveCurrent(Double.POSITIVE_INFINITY, speed, power);
    }

    private Powertrain with(double kv) {
        return Powertrain.of(build.withMotor(build.motor().withKvRpmPerVolt(kv)));
    }
}
