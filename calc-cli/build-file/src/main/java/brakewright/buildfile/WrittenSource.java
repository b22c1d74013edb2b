package brakewright.buildfile;

import java.util.Map;

/**
 * In which words a build file says what it says.
 *
 * @param raw what stands behind each key
 * @param comments with the keys to which they belong
 * @param spelling of its form
 */
record WrittenSource(Map<String, Object> raw, TomlComments.Owned comments, Spelling spelling) {

    /** Of no file. */
    static final WrittenSource NONE =
            new WrittenSource(Map.of(), TomlComments.Owned.NONE, Spelling.TOML);
}
