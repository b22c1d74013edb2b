package brakewright.cli.buildfile;

import brakewright.spec.Input;
import java.util.List;
import java.util.Set;

/** Tells which keys a build file must have and has not. */
final class RequiredKeys {

    private static final String MISSING = "this required key is missing";

    /** What a cell that is not in the tables must say of itself. */
    static final Set<Input> OF_OWN_CELL =
            Set.of(
                    Input.CELL_CHEMISTRY,
                    Input.CELL_CAPACITY,
                    Input.CELL_DISCHARGE_CURRENT,
                    Input.CELL_CHARGE_CURRENT,
                    Input.CELL_VOLTAGE_MAX,
                    Input.CELL_VOLTAGE_MIN,
                    Input.CELL_RESISTANCE);

    private final TomlKeys keys;
    private final List<Problem> problems;

    RequiredKeys(TomlKeys keys, List<Problem> problems) {
        this.keys = keys;
        this.problems = problems;
    }

    void check(List<PackPlace> places) {
        want("title", 0, "text in quotes, for example title = \"Trail board\"");
        for (Schema.Entry entry : Schema.all()) {
            if (!PackPlace.holds(entry.input()) && entry.required()) {
                want(entry.key(), 0, expected(entry));
            }
        }
        places.forEach(this::checkPack);
    }

    private void checkPack(PackPlace place) {
        String cell = place.key(GivenPack.CELL);
        boolean ownCell = keys.headings().containsKey(cell);
        if (!ownCell) {
            want(
                    cell,
                    place.line(),
                    "the id of a cell in the tables, for example cell = \"samsung-30q\", or a table "
                            + place.heading(GivenPack.CELL));
        }
        for (Schema.Entry entry : Schema.all()) {
            boolean wanted = entry.required() || (ownCell && OF_OWN_CELL.contains(entry.input()));
            if (PackPlace.holds(entry.input()) && wanted) {
                want(place.key(entry.input()), place.line(), expected(entry));
            }
        }
    }

    private void want(String key, int line, String expected) {
        if (!keys.values().containsKey(key)) {
            problems.add(new Problem(line, key, MISSING, expected));
        }
    }

    private static String expected(Schema.Entry entry) {
        return entry.kind().expected() + ", for example " + ValueReader.example(entry);
    }
}
