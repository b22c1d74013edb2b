package brakewright.replay;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.PackState;
import brakewright.powertrain.TopSpeed;
import brakewright.recording.HardChange;
import brakewright.recording.Moment;
import brakewright.recording.Quantity;
import brakewright.recording.Ride;
import brakewright.recording.Stretch;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Drives a vehicle as a recording went, stretch by stretch, and adds up what both say.
 *
 * <p>What was not recorded all the time counts on neither side. Behind a gap the packs have rested.
 */
final class Retrace {

    /** Assumption: our own choice; less is the scatter of a recorded speed [m/s²]. */
    private static final double LACKING = 0.1;

    private static final int PARTS = 32;

    private final Build build;
    private final Ride ride;
    private final Operation operation;
    private final BatteryModel battery;
    private final PackUnderway packs;
    private final Motion motion;
    private final Figures measured = new Figures();
    private final Figures predicted = new Figures();
    private final List<Traced> course = new ArrayList<>();
    private final double[] powers;
    private final boolean hasDrawn;
    private final boolean hasCharge;
    private Underway now;
    private Forces forces;
    private double slope;
    private double seconds;
    private double pullTooWeak;
    private double brakesTooWeak;
    private double metresDrawn;
    private double metresCharged;
    private double drawnSeconds;
    private double currentSquares;
    private double voltageSquares;

    Retrace(Build build, Ride ride, List<Stretch> stretches) {
        this.build = build;
        this.ride = ride;
        this.operation = Operation.of(build, Limits.of(build));
        this.battery = new BatteryModel(build.battery());
        this.packs = new PackUnderway(build);
        this.motion = new Motion(build, packs);
        this.forces = new Forces(build, operation, 0.0);
        this.powers = new double[stretches.size()];
        this.hasDrawn = stretches.stream().anyMatch(each -> each.drawn().isPresent());
        this.hasCharge = stretches.stream().anyMatch(each -> !Double.isNaN(each.charge()));
        this.now =
                Underway.rested(
                        build.use().chargeFrom(),
                        stretches.stream()
                                .mapToDouble(Stretch::cellsC)
                                .filter(cells -> !Double.isNaN(cells))
                                .findFirst()
                                .orElse(build.battery().temperatureC()),
                        build.use().climate().ambientC());
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            if (!stretch.follows()) {
                begin(stretches, i);
            }
            double after =
                    i + 1 < stretches.size() && stretches.get(i + 1).follows()
                            ? stretches.get(i + 1).charge()
                            : Double.NaN;
            powers[i] = ride(stretch, after);
        }
        moments();
        rates();
    }

    /** Takes the first charge that is known of what follows without a gap; else it goes on. */
    private void begin(List<Stretch> stretches, int first) {
        double charge = now.charge();
        for (int i = first;
                i < stretches.size() && (i == first || stretches.get(i).follows());
                i++) {
            if (!Double.isNaN(stretches.get(i).charge())) {
                charge = Math.max(0.0, Math.min(1.0, stretches.get(i).charge()));
                break;
            }
        }
        now = state(0.0, charge, 0.0, 0.0);
    }

    private Underway state(double speed, double charge, double fastSag, double slowSag) {
        return new Underway(
                now.distance(),
                now.time(),
                speed,
                charge,
                fastSag,
                slowSag,
                now.cellsC(),
                now.windingC(),
                now.caseC());
    }

    /** Returns the power at the terminals; NaN where it could not have ridden so. */
    private double ride(Stretch stretch, double chargeAfter) {
        if (stretch.slope() != slope) {
            slope = stretch.slope();
            forces = new Forces(build, operation, slope);
        }
        Underway from = state(stretch.from(), now.charge(), now.fastSag(), now.slowSag());
        Step step = motion.told(from, stretch.seconds(), stretch.length(), stretch.to(), forces);
        boolean isLacking = isLacking(from, stretch, step);
        if (!Double.isFinite(step.flow().packCurrent())) {
            return Double.NaN;
        }
        now = step.end();
        seconds += stretch.seconds();
        if (stretch.drawn().isPresent()) {
            metresDrawn += stretch.length();
            drawn(stretch.drawn().get(), step);
            course.add(
                    new Traced(
                            seconds,
                            stretch.follows(),
                            stretch.drawn().get().current(),
                            step.flow().packCurrent(),
                            stretch.drawn().get().voltage(),
                            step.flow().packVoltage()));
        } else if (!hasDrawn) {
            metresDrawn += stretch.length();
            predicted(step);
        }
        if (!hasCharge || !Double.isNaN(stretch.charge() - chargeAfter)) {
            metresCharged += stretch.length();
            predicted.add(Figure.CHARGE_USED, from.charge() - now.charge());
            if (hasCharge) {
                measured.add(Figure.CHARGE_USED, stretch.charge() - chargeAfter);
            }
        }
        if (packs.isHeatKnown()) {
            predicted.most(Figure.WARMEST_CELLS, now.cellsC());
            if (!Double.isNaN(stretch.cellsC())) {
                measured.most(Figure.WARMEST_CELLS, stretch.cellsC());
            }
        }
        boolean isTold = !isLacking && step.flow().spent().friction() == 0.0;
        return isTold ? step.flow().terminals() : Double.NaN;
    }

    private boolean isLacking(Underway from, Stretch stretch, Step step) {
        if (stretch.length() == 0.0) {
            return false;
        }
        double wanted = motion.wanted(from, stretch.length(), step.speed(), stretch.to(), forces);
        double lacks = wanted - step.flow().force();
        if (!Double.isFinite(step.flow().packCurrent()) || lacks > LACKING * build.inertia()) {
            pullTooWeak += stretch.seconds();
            return true;
        }
        if (lacks < -LACKING * build.inertia()) {
            brakesTooWeak += stretch.seconds();
            return true;
        }
        return step.flow().isFull();
    }

    private void drawn(Stretch.Drawn drawn, Step step) {
        predicted(step);
        measured.add(Figure.ENERGY_OUT, drawn.outJoules());
        measured.add(Figure.ENERGY_BACK, drawn.backJoules());
        measured.add(Figure.CHARGE_OUT, drawn.outCoulombs());
        measured.add(Figure.CHARGE_BACK, drawn.backCoulombs());
        measured.most(Figure.CURRENT_OUT, Math.max(0.0, drawn.current()));
        measured.most(Figure.CURRENT_BACK, Math.max(0.0, -drawn.current()));
        measured.least(Figure.LOWEST_VOLTAGE, drawn.voltage());
        double current = step.flow().packCurrent() - drawn.current();
        double voltage = step.flow().packVoltage() - drawn.voltage();
        drawnSeconds += step.seconds();
        currentSquares += current * current * step.seconds();
        voltageSquares += voltage * voltage * step.seconds();
    }

    private void predicted(Step step) {
        RideTotals totals = RideTotals.NOTHING.plus(step);
        double current = step.flow().packCurrent();
        predicted.add(Figure.ENERGY_OUT, totals.drawn());
        predicted.add(Figure.ENERGY_BACK, totals.returned());
        predicted.add(Figure.CHARGE_OUT, totals.chargeOut());
        predicted.add(Figure.CHARGE_BACK, totals.chargeBack());
        predicted.most(Figure.CURRENT_OUT, Math.max(0.0, current));
        predicted.most(Figure.CURRENT_BACK, Math.max(0.0, -current));
        predicted.least(Figure.LOWEST_VOLTAGE, step.flow().packVoltage());
    }

    /** What was measured and predicted, stretch by stretch where it was recorded. */
    List<Traced> course() {
        return List.copyOf(course);
    }

    private void rates() {
        for (Figures each : List.of(measured, predicted)) {
            if (metresDrawn > 0.0 && each.has(Figure.ENERGY_OUT)) {
                each.put(
                        Figure.CONSUMPTION,
                        (each.orNothing(Figure.ENERGY_OUT) - each.orNothing(Figure.ENERGY_BACK))
                                / metresDrawn);
            }
            double used = each.orNothing(Figure.CHARGE_USED);
            if (used > 0.0) {
                double inUse = build.use().chargeFrom() - build.use().chargeTo();
                each.put(Figure.RANGE, metresCharged * inUse / used);
            }
        }
    }

    private void moments() {
        double cap = build.settings().speedCap().orElse(Double.POSITIVE_INFINITY);
        ride.pace()
                .held()
                .ifPresent(
                        held -> {
                            measured.put(Figure.TOP_SPEED, held.value());
                            predicted.put(Figure.TOP_SPEED, Math.min(cap, topSpeed(charge(held))));
                        });
        ride.stops().stream()
                .max((one, other) -> Double.compare(one.mean(), other.mean()))
                .ifPresent(
                        stop -> {
                            measured.put(Figure.HARDEST_STOP, stop.mean());
                            predicted.put(Figure.HARDEST_STOP, deceleration(stop));
                        });
    }

    private double charge(Moment moment) {
        return Math.max(0.0, Math.min(1.0, moment.charge().orElse(build.use().chargeFrom())));
    }

    private double topSpeed(double charge) {
        return TopSpeed.find(
                        operation.drive(),
                        RoadLoad.of(build),
                        0.0,
                        build.use().riding().headwind(),
                        PackState.of(battery, charge, build.battery().temperatureC()))
                .speed();
    }

    /** The change of speed over the time that it takes with all brakes in full. */
    private double deceleration(HardChange stop) {
        Forces level = new Forces(build, operation, 0.0);
        PackState pack =
                PackState.of(battery.into(), charge(stop.begin()), build.battery().temperatureC());
        double part = (stop.begin().value() - stop.to()) / PARTS;
        double time = 0.0;
        for (int i = 0; i < PARTS; i++) {
            time += part / level.deceleration(stop.to() + (i + 0.5) * part, pack);
        }
        return PARTS * part / time;
    }

    /** What was measured; empty where it was not. */
    OptionalDouble measured(Figure figure) {
        return measured.of(figure);
    }

    /** What the model says; empty where it says nothing. */
    OptionalDouble predicted(Figure figure) {
        return predicted.of(figure);
    }

    double[] powers() {
        return powers.clone();
    }

    double seconds() {
        return seconds;
    }

    double pullTooWeak() {
        return pullTooWeak;
    }

    double brakesTooWeak() {
        return brakesTooWeak;
    }

    OptionalDouble currentOff() {
        return rootOfMean(currentSquares);
    }

    OptionalDouble voltageOff() {
        return rootOfMean(voltageSquares);
    }

    private OptionalDouble rootOfMean(double squares) {
        return drawnSeconds > 0.0
                ? OptionalDouble.of(Math.sqrt(squares / drawnSeconds))
                : OptionalDouble.empty();
    }

    boolean isHeightKnown() {
        return ride.recording().has(Quantity.ALTITUDE);
    }

    boolean isChargeKnown() {
        return hasCharge;
    }
}
