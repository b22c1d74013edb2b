package brakewright.assembly;

import brakewright.spec.WhichPack;

/** What the keys of packs are called: {@code pack.series}, or {@code packs.2.series}. */
public final class PackKeys {

    private static final String ONE = "pack";
    private static final String SEVERAL = "packs.";
    private static final String NUMBERED = "^packs\\.[1-9][0-9]*(?=\\.|$)";

    private PackKeys() {}

    /**
     * Returns what a key is called of one of several packs.
     *
     * @param key dotted, as of a single pack; or its table {@code pack} itself
     * @param pack which of several, or the whole
     * @return the key with the number of the pack; as it is for the whole
     */
    public static String of(String key, WhichPack pack) {
        return pack.map(number -> SEVERAL + number + key.substring(ONE.length())).orElse(key);
    }

    /**
     * Returns what a key would be called of a single pack.
     *
     * @param key dotted, of any pack or of none
     * @return the key without the number of a pack
     */
    public static String ofOne(String key) {
        return key.startsWith(SEVERAL) ? key.replaceFirst(NUMBERED, ONE) : key;
    }
}
