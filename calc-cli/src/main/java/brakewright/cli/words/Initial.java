package brakewright.cli.words;

/** The first letter of a phrase, as its place in a sentence asks. */
public final class Initial {

    private Initial() {}

    /**
     * Begins a phrase with a small letter.
     *
     * @param phrase not empty
     * @return the phrase
     */
    public static String small(String phrase) {
        return Character.toLowerCase(phrase.charAt(0)) + phrase.substring(1);
    }

    /**
     * Begins a phrase with a capital.
     *
     * @param phrase not empty
     * @return the phrase
     */
    public static String capital(String phrase) {
        return Character.toUpperCase(phrase.charAt(0)) + phrase.substring(1);
    }
}
