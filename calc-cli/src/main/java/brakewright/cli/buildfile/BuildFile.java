package brakewright.cli.buildfile;

import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Settings;
import brakewright.tables.ReferenceTables;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A build file that was read: the vehicle, and where each of its numbers came from.
 *
 * @param title what the vehicle is called
 * @param notes free text; may be empty
 * @param inputs every input that has a value
 * @param build the vehicle
 * @param proposals settings to compare with, by name, each laid over the present ones
 * @param tableVersion the edition of the reference tables
 */
public record BuildFile(
        String title,
        String notes,
        Map<Input, Resolved> inputs,
        Build build,
        Map<String, Settings> proposals,
        String tableVersion) {

    private static final int LARGEST_BYTES = 1 << 20;

    /**
     * Reads a build file.
     *
     * @param bytes its content, UTF-8
     * @param tables the reference tables
     * @return the build file
     * @throws BuildFileException if it cannot be used, with everything that is wrong
     */
    public static BuildFile read(byte[] bytes, ReferenceTables tables) throws BuildFileException {
        List<Problem> problems = new ArrayList<>();
        TomlKeys keys = TomlKeys.parse(decode(bytes), problems);
        Given given = Given.read(keys, tables, problems);
        new Consistency(given, problems).check();
        Map<Input, Resolved> inputs = new Resolver(tables, given, problems).resolve();
        stopAt(problems);
        Build build = new BuildAssembler(given, inputs, problems).assemble();
        Map<String, Settings> proposals = new LinkedHashMap<>();
        given.proposals()
                .forEach(
                        (name, values) ->
                                proposals.put(
                                        name,
                                        BuildAssembler.settings(values, given, problems, name)));
        stopAt(problems);
        return new BuildFile(
                given.title(),
                given.notes(),
                new EnumMap<>(inputs),
                build,
                proposals,
                tables.version());
    }

    /** Loads what reading a build file needs, so that the first reading is quicker. */
    public static void warmUp() {
        TomlKeys.parse("a = [\"b\"] # c", new ArrayList<>());
    }

    private static void stopAt(List<Problem> problems) throws BuildFileException {
        if (!problems.isEmpty()) {
            throw new BuildFileException(problems);
        }
    }

    private static String decode(byte[] bytes) throws BuildFileException {
        if (bytes.length > LARGEST_BYTES) {
            throw new BuildFileException(
                    List.of(new Problem(0, "", "the file is larger than 1 MiB", "")));
        }
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException wrong) {
            throw new BuildFileException(
                    List.of(
                            new Problem(
                                    0, "", "the file is not UTF-8 text", "a text file in UTF-8")));
        }
    }
}
