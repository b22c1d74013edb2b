/**
 * What the pack does at its terminals: open-circuit voltage and resistance over charge state and
 * temperature, the current that a power needs, and how unequal cells in parallel share a current.
 *
 * <p>The entry class is {@link brakewright.battery.BatteryModel}, all packs together; {@link
 * brakewright.battery.PackModel} is one of them. The model is one resistance behind one voltage:
 * that of a pulse of about ten seconds, larger into a pack than out of it, with a second part that
 * grows in a longer pull. Packs in parallel divide a current by their pulse resistances, a long
 * pull too. Its range of validity is that of the cell's tabulated curves; beyond their ends those
 * over the charge stay at the end value, and that over temperature goes on by the rule of
 * Arrhenius.
 *
 * <pre>{@code
 * BatteryModel out = new BatteryModel(board.battery());
 * double rest = out.openCircuitVoltage(0.8);                // V, at 80 % charge
 * double resistance = out.resistance(0.8, 20.0);            // ohm, cells at 20 °C
 * double sagged = rest - resistance * 20.0;                 // V, while 20 A are drawn
 * double current = TerminalPower.drawnCurrent(rest, resistance, 500.0); // A, for 500 W
 * }</pre>
 */
@NullMarked
package brakewright.battery;

import org.jspecify.annotations.NullMarked;
