package brakewright.cli.text;

import java.util.ArrayList;
import java.util.List;

/** Collects what a text says for a document that is laid out elsewhere. For one thread. */
public final class Manuscript {

    private final List<Piece> pieces = new ArrayList<>();

    /**
     * Returns what a text is written with so that it is collected here.
     *
     * @return an ink without colour, with all letters, as wide as it takes
     */
    public Ink ink() {
        return new Ink(this);
    }

    /**
     * Returns what was collected.
     *
     * @return in its order
     */
    public List<Piece> pieces() {
        return List.copyOf(pieces);
    }

    void add(List<Piece> written) {
        pieces.addAll(written);
    }
}
