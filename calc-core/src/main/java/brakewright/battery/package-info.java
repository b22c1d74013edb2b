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
 */
@NullMarked
package brakewright.battery;

import org.jspecify.annotations.NullMarked;
