package brakewright.cli.text;

/** In how many words a page says what it must: the less room there is, the fewer. */
enum Wording {
    /** In sentences. */
    FULL,
    /** In fewer words, and without what stands in a section of its own, too. */
    TIGHT,
    /** In as few as still say it. */
    TERSE,
    /** Likewise, and without blank lines. */
    CROWDED;

    boolean isTight() {
        return this != FULL;
    }

    boolean isTerse() {
        return compareTo(TERSE) >= 0;
    }
}
