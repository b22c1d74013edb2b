package brakewright.cli.buildfile;

import brakewright.spec.Input;
import brakewright.tables.CellEntry;
import brakewright.tables.ChemistryEntry;
import brakewright.tables.CurveEntry;
import brakewright.tables.Default;
import brakewright.tables.Figure;
import brakewright.tables.PlugEntry;
import brakewright.tables.ReferenceTables;
import brakewright.tables.WireEntry;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Completes what a build file says: looks up cells, wire and plugs in the tables, then takes the
 * tables' default for what is still missing. Nothing that the file says is replaced.
 */
final class Resolver {

    private static final String BUILD_FILE = "build-file";
    private static final String DERIVED = "derived";

    private final ReferenceTables tables;
    private final Given given;
    private final List<Problem> problems;
    private final Map<Input, Resolved> inputs = new EnumMap<>(Input.class);
    private final Map<String, String> facts = new HashMap<>();

    Resolver(ReferenceTables tables, Given given, List<Problem> problems) {
        this.tables = tables;
        this.given = given;
        this.problems = problems;
    }

    Map<Input, Resolved> resolve() {
        given.values()
                .forEach(
                        (input, value) ->
                                inputs.put(
                                        input,
                                        new Resolved(
                                                input,
                                                value,
                                                Resolved.From.FILE,
                                                BUILD_FILE,
                                                "",
                                                "")));
        word(Input.RIDER_STANCE).ifPresent(stance -> facts.put("stance", stance));
        word(Input.CONTROLLER_CURRENT_BASIS).ifPresent(basis -> facts.put("basis", basis));
        resolveCell();
        resolveWire();
        resolvePlug();
        if (problems.isEmpty()) {
            resolveDefaults();
        }
        return inputs;
    }

    private void resolveCell() {
        if (!given.cell().isEmpty()) {
            Optional<CellEntry> cell = tables.cell(given.cell());
            if (cell.isPresent()) {
                takeCell(cell.get());
            } else {
                problems.add(
                        new Problem(
                                given.line("pack.cell"),
                                "pack.cell",
                                String.format(
                                        Locale.ROOT,
                                        "\"%s\" is no cell of the tables",
                                        given.cell()),
                                "a table [pack.cell], or one of "
                                        + tables.cells().stream()
                                                .map(CellEntry::id)
                                                .collect(Collectors.joining(", "))));
            }
        }
        word(Input.CELL_CHEMISTRY)
                .flatMap(tables::chemistry)
                .ifPresent(
                        chemistry -> {
                            facts.put("chemistry", chemistry.id());
                            takeCurves(chemistry);
                        });
    }

    private void takeCell(CellEntry cell) {
        put(Input.CELL_CHEMISTRY, new Value.Word(cell.chemistry()), cell.figure("capacity"));
        takeFigure(cell, "capacity", Input.CELL_CAPACITY);
        takeFigure(cell, "discharge_current", Input.CELL_DISCHARGE_CURRENT);
        takeFigure(cell, "charge_current", Input.CELL_CHARGE_CURRENT);
        takeFigure(cell, "voltage_max", Input.CELL_VOLTAGE_MAX);
        takeFigure(cell, "voltage_min", Input.CELL_VOLTAGE_MIN);
        takeFigure(cell, "resistance", Input.CELL_RESISTANCE);
        takeFigure(cell, "mass", Input.CELL_MASS);
        takeFigure(cell, "discharge_pulse", Input.CELL_DISCHARGE_PULSE);
        takeFigure(cell, "charge_pulse", Input.CELL_CHARGE_PULSE);
        takeFigure(cell, "pulse_time", Input.CELL_PULSE_TIME);
        takePair(cell, "charge_temperature", Input.CELL_CHARGE_TEMPERATURE);
        takePair(cell, "discharge_temperature", Input.CELL_DISCHARGE_TEMPERATURE);
        takeCurve(Input.CELL_OPEN_CIRCUIT_VOLTAGE, cell.openCircuitVoltage());
        takeCurve(Input.CELL_RESISTANCE_BY_CHARGE, cell.resistanceByCharge());
        takeCurve(Input.CELL_RESISTANCE_BY_TEMPERATURE, cell.resistanceByTemperature());
    }

    private void takeFigure(CellEntry cell, String quantity, Input input) {
        cell.figureIfGiven(quantity)
                .ifPresent(
                        figure ->
                                put(
                                        input,
                                        new Value.Number(Quantity.exact(figure.value())),
                                        figure));
    }

    private void takePair(CellEntry cell, String quantity, Input input) {
        Figure low = cell.figure(quantity + "_low");
        Figure high = cell.figure(quantity + "_high");
        put(input, new Value.Pair(low.value(), high.value()), low);
    }

    private void takeCurves(ChemistryEntry chemistry) {
        takeCurve(Input.CELL_OPEN_CIRCUIT_VOLTAGE, chemistry.openCircuitVoltage());
        takeCurve(Input.CELL_RESISTANCE_BY_CHARGE, chemistry.resistanceByCharge());
        takeCurve(Input.CELL_RESISTANCE_BY_TEMPERATURE, chemistry.resistanceByTemperature());
    }

    private void takeCurve(Input input, String id) {
        CurveEntry entry = tables.curve(id).orElseThrow();
        inputs.putIfAbsent(
                input,
                new Resolved(
                        input,
                        new Value.Points(entry.curve()),
                        given.cell().isEmpty() ? Resolved.From.ASSUMED : Resolved.From.TABLE,
                        entry.source(),
                        entry.kind().text(),
                        "curve " + id));
    }

    private void resolveWire() {
        word(Input.WIRING_WIRE)
                .ifPresent(
                        size -> {
                            Optional<WireEntry> wire = tables.wire(size);
                            if (wire.isPresent()) {
                                Figure ampacity = wire.get().ampacity();
                                put(
                                        Input.WIRING_WIRE_AMPACITY,
                                        new Value.Number(Quantity.exact(ampacity.value())),
                                        ampacity);
                            } else {
                                unknownPart(
                                        Input.WIRING_WIRE,
                                        size,
                                        "wire",
                                        tables.wires().stream().map(WireEntry::size).toList());
                            }
                        });
    }

    private void resolvePlug() {
        word(Input.WIRING_PLUG)
                .ifPresent(
                        id -> {
                            Optional<PlugEntry> plug = tables.plug(id);
                            if (plug.isPresent()) {
                                PlugEntry found = plug.get();
                                Figure rating =
                                        new Figure(
                                                found.current(),
                                                "A",
                                                found.source(),
                                                found.kind(),
                                                found.note());
                                put(
                                        Input.WIRING_PLUG_RATING,
                                        new Value.Number(Quantity.exact(rating.value())),
                                        rating);
                            } else if (!inputs.containsKey(Input.WIRING_PLUG_RATING)) {
                                unknownPart(
                                        Input.WIRING_PLUG,
                                        id,
                                        "plug",
                                        tables.plugs().stream().map(PlugEntry::id).toList());
                            }
                        });
    }

    private void unknownPart(Input input, String given, String what, List<String> known) {
        problems.add(
                new Problem(
                        this.given.line(input.key()),
                        input.key(),
                        String.format(Locale.ROOT, "\"%s\" is no %s of the tables", given, what),
                        "one of " + String.join(", ", known)));
    }

    private void resolveDefaults() {
        for (Schema.Entry entry : Schema.all()) {
            if (entry.kind() instanceof Kind.Measured
                    || entry.kind() instanceof Kind.Ratio
                    || entry.kind() instanceof Kind.Count) {
                fromTable(entry.input());
            }
        }
        temperaturePair(Input.CELL_CHARGE_TEMPERATURE);
        temperaturePair(Input.CELL_DISCHARGE_TEMPERATURE);
        derive(Input.VEHICLE_DRIVEN_AXLE, new Value.Word("rear"), "the usual driven axle");
        derive(
                Input.VEHICLE_MASS_CENTRE_FROM_FRONT,
                0.5 * number(Input.VEHICLE_WHEELBASE),
                "half of vehicle.wheelbase");
        derive(Input.CONTROLLER_COUNT, 1, "one controller");
        derive(Input.MOTOR_INDUCTANCE, 0.0, "left out of the voltage need");
        derive(Input.MOTOR_VISCOUS_DRAG, 0.0, "drag taken as constant");
        derive(Input.PACK_TEMPERATURE, number(Input.USE_AMBIENT), "use.ambient");
        derive(
                Input.USE_PACK_TEMPERATURE,
                new Value.Pair(number(Input.PACK_TEMPERATURE), number(Input.PACK_TEMPERATURE)),
                "pack.temperature throughout");
        derive(Input.PACK_JOINT_RESISTANCE, joints(), "joints of the tables and the leads");
        derive(Input.USE_SPEED_MAX, highestSpeed(), "settings.speed_cap, or the no-load speed");
    }

    private void fromTable(Input input) {
        if (inputs.containsKey(input)) {
            return;
        }
        boolean pulseTime = input == Input.CELL_PULSE_TIME;
        if (pulseTime
                && !inputs.containsKey(Input.CELL_DISCHARGE_PULSE)
                && !inputs.containsKey(Input.CELL_CHARGE_PULSE)) {
            return;
        }
        Optional<Default> row = tables.defaultFor(input.key(), facts);
        if (row.isEmpty() || row.get().figure().unit().equals("wheelbase")) {
            return;
        }
        Figure figure = row.get().figure();
        inputs.put(
                input,
                new Resolved(
                        input,
                        new Value.Number(Quantity.exact(figure.value())),
                        Resolved.From.ASSUMED,
                        figure.source(),
                        figure.kind().text(),
                        figure.note()));
    }

    private void temperaturePair(Input input) {
        if (inputs.containsKey(input)) {
            return;
        }
        Figure low = tables.defaultFor(input.key() + "_low", facts).orElseThrow().figure();
        Figure high = tables.defaultFor(input.key() + "_high", facts).orElseThrow().figure();
        inputs.put(
                input,
                new Resolved(
                        input,
                        new Value.Pair(low.value(), high.value()),
                        Resolved.From.ASSUMED,
                        low.source(),
                        low.kind().text(),
                        low.note()));
    }

    /** Joints of every series group, and both leads of the length given. */
    private double joints() {
        double perGroup =
                tables.defaultFor("pack.joint_resistance_per_series_group", facts)
                        .orElseThrow()
                        .value();
        double leads = 0.0;
        Optional<WireEntry> wire = word(Input.WIRING_WIRE).flatMap(tables::wire);
        if (wire.isPresent() && inputs.containsKey(Input.WIRING_LENGTH)) {
            leads = 2.0 * number(Input.WIRING_LENGTH) * wire.get().resistancePerMetre().value();
        }
        return perGroup * number(Input.PACK_SERIES) + leads;
    }

    private double highestSpeed() {
        if (inputs.containsKey(Input.SETTINGS_SPEED_CAP)) {
            return number(Input.SETTINGS_SPEED_CAP);
        }
        double voltage = number(Input.PACK_SERIES) * number(Input.CELL_VOLTAGE_MAX);
        double angularSpeed = voltage * number(Input.MOTOR_KV) * 2.0 * Math.PI / 60.0;
        return angularSpeed
                / number(Input.DRIVE_REDUCTION)
                * number(Input.VEHICLE_WHEEL_DIAMETER)
                / 2.0;
    }

    private void put(Input input, Value value, Figure figure) {
        inputs.putIfAbsent(
                input,
                new Resolved(
                        input,
                        value,
                        Resolved.From.TABLE,
                        figure.source(),
                        figure.kind().text(),
                        figure.note()));
    }

    private void derive(Input input, double value, String from) {
        derive(input, new Value.Number(Quantity.exact(value)), from);
    }

    private void derive(Input input, Value value, String from) {
        inputs.putIfAbsent(
                input, new Resolved(input, value, Resolved.From.ASSUMED, DERIVED, "", from));
    }

    private double number(Input input) {
        Resolved resolved = inputs.get(input);
        if (resolved == null) {
            throw new IllegalStateException("no value and no default for " + input.key());
        }
        return resolved.number();
    }

    private Optional<String> word(Input input) {
        Resolved resolved = inputs.get(input);
        return resolved != null && resolved.value() instanceof Value.Word word
                ? Optional.of(word.text())
                : Optional.empty();
    }
}
