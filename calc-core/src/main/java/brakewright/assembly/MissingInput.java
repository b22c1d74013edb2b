package brakewright.assembly;

/** Nothing is told of an input that is needed, and no default stands for it. */
public final class MissingInput extends IllegalStateException {

    private static final long serialVersionUID = 1L;

    /** The dotted key. */
    private final String key;

    MissingInput(String key) {
        super("no value and no default for " + key);
        this.key = key;
    }

    /**
     * Returns what is missing.
     *
     * @return the dotted key
     */
    public String key() {
        return key;
    }
}
