package brakewright.buildfile;

import brakewright.buildfile.internal.Nearest;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Tells of keys that a build file may not have, with the nearest that it may. */
final class UnknownKeys {

    private final List<Problem> problems;

    UnknownKeys(List<Problem> problems) {
        this.problems = problems;
    }

    /**
     * Tells of a key.
     *
     * @param key as the file has it
     * @param schemaKey as the schema would name it
     * @param line where it stands
     * @param place whose key it is, if it is one of a pack
     */
    void tell(String key, String schemaKey, int line, PackPlace place) {
        Set<String> candidates = new TreeSet<>(FileKeys.KNOWN_TABLES);
        Schema.all().forEach(entry -> candidates.add(entry.key()));
        candidates.add("title");
        candidates.add("notes");
        candidates.addAll(RecordingKeys.TABLES);
        candidates.add(PackPlace.SEVERAL);
        candidates.add(GivenPack.CELL);
        tell(key, line, Nearest.key(schemaKey, candidates).map(place::key));
    }

    /**
     * Tells of a key of a proposal, which is named as a setting or as a key of use.
     *
     * @param key as the file has it
     * @param table the proposal
     * @param line where it stands
     */
    void tellChange(String key, String table, int line) {
        Set<String> candidates = new TreeSet<>();
        Changes.keys().forEach(known -> candidates.add(table + "." + known));
        tell(key, line, Nearest.key(key, candidates));
    }

    private void tell(String key, int line, Optional<String> nearest) {
        problems.add(
                new Problem(
                        line,
                        key,
                        "this key is not known",
                        nearest.map(known -> "the nearest known one is " + known)
                                .orElse("see brakewright keys")));
    }
}
