package brakewright.buildfile;

import java.util.List;

/** Tells which keys a build file must have and has not. */
final class RequiredKeys {

    private static final String MISSING = "this required key is missing";

    private final FileKeys keys;
    private final List<Problem> problems;

    RequiredKeys(FileKeys keys, List<Problem> problems) {
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
            boolean wanted =
                    entry.required() || (ownCell && entry.need() == Schema.Need.OF_OWN_CELL);
            if (PackPlace.holds(entry.input()) && wanted) {
                want(place.key(entry.input()), place.line(), expected(entry));
            }
        }
    }

    private void want(String key, int line, String expected) {
        if (!keys.values().containsKey(key) && !keys.unread().mayHold(key)) {
            problems.add(new Problem(line, key, MISSING, expected));
        }
    }

    private static String expected(Schema.Entry entry) {
        return entry.kind().expected() + ", for example " + ValueReader.example(entry);
    }
}
