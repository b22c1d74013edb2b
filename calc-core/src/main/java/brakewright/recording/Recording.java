package brakewright.recording;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * One ride on one charge, in pieces. Nothing is told of what lies between them, and nothing is ever
 * integrated across it.
 *
 * @param pieces in the order in which they were ridden, at least one
 * @param gaps between them, one fewer
 * @param longestStep between two fields that are taken for neighbours [s]; what lies farther apart
 *     is a gap
 */
public record Recording(List<Piece> pieces, List<Gap> gaps, double longestStep) {

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there is no piece, not a gap between each two, or the
     *     longest step is not positive
     */
    public Recording {
        pieces = List.copyOf(pieces);
        gaps = List.copyOf(gaps);
        if (pieces.isEmpty() || gaps.size() != pieces.size() - 1) {
            throw new IllegalArgumentException("a recording needs pieces with a gap between each");
        }
        if (!(longestStep > 0.0)) {
            throw new IllegalArgumentException("the longest step must be positive");
        }
    }

    /**
     * Returns what was recorded in any piece.
     *
     * @return the quantities, time among them
     */
    public Set<Quantity> quantities() {
        Set<Quantity> all = EnumSet.noneOf(Quantity.class);
        pieces.forEach(piece -> all.addAll(piece.quantities()));
        return all;
    }

    /**
     * Returns whether a quantity was recorded.
     *
     * @param quantity which
     * @return true where any row has it
     */
    public boolean has(Quantity quantity) {
        return pieces.stream().anyMatch(piece -> piece.has(quantity));
    }

    /**
     * Returns how many rows all pieces have.
     *
     * @return at least 1
     */
    public int rows() {
        return pieces.stream().mapToInt(Piece::rows).sum();
    }

    /**
     * Returns how long was recorded, without the gaps.
     *
     * @return [s]
     */
    public double seconds() {
        return pieces.stream().mapToDouble(Piece::seconds).sum();
    }

    /**
     * Returns this recording with every piece changed, its gaps as they are.
     *
     * @param change of a piece, which keeps its rows
     * @return a changed copy
     */
    Recording each(UnaryOperator<Piece> change) {
        List<Piece> changed = new ArrayList<>();
        pieces.forEach(piece -> changed.add(change.apply(piece)));
        return new Recording(changed, gaps, longestStep);
    }
}
