package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.limit.Limits;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Taper;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.math3.analysis.UnivariateFunction;

/**
 * How far the voltage sags while a current is drawn, and what it meets first as the charge falls.
 *
 * <p>The set draw and the recommended one are looked at, with the pack at its own temperature and
 * at its coldest, for a short pulse and for a pull without end. The low-voltage taper as set fades
 * the draw before floor and trip are looked for, and the motors draw no more than they are set to,
 * so what is found is what a rider meets.
 *
 * @param cases what was looked at
 * @param meetings what each case meets, in the order of the cases and of {@link Event}
 */
public record Sag(List<Case> cases, List<Meeting> meetings) {

    /** The pulse that cell resistances are given for [s]. */
    private static final double PULSE = 10.0;

    /** Copies the lists. */
    public Sag {
        cases = List.copyOf(cases);
        meetings = List.copyOf(meetings);
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
     * @param draw out of all packs together [A]
     * @param isSet true for the setting, false for the recommended draw
     * @param cellsC cell temperature [°C]
     * @param seconds how long it lasts [s]; infinite for ever
     */
    public record Case(double draw, boolean isSet, double cellsC, double seconds) {}

    /**
     * What a case meets.
     *
     * @param drawn the case
     * @param event what is met
     * @param charge the charge state, within the charge in use [1]; empty where it is not met
     */
    public record Meeting(Case drawn, Event event, OptionalDouble charge) {}

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
        double coldest = Math.min(own, build.use().climate().coldestPackC());
        double recommended = limits.packDischarge().staticPart(own).value();
        Set<Case> cases = new LinkedHashSet<>();
        for (double cells : own == coldest ? new double[] {own} : new double[] {own, coldest}) {
            for (double seconds : new double[] {PULSE, Double.POSITIVE_INFINITY}) {
                cases.add(new Case(operation.drive().packCurrent(), true, cells, seconds));
            }
        }
        for (Case set : List.copyOf(cases)) {
            if (recommended != set.draw()) {
                cases.add(new Case(recommended, false, set.cellsC(), set.seconds()));
            }
        }
        List<Meeting> meetings = new ArrayList<>();
        for (Case each : cases) {
            Meetings found = new Meetings(build, operation, each);
            for (Event event : Event.values()) {
                meetings.add(new Meeting(each, event, found.charge(event)));
            }
        }
        return new Sag(List.copyOf(cases), meetings);
    }

    /**
     * Returns what a case meets first as the charge falls.
     *
     * @param drawn the case
     * @return the meeting at the highest charge; empty where nothing is met
     */
    public Optional<Meeting> first(Case drawn) {
        Optional<Meeting> first = Optional.empty();
        for (Meeting meeting : meetings) {
            boolean met = meeting.drawn().equals(drawn) && meeting.charge().isPresent();
            if (met
                    && (first.isEmpty()
                            || meeting.charge().getAsDouble()
                                    > first.get().charge().getAsDouble())) {
                first = Optional.of(meeting);
            }
        }
        return first;
    }

    /** A pull at the set draw that lasts as long as the hardest in use. */
    static Case hardPull(Build build, Operation operation, double cellsC) {
        return new Case(
                operation.drive().packCurrent(), true, cellsC, build.use().effort().hardPull());
    }

    /** Finds where one case meets each event. */
    static final class Meetings {

        private final BatteryModel model;
        private final ElectricDrive drive;
        private final double topSpeed;
        private final Case drawn;
        private final ChargeSearch search;

        Meetings(Build build, Operation operation, Case drawn) {
            this.model = new BatteryModel(build.battery());
            ElectricDrive set = operation.drive();
            this.drive =
                    new ElectricDrive(
                            set.powertrain(), set.motorCurrent(), drawn.draw(), set.taper());
            this.topSpeed = operation.topSpeed();
            this.drawn = drawn;
            this.search = new ChargeSearch(build, model).with(lastOfTaper(build));
        }

        /** Just before the taper leaves nothing: between the points that are looked at anyway. */
        private OptionalDouble lastOfTaper(Build build) {
            if (drive.taper().isEmpty()) {
                return OptionalDouble.empty();
            }
            double ends = drive.taper().get().ends();
            return new ChargeSearch(build, model)
                    .firstExcess(charge -> ends - pack(charge).voltage(), false);
        }

        double[] charges() {
            return search.charges();
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

        private OptionalDouble first(UnivariateFunction excess) {
            return search.firstExcess(excess, false);
        }

        private PackState pack(double charge) {
            return PackState.of(model, charge, drawn.cellsC(), drawn.seconds());
        }

        private double fullyLoaded(double charge) {
            return pack(charge).terminalVoltage(-drawn.draw());
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
         * How far the trip of the worst pack lies above its loaded cell; −1 without any trip, or
         * where nothing is drawn: a pack that is empty at rest is no matter of settings.
         */
        double tripSeverity(double charge) {
            double worst = -1.0;
            if (flowing(charge) == 0.0) {
                return worst;
            }
            for (int place = 0; place < model.packs().size(); place++) {
                OptionalDouble trip =
                        model.packs().get(place).pack().protection().cellUndervoltageTrip();
                if (trip.isPresent()) {
                    double cell = Math.max(0.0, cellVoltage(place, charge));
                    worst = Math.max(worst, Evaluation.severity(trip.getAsDouble(), cell));
                }
            }
            return worst;
        }

        /** What the motors draw at most, as far as the draw and the taper let them. */
        private double flowing(double charge) {
            return drive.greatestDraw(topSpeed, pack(charge));
        }

        /** The average cell of a pack while that flows. */
        private double cellVoltage(int place, double charge) {
            PackModel pack = model.packs().get(place);
            double own = flowing(charge) * model.share(place, charge, drawn.cellsC());
            return pack.cellVoltage(
                    -own, model.chargeOf(place, charge), drawn.cellsC(), drawn.seconds());
        }
    }
}
