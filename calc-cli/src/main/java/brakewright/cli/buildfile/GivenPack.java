package brakewright.cli.buildfile;

import brakewright.spec.Input;
import java.util.Map;

/**
 * What a build file says of one pack.
 *
 * @param place where
 * @param cell the id of a cell in the tables; empty where the file describes its own
 * @param values by input
 */
record GivenPack(PackPlace place, String cell, Map<Input, Value> values) {

    /** The key that names a cell, in the words of the schema. */
    static final String CELL = "pack.cell";

    String key(Input input) {
        return place.key(input);
    }
}
