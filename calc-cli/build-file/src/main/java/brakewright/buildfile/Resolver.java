package brakewright.buildfile;

import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.spec.Stance;
import brakewright.tables.ReferenceTables;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * Completes what a build file says: looks up cells, wire and plugs in the tables, then takes the
 * tables' default for what is still missing. Nothing that the file says is replaced.
 */
final class Resolver {

    /**
     * Assumption: our own choice; wheels of a board that are smaller are of urethane as a rule, and
     * those that are greater have tyres of rubber [m].
     */
    private static final double LEAST_TYRE = 0.12;

    /** Assumption: a steady speed in everyday riding, our own choice. */
    private static final double CRUISE_SHARE = 0.6;

    private final Given given;
    private final List<Problem> problems;
    private final InputSet inputs;
    private final List<PackResolver> packs;
    private final WiringResolver trunk;

    /**
     * The inputs of a build.
     *
     * @param whole those that are told once
     * @param packs those of each pack
     */
    record Completed(Map<Input, Resolved> whole, List<Map<Input, Resolved>> packs) {}

    Resolver(ReferenceTables tables, Given given, List<Problem> problems) {
        this.given = given;
        this.problems = problems;
        this.inputs = new InputSet(tables, given.values(), given.changes(), Map.of());
        inputs.word(Input.RIDER_STANCE).ifPresent(stance -> inputs.facts().put("stance", stance));
        inputs.word(Input.CONTROLLER_CURRENT_BASIS)
                .ifPresent(basis -> inputs.facts().put("basis", basis));
        this.packs =
                given.packs().stream()
                        .map(
                                pack ->
                                        new PackResolver(
                                                tables, given, pack, inputs.facts(), problems))
                        .toList();
        this.trunk =
                new WiringResolver(
                        tables,
                        given,
                        PackPlace.one(),
                        WiringResolver.Keys.OF_TRUNK,
                        inputs,
                        problems);
    }

    Completed resolve() {
        packs.forEach(PackResolver::lookUp);
        trunk.lookUp();
        if (problems.isEmpty()) {
            complete();
        }
        return new Completed(
                inputs.inputs(), packs.stream().map(pack -> pack.inputs().inputs()).toList());
    }

    private void complete() {
        if (isDirect()) {
            inputs.derive(Input.DRIVE_EFFICIENCY, 1.0, "direct drive: no belt, chain or gears");
        }
        completeTyres();
        for (Schema.Entry entry : Schema.all()) {
            if (!PackPlace.holds(entry.input()) && entry.kind().isSingleNumber()) {
                inputs.assume(entry.input());
            }
        }
        inputs.derive(Input.VEHICLE_DRIVEN_AXLE, new Value.Word("rear"), "the usual driven axle");
        inputs.assumeShare(Input.VEHICLE_MASS_CENTRE_FROM_FRONT, Input.VEHICLE_WHEELBASE);
        inputs.derive(Input.CONTROLLER_COUNT, 1, "one controller");
        inputs.derive(Input.MOTOR_INDUCTANCE, 0.0, "left out of the voltage need");
        inputs.derive(Input.MOTOR_VISCOUS_DRAG, 0.0, "drag taken as constant");
        packs.forEach(pack -> pack.complete(inputs.number(Input.USE_AMBIENT)));
        completeBattery();
        completeUse();
    }

    /** What the wheels roll on says how they grip on a wet road. */
    private void completeTyres() {
        boolean isBoard =
                inputs.word(Input.RIDER_STANCE)
                        .filter(Stance.STANDING_SIDEWAYS.key()::equals)
                        .isPresent();
        boolean isSmall = isBoard && inputs.number(Input.VEHICLE_WHEEL_DIAMETER) < LEAST_TYRE;
        inputs.derive(
                Input.VEHICLE_TYRES,
                new Value.Word(isSmall ? "urethane" : "rubber"),
                isSmall ? "a board on wheels below 120 mm" : "the usual tyres");
        inputs.word(Input.VEHICLE_TYRES).ifPresent(tyres -> inputs.facts().put("tyres", tyres));
    }

    /** A motor that turns as often as the wheel, exactly. */
    private boolean isDirect() {
        return given.values().get(Input.DRIVE_REDUCTION) instanceof Value.Number reduction
                && reduction.quantity().value() == 1.0
                && reduction.quantity().tolerance() == 0.0;
    }

    private void completeBattery() {
        if (!given.hasOnePack()) {
            inputs.derive(
                    Input.PACKS_JOINING,
                    new Value.Word(Joining.PARALLEL.key()),
                    "the usual way to join packs");
            inputs.derive(
                    Input.TRUNK_RESISTANCE, trunk.leads(), "the leads of battery.wire and length");
        }
    }

    private void completeUse() {
        double rise = inputs.tableDefault("use.deck_rise").value();
        inputs.derive(
                Input.USE_DECK_TEMPERATURE,
                inputs.number(Input.USE_AMBIENT) + rise,
                Plain.number(rise) + " K above use.ambient, our own choice");
        double temperature = packs.get(0).inputs().number(Input.PACK_TEMPERATURE);
        inputs.derive(
                Input.USE_PACK_TEMPERATURE,
                new Value.Pair(temperature, temperature),
                "pack.temperature throughout");
        inputs.derive(
                Input.USE_SPEED_MAX, highestSpeed(), "settings.speed_cap, or the no-load speed");
        inputs.derive(
                Input.USE_CRUISE_SPEED,
                CRUISE_SHARE * inputs.number(Input.USE_SPEED_MAX),
                "60 % of use.speed_max, our own choice");
        if (inputs.has(Input.USE_MEASURED_CONSUMPTION)) {
            inputs.derive(
                    Input.USE_MEASURED_SPEED,
                    inputs.number(Input.USE_CRUISE_SPEED),
                    "use.cruise_speed");
        }
    }

    private double highestSpeed() {
        if (inputs.has(Input.SETTINGS_SPEED_CAP)) {
            return inputs.number(Input.SETTINGS_SPEED_CAP);
        }
        double angularSpeed = fullVoltage() * inputs.number(Input.MOTOR_KV) * 2.0 * Math.PI / 60.0;
        return angularSpeed
                / inputs.number(Input.DRIVE_REDUCTION)
                * inputs.number(Input.VEHICLE_WHEEL_DIAMETER)
                / 2.0;
    }

    /** Packs in parallel are full where the first of them is. */
    private double fullVoltage() {
        DoubleStream each = packs.stream().mapToDouble(PackResolver::fullVoltage);
        boolean inSeries =
                inputs.word(Input.PACKS_JOINING).filter(Joining.SERIES.key()::equals).isPresent();
        return inSeries ? each.sum() : each.min().orElseThrow();
    }
}
