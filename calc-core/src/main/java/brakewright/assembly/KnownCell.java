package brakewright.assembly;

import brakewright.spec.Input;
import java.util.Map;

/**
 * A cell as its datasheet has it.
 *
 * @param chemistry {@code nmc} for example: the curves over charge and temperature are those of the
 *     chemistry, where they are not told
 * @param capacityAh rated [Ah]
 * @param dischargeCurrent rated, continuous [A]
 * @param chargeCurrent rated, continuous [A]
 * @param voltageMax highest [V]
 * @param voltageMin lowest [V]
 * @param resistance in a pulse of 10 s, at half charge and 25 °C [Ω]
 */
public record KnownCell(
        String chemistry,
        double capacityAh,
        double dischargeCurrent,
        double chargeCurrent,
        double voltageMax,
        double voltageMin,
        double resistance) {

    Map<Input, Value> values() {
        return Map.of(
                Input.CELL_CHEMISTRY, new Value.Word(chemistry),
                Input.CELL_CAPACITY, number(capacityAh),
                Input.CELL_DISCHARGE_CURRENT, number(dischargeCurrent),
                Input.CELL_CHARGE_CURRENT, number(chargeCurrent),
                Input.CELL_VOLTAGE_MAX, number(voltageMax),
                Input.CELL_VOLTAGE_MIN, number(voltageMin),
                Input.CELL_RESISTANCE, number(resistance));
    }

    private static Value number(double value) {
        return new Value.Number(Quantity.exact(value));
    }
}
