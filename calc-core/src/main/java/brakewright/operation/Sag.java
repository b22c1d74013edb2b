package brakewright.operation;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.limit.Severity;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

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
            Map<Event, OptionalDouble> ordered = new EnumMap<>(Event.class);
            ordered.putAll(charges);
            charges = Collections.unmodifiableMap(ordered);
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
                        .map(each -> new SagCourse(build, limits.battery(), operation, each).all())
                        .toList());
    }
}
