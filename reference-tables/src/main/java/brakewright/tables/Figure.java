package brakewright.tables;

import brakewright.assembly.Taken;

/**
 * One number with its provenance.
 *
 * @param value the number, finite, in {@code unit}
 * @param unit as the tables spell it: SI, or Ah or degC; {@code 1} for a ratio
 * @param source id of the {@link Source}
 * @param kind how well it is known
 * @param note its conditions and doubts; may be empty
 */
public record Figure(double value, String unit, String source, SourceKind kind, String note) {

    /**
     * Returns this as a value that is taken for an input.
     *
     * @return the number with its provenance
     */
    public Taken taken() {
        return Taken.number(value, unit, source, kind.text(), note);
    }
}
