package brakewright.operation;

import brakewright.battery.AtCharge;
import brakewright.battery.BatteryModel;
import brakewright.charge.ChargeSearch;
import brakewright.limit.Severity;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Protection;
import brakewright.spec.Taper;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Where one way of drawing meets each event, as the charge falls. */
final class SagCourse {

    private final BatteryModel model;
    private final ElectricDrive drive;
    private final double topSpeed;
    private final Sag.Draw drawn;
    private final double beside;
    private final ChargeSearch search;

    /** The draw alone. */
    SagCourse(Build build, BatteryModel model, Operation operation, Sag.Draw drawn) {
        this(build, model, operation, drawn, 0.0);
    }

    /** The draw, and a power [W] that is drawn beside it as long as it lasts. */
    SagCourse(Build build, BatteryModel model, Operation operation, Sag.Draw drawn, double beside) {
        this.model = model;
        ElectricDrive set = operation.drive();
        this.drive =
                new ElectricDrive(
                        set.powertrain(), set.motorCurrent(), drawn.current(), set.taper());
        this.topSpeed = operation.topSpeed();
        this.drawn = drawn;
        this.beside = beside;
        ChargeSearch charges = ChargeSearch.over(build.use(), model);
        this.search = charges.with(lastOfTaper(charges));
    }

    /** Just before the taper leaves nothing: between the points that are looked at anyway. */
    private OptionalDouble lastOfTaper(ChargeSearch charges) {
        if (drive.taper().isEmpty()) {
            return OptionalDouble.empty();
        }
        double ends = drive.taper().get().ends();
        return charges.firstExcess(charge -> ends - pack(charge).voltage(), false);
    }

    Sag.Case all() {
        Map<Sag.Event, OptionalDouble> charges = new EnumMap<>(Sag.Event.class);
        for (Sag.Event event : Sag.Event.values()) {
            charges.put(event, charge(event));
        }
        return new Sag.Case(drawn, charges);
    }

    double[] charges() {
        return search.charges();
    }

    OptionalDouble charge(Sag.Event event) {
        Optional<Taper> taper = drive.taper();
        return switch (event) {
            case TAPER_BEGINS ->
                    taper.isEmpty()
                            ? OptionalDouble.empty()
                            : first(charge -> taper.get().begins() - fullyLoaded(charge));
            case TAPER_ENDS ->
                    taper.isEmpty()
                            ? OptionalDouble.empty()
                            : first(charge -> taper.get().ends() - pack(charge).voltage());
            case CELL_FLOOR -> first(this::belowFloor);
            case PROTECTION_TRIP -> first(this::tripSeverity);
        };
    }

    private OptionalDouble first(DoubleUnaryOperator excess) {
        return search.firstExcess(excess, false);
    }

    private PackState pack(double charge) {
        return drawn.pack(model, charge);
    }

    private double fullyLoaded(double charge) {
        return pack(charge).terminalVoltage(-drawn.current());
    }

    private double belowFloor(double charge) {
        double worst = Double.NEGATIVE_INFINITY;
        for (int place = 0; place < model.packs().size(); place++) {
            double floor = model.packs().get(place).pack().cell().voltageMin();
            worst = Math.max(worst, floor - cellVoltage(place, charge, drawn.seconds()));
        }
        return worst;
    }

    /** The cells in danger of the trip: by then it has waited as long as it is told to. */
    HardPull.Loaded nearestToTrip(AtCharge there) {
        HardPull.Loaded worst = new HardPull.Loaded(0.0, Double.POSITIVE_INFINITY);
        double atLast = flowing(there, drawn.seconds());
        if (atLast == 0.0) {
            return worst;
        }
        for (int place = 0; place < model.packs().size(); place++) {
            Protection protection = model.packs().get(place).pack().protection();
            OptionalDouble trip = protection.cellUndervoltageTrip();
            double passedBy = drawn.seconds() - protection.undervoltageTripDelay().orElse(0.0);
            if (trip.isPresent() && passedBy >= 0.0) {
                double all = passedBy == drawn.seconds() ? atLast : flowing(there, passedBy);
                double cell = Math.max(0.0, cellVoltage(place, all, there, passedBy));
                if (Severity.of(trip.getAsDouble(), cell)
                        > Severity.of(worst.trip(), worst.cell())) {
                    worst = new HardPull.Loaded(trip.getAsDouble(), cell);
                }
            }
        }
        return worst;
    }

    private double tripSeverity(double charge) {
        HardPull.Loaded worst = nearestToTrip(model.at(charge));
        return Severity.of(worst.trip(), worst.cell());
    }

    /**
     * What flows at most after a time [s], as far as the draw and the taper let the motors [A]; no
     * more than at the greatest power, and nothing where the motors draw nothing.
     */
    double flowing(double charge, double seconds) {
        return flowing(model.at(charge), seconds);
    }

    private double flowing(AtCharge there, double seconds) {
        PackState pack = PackState.of(there, drawn.cellsC(), seconds);
        double motors = drive.greatestDraw(topSpeed, pack);
        if (beside == 0.0 || motors == 0.0 || pack.isBeyondGreatestPower(motors)) {
            return motors;
        }
        double all = -pack.currentInto(-(pack.powerDrawnBy(motors) + beside));
        return Double.isInfinite(all) ? pack.voltage() / (2.0 * pack.resistance()) : all;
    }

    /** Of that, out of one pack [A]. */
    double flowing(int place, double charge, double seconds) {
        AtCharge there = model.at(charge);
        return flowing(there, seconds) * there.share(place, drawn.cellsC());
    }

    /** The emptiest group of a pack while that flows [V]. */
    double cellVoltage(int place, double charge, double seconds) {
        AtCharge there = model.at(charge);
        return cellVoltage(place, flowing(there, seconds), there, seconds);
    }

    private double cellVoltage(int place, double all, AtCharge there, double seconds) {
        return there.lowestCellVoltage(
                place, all * there.share(place, drawn.cellsC()), drawn.cellsC(), seconds);
    }
}
