package brakewright.explain;

import brakewright.limit.Derivation;

/**
 * One step of a working. Formula and terms give the value: a test evaluates the formula as it is
 * written.
 *
 * @param what the quantity
 * @param symbol as later formulas write it
 * @param value the quantity
 * @param unit its unit; empty for a ratio
 * @param derivation formula, source and the numbers put in
 * @param note how a search or an integration was done; empty where there is none
 * @param pack which of several packs it is about, from 1; 0 where it is about the whole
 */
public record WorkingStep(
        String what,
        String symbol,
        double value,
        String unit,
        Derivation derivation,
        String note,
        int pack) {}
