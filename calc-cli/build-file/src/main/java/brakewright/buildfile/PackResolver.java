package brakewright.buildfile;

import brakewright.spec.Input;
import brakewright.spec.Protection;
import brakewright.tables.CellEntry;
import brakewright.tables.ChemistryEntry;
import brakewright.tables.CurveEntry;
import brakewright.tables.Figure;
import brakewright.tables.ReferenceTables;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Completes what a build file says of one pack. */
final class PackResolver {

    private final ReferenceTables tables;
    private final Given given;
    private final GivenPack pack;
    private final List<Problem> problems;
    private final InputSet inputs;
    private final WiringResolver wiring;

    PackResolver(
            ReferenceTables tables,
            Given given,
            GivenPack pack,
            Map<String, String> facts,
            List<Problem> problems) {
        this.tables = tables;
        this.given = given;
        this.pack = pack;
        this.problems = problems;
        this.inputs = new InputSet(tables, pack.values(), Changes.NONE, facts);
        this.wiring =
                new WiringResolver(
                        tables, given, pack.place(), WiringResolver.Keys.OF_PACK, inputs, problems);
    }

    InputSet inputs() {
        return inputs;
    }

    /** Takes from the tables what the file names: the cell, the wire and the plug. */
    void lookUp() {
        if (!pack.cell().isEmpty()) {
            tables.cell(pack.cell()).ifPresentOrElse(this::takeCell, this::tellUnknownCell);
        }
        inputs.word(Input.CELL_CHEMISTRY)
                .flatMap(tables::chemistry)
                .ifPresent(
                        chemistry -> {
                            inputs.facts().put("chemistry", chemistry.id());
                            takeCurves(chemistry);
                        });
        wiring.lookUp();
    }

    /**
     * Takes the defaults for what is still missing.
     *
     * @param ambient the temperature of the air [°C]
     */
    void complete(double ambient) {
        for (Schema.Entry entry : Schema.all()) {
            if (PackPlace.holds(entry.input())
                    && entry.kind().isSingleNumber()
                    && isWanted(entry.input())) {
                inputs.assume(entry.input());
            }
        }
        inputs.assumePair(Input.CELL_CHARGE_TEMPERATURE);
        inputs.assumePair(Input.CELL_DISCHARGE_TEMPERATURE);
        inputs.derive(Input.PACK_TEMPERATURE, ambient, "use.ambient");
        inputs.derive(
                Input.PROTECTION_PATH,
                new Value.Word(Protection.Path.BOTH.key()),
                "the usual place, in the way of all currents");
        inputs.derive(Input.PACK_JOINT_RESISTANCE, joints(), "joints of the tables and the leads");
        if (inputs.has(Input.CELL_MASS)) {
            inputs.derive(Input.PACK_TO_AIR, toAir(), "a box as small as the cells allow");
        }
    }

    /** Highest voltage at rest [V]. */
    double fullVoltage() {
        return inputs.number(Input.PACK_SERIES) * inputs.number(Input.CELL_VOLTAGE_MAX);
    }

    /**
     * A time without a pulse, a specific heat without a mass, or the end of a taper beside a
     * protection that opens before says nothing.
     */
    private boolean isWanted(Input input) {
        return switch (input) {
            case CELL_PULSE_TIME ->
                    inputs.has(Input.CELL_DISCHARGE_PULSE) || inputs.has(Input.CELL_CHARGE_PULSE);
            case CELL_SPECIFIC_HEAT -> inputs.has(Input.CELL_MASS);
            case CELL_TAPER_FLOOR -> !inputs.has(Input.PROTECTION_UNDERVOLTAGE_TRIP);
            default -> true;
        };
    }

    private void tellUnknownCell() {
        String key = pack.place().key(GivenPack.CELL);
        problems.add(
                new Problem(
                        given.line(key),
                        key,
                        String.format(Locale.ROOT, "\"%s\" is no cell of the tables", pack.cell()),
                        "a table "
                                + pack.place().heading(GivenPack.CELL)
                                + ", or one of "
                                + tables.cells().stream()
                                        .map(CellEntry::id)
                                        .collect(Collectors.joining(", "))));
    }

    private void takeCell(CellEntry cell) {
        inputs.look(
                Input.CELL_CHEMISTRY, new Value.Word(cell.chemistry()), cell.figure("capacity"));
        takeFigure(cell, "capacity", Input.CELL_CAPACITY);
        takeFigure(cell, "discharge_current", Input.CELL_DISCHARGE_CURRENT);
        takeFigure(cell, "charge_current", Input.CELL_CHARGE_CURRENT);
        takeFigure(cell, "voltage_max", Input.CELL_VOLTAGE_MAX);
        takeFigure(cell, "voltage_min", Input.CELL_VOLTAGE_MIN);
        takeFigure(cell, "resistance", Input.CELL_RESISTANCE);
        takeFigure(cell, "sustained_rise", Input.CELL_SUSTAINED_RISE);
        takeFigure(cell, "mass", Input.CELL_MASS);
        takeFigure(cell, "discharge_pulse", Input.CELL_DISCHARGE_PULSE);
        takeFigure(cell, "charge_pulse", Input.CELL_CHARGE_PULSE);
        takeFigure(cell, "pulse_time", Input.CELL_PULSE_TIME);
        takePair(cell, "charge_temperature", Input.CELL_CHARGE_TEMPERATURE);
        takePair(cell, "discharge_temperature", Input.CELL_DISCHARGE_TEMPERATURE);
        takeCurve(Input.CELL_OPEN_CIRCUIT_VOLTAGE, cell.openCircuitVoltage());
        takeCurve(Input.CELL_RESISTANCE_BY_CHARGE, cell.resistanceByCharge());
        takeCurve(Input.CELL_RESISTANCE_BY_TEMPERATURE, cell.resistanceByTemperature());
        cell.chargeCurrentByCharge()
                .ifPresent(id -> takeCurve(Input.CELL_CHARGE_CURRENT_BY_CHARGE, id));
    }

    private void takeFigure(CellEntry cell, String quantity, Input input) {
        Optional<Figure> figure = cell.figureIfGiven(quantity);
        figure.ifPresent(found -> inputs.look(input, found));
    }

    private void takePair(CellEntry cell, String quantity, Input input) {
        Figure low = cell.figure(quantity + "_low");
        Figure high = cell.figure(quantity + "_high");
        inputs.look(input, new Value.Pair(low.value(), high.value()), low);
    }

    private void takeCurves(ChemistryEntry chemistry) {
        takeCurve(Input.CELL_OPEN_CIRCUIT_VOLTAGE, chemistry.openCircuitVoltage());
        takeCurve(Input.CELL_RESISTANCE_BY_CHARGE, chemistry.resistanceByCharge());
        takeCurve(Input.CELL_RESISTANCE_INTO_BY_CHARGE, chemistry.resistanceIntoByCharge());
        takeCurve(Input.CELL_SUSTAINED_RISE_BY_CHARGE, chemistry.sustainedRiseByCharge());
        takeCurve(Input.CELL_RESISTANCE_BY_TEMPERATURE, chemistry.resistanceByTemperature());
    }

    private void takeCurve(Input input, String id) {
        CurveEntry entry = tables.curve(id).orElseThrow();
        inputs.fill(
                input,
                new Value.Points(entry.curve()),
                pack.cell().isEmpty() ? Resolved.From.ASSUMED : Resolved.From.TABLE,
                entry.source(),
                entry.kind().text(),
                "curve " + id);
    }

    /** What leaves the outside of a cube that holds the cells. */
    private double toAir() {
        double cells =
                inputs.number(Input.PACK_SERIES)
                        * inputs.number(Input.PACK_PARALLEL)
                        * inputs.number(Input.CELL_MASS);
        double side = Math.cbrt(cells / inputs.tableDefault("pack.density").value());
        return 1.0 / (inputs.tableDefault("pack.heat_to_air").value() * 6.0 * side * side);
    }

    /** Joints of every series group, and both leads of the length given. */
    private double joints() {
        double perGroup = inputs.tableDefault("pack.joint_resistance_per_series_group").value();
        return perGroup * inputs.number(Input.PACK_SERIES) + wiring.leads();
    }
}
