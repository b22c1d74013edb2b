/**
 * What the pack does at its terminals: open-circuit voltage and resistance over charge state and
 * temperature, the current that a power needs, and how unequal cells in parallel share a current.
 *
 * <p>The entry class is {@link brakewright.battery.PackModel}. The model is one resistance behind
 * one voltage, the resistance being that of a pulse of about ten seconds; it under-states the sag
 * of a longer pull. Its range of validity is that of the cell's tabulated curves; beyond their ends
 * the curves stay at the end value and nothing is extrapolated.
 */
@NullMarked
package brakewright.battery;

import org.jspecify.annotations.NullMarked;
