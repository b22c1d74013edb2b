/**
 * What adds up while the charge moves, and at which charge state something is used up or begins to
 * be too much.
 *
 * <p>A ride or a descent is an integral over the charge ({@link brakewright.charge.ChargeIntegral})
 * up to where a reserve is used up ({@link brakewright.charge.ReserveWalk}); what is exceeded over
 * the charge in use is searched for ({@link brakewright.charge.ChargeSearch}). Not exported.
 */
@NullMarked
package brakewright.charge;

import org.jspecify.annotations.NullMarked;
