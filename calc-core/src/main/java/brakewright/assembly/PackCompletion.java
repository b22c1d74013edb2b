package brakewright.assembly;

import brakewright.spec.Input;
import brakewright.spec.Protection;
import java.util.Map;
import java.util.function.DoubleSupplier;

/** Takes what is still missing of one pack. */
public final class PackCompletion {

    private static final String PREFIX = "pack.";

    private final InputSet inputs;
    private final DoubleSupplier leads;

    /**
     * Prepares the completion.
     *
     * @param inputs what is told of the pack
     * @param leads the resistance of its leads [Ω]
     */
    public PackCompletion(InputSet inputs, DoubleSupplier leads) {
        this.inputs = inputs;
        this.leads = leads;
    }

    /** Whether an input is told of every pack. */
    static boolean isOfPack(Input input) {
        return input.key().startsWith(PREFIX);
    }

    /**
     * Returns what there is by now.
     *
     * @return each input with its origin
     */
    public Map<Input, Resolved> inputs() {
        return inputs.inputs();
    }

    double temperature() {
        return inputs.number(Input.PACK_TEMPERATURE);
    }

    /**
     * Takes the defaults for what is still missing.
     *
     * @param ambient the temperature of the air [°C]
     */
    void complete(double ambient) {
        for (Input input : Input.values()) {
            if (isOfPack(input) && isWanted(input)) {
                inputs.assume(input);
            }
        }
        inputs.assumePair(Input.CELL_CHARGE_TEMPERATURE);
        inputs.assumePair(Input.CELL_DISCHARGE_TEMPERATURE);
        inputs.derive(Input.PACK_TEMPERATURE, ambient, "use.ambient");
        inputs.derive(
                Input.PROTECTION_PATH,
                new Value.Word(Protection.Path.BOTH.key()),
                "the usual place, in the way of all currents");
        inputs.derive(
                Input.PACK_JOINT_RESISTANCE, this::joints, "joints of the tables and the leads");
        if (inputs.has(Input.CELL_MASS)) {
            inputs.derive(Input.PACK_TO_AIR, this::toAir, "a box as small as the cells allow");
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

    /** What leaves the outside of a cube that holds the cells. */
    private double toAir() {
        double cells =
                inputs.number(Input.PACK_SERIES)
                        * inputs.number(Input.PACK_PARALLEL)
                        * inputs.number(Input.CELL_MASS);
        double side = Math.cbrt(cells / inputs.tableDefault("pack.density").number());
        return 1.0 / (inputs.tableDefault("pack.heat_to_air").number() * 6.0 * side * side);
    }

    /** Joints of every series group, and both leads of the length given. */
    private double joints() {
        double perGroup = inputs.tableDefault("pack.joint_resistance_per_series_group").number();
        return perGroup * inputs.number(Input.PACK_SERIES) + leads.getAsDouble();
    }
}
