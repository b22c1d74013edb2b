package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.limit.Limits;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Taper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * How far the voltage sags while a current is drawn, and what it meets first as the charge falls.
 *
 * <p>The set draw and the recommended one are looked at, with the pack at its own temperature and
 * at its coldest, for a short pulse and for a pull without end. The low-voltage taper as set fades
 * the draw before floor and trip are looked for, and the motors draw no more than they are set to,
 * so what is found is what a rider meets.
 *
 * @param cases what was looked at: the set draw first, a short pulse before the pull without end
 */
public record Sag(List<Case> cases) {

    /** Copies the list. */
    public Sag {
        cases = List.copyOf(cases);
    }

    /** What a falling voltage meets. */
    public enum Event {
        /** The low-voltage taper begins to fade the draw. */
        TAPER_BEGINS("taper-begins"),
        /** The loaded cell is at its maker's lowest voltage. */
        CELL_FLOOR("cell-floor"),
        /** The loaded cell is where the protection disconnects. */
        PROTECTION_TRIP("protection-trip"),
        /** The low-voltage taper leaves nothing. */
        TAPER_ENDS("taper-ends");

        private final String key;

        Event(String key) {
            this.key = key;
        }

        /**
         * Returns the name that worksheets use.
         *
         * @return lower case with hyphens
         */
        public String key() {
            return key;
        }
    }

    /**
     * One way of drawing.
     *
     * @param current out of all packs together [A]
     * @param isSet true for the setting, false for the recommended draw
     * @param cellsC cell temperature [°C]
     * @param seconds how long it lasts [s]; infinite for ever
     */
    public record Draw(double current, boolean isSet, double cellsC, double seconds) {

        /**
         * Returns the packs in this state.
         *
         * @param model of the packs
         * @param charge the charge state [1]
         * @return their state, with the resistance that a draw of this length meets
         */
        public PackState pack(BatteryModel model, double charge) {
            return PackState.of(model, charge, cellsC, seconds);
        }

        /**
         * Returns the voltage of the cells that are lowest, those of the emptiest group of the
         * worst pack, under the whole current, as if no taper held it down; joints are left out.
         *
         * @param model of the packs
         * @param charge the charge state [1]
         * @return the voltage [V]; not positive where the pack cannot give the current
         */
        public double lowestCellVoltage(BatteryModel model, double charge) {
            double lowest = Double.POSITIVE_INFINITY;
            for (int place = 0; place < model.packs().size(); place++) {
                lowest = Math.min(lowest, cellVoltage(model, place, charge));
            }
            return lowest;
        }

        /**
         * Returns whether the cells in the emptiest group of any pack are below the lowest voltage
         * that their maker permits, under the whole current.
         *
         * @param model of the packs
         * @param charge the charge state [1]
         * @return whether one is
         */
        public boolean isBelowFloor(BatteryModel model, double charge) {
            for (int place = 0; place < model.packs().size(); place++) {
                double floor = model.packs().get(place).pack().cell().voltageMin();
                if (Severity.isExceeded(floor, cellVoltage(model, place, charge))) {
                    return true;
                }
            }
            return false;
        }

        private double cellVoltage(BatteryModel model, int place, double charge) {
            double own = current * model.share(place, charge, cellsC);
            return model.packs()
                    .get(place)
                    .lowestCellVoltage(own, model.chargeOf(place, charge), cellsC, seconds);
        }
    }

    /**
     * What a draw meets.
     *
     * @param draw what flows
     * @param charges for every event the charge state at which it is met, within the charge in use
     *     [1]; empty where it is not met
     */
    public record Case(Draw draw, Map<Event, OptionalDouble> charges) {

        /** Copies the map, in the order of the events. */
        public Case {
            charges = Collections.unmodifiableMap(new EnumMap<>(charges));
        }

        /**
         * Returns where an event is met.
         *
         * @param event which
         * @return the charge state [1]; empty where it is not met
         */
        public OptionalDouble charge(Event event) {
            return charges.getOrDefault(event, OptionalDouble.empty());
        }

        /**
         * Returns what is met first as the charge falls.
         *
         * @return the event at the highest charge; empty where nothing is met
         */
        public Optional<Meeting> first() {
            Optional<Meeting> first = Optional.empty();
            for (Event event : Event.values()) {
                OptionalDouble met = charge(event);
                if (met.isPresent()
                        && (first.isEmpty() || met.getAsDouble() > first.get().charge())) {
                    first = Optional.of(new Meeting(event, met.getAsDouble()));
                }
            }
            return first;
        }
    }

    /**
     * An event that is met.
     *
     * @param event which
     * @param charge the charge state [1]
     */
    public record Meeting(Event event, double charge) {}

    /**
     * Looks at the sag of a vehicle's packs.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @return cases and meetings
     */
    public static Sag of(Build build, Limits limits, Operation operation) {
        double own = build.battery().temperatureC();
        double coldest = Arrays.stream(build.cellTemperatures()).min().orElseThrow();
        double recommended = limits.packDischarge().staticPart(own).value();
        List<Draw> draws = new ArrayList<>();
        for (double current : new double[] {operation.drive().packCurrent(), recommended}) {
            boolean isSet = draws.isEmpty();
            if (!isSet && current == operation.drive().packCurrent()) {
                continue;
            }
            for (double cells : own == coldest ? new double[] {own} : new double[] {own, coldest}) {
                draws.add(new Draw(current, isSet, cells, Cell.PULSE));
                draws.add(new Draw(current, isSet, cells, Double.POSITIVE_INFINITY));
            }
        }
        return new Sag(
                draws.stream()
                        .map(each -> new Meetings(build, limits.battery(), operation, each).all())
                        .toList());
    }

    /** A pull at the set draw that lasts as long as the hardest in use. */
    static Draw hardPull(Build build, Operation operation, double cellsC) {
        return new Draw(
                operation.drive().packCurrent(), true, cellsC, build.use().effort().hardPull());
    }

    /** Finds where one case meets each event. */
    static final class Meetings {

        private final BatteryModel model;
        private final ElectricDrive drive;
        private final double topSpeed;
        private final Draw drawn;
        private final ChargeSearch search;

        Meetings(Build build, BatteryModel model, Operation operation, Draw drawn) {
            this.model = model;
            ElectricDrive set = operation.drive();
            this.drive =
                    new ElectricDrive(
                            set.powertrain(), set.motorCurrent(), drawn.current(), set.taper());
            this.topSpeed = operation.topSpeed();
            this.drawn = drawn;
            ChargeSearch charges = new ChargeSearch(build, model);
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

        Case all() {
            Map<Event, OptionalDouble> charges = new EnumMap<>(Event.class);
            for (Event event : Event.values()) {
                charges.put(event, charge(event));
            }
            return new Case(drawn, charges);
        }

        double[] charges() {
            return search.charges();
        }

        /** Looks between them. */
        ChargeSearch search() {
            return search;
        }

        OptionalDouble charge(Event event) {
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
                worst = Math.max(worst, floor - cellVoltage(place, charge));
            }
            return worst;
        }

        /**
         * The cells of the pack that are nearest to its trip, or furthest beyond it.
         *
         * @param trip of that pack [V]
         * @param cell voltage in its emptiest group [V]; infinite without any trip, or where
         *     nothing is drawn: a pack that is empty at rest is no matter of settings
         */
        record Loaded(double trip, double cell) {}

        Loaded nearestToTrip(double charge) {
            Loaded worst = new Loaded(0.0, Double.POSITIVE_INFINITY);
            if (flowing(charge) == 0.0) {
                return worst;
            }
            for (int place = 0; place < model.packs().size(); place++) {
                OptionalDouble trip =
                        model.packs().get(place).pack().protection().cellUndervoltageTrip();
                if (trip.isPresent()) {
                    double cell = Math.max(0.0, cellVoltage(place, charge));
                    if (Severity.of(trip.getAsDouble(), cell)
                            > Severity.of(worst.trip(), worst.cell())) {
                        worst = new Loaded(trip.getAsDouble(), cell);
                    }
                }
            }
            return worst;
        }

        private double tripSeverity(double charge) {
            Loaded worst = nearestToTrip(charge);
            return Severity.of(worst.trip(), worst.cell());
        }

        /** What the motors draw at most, as far as the draw and the taper let them. */
        private double flowing(double charge) {
            return drive.greatestDraw(topSpeed, pack(charge));
        }

        /** The emptiest group of a pack while that flows. */
        private double cellVoltage(int place, double charge) {
            PackModel pack = model.packs().get(place);
            double own = flowing(charge) * model.share(place, charge, drawn.cellsC());
            return pack.lowestCellVoltage(
                    own, model.chargeOf(place, charge), drawn.cellsC(), drawn.seconds());
        }
    }
}
