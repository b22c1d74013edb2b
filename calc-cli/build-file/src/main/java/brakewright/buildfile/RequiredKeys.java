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
        want(
                "title",
                0,
                "text in quotes, for example " + keys.spelling().pair("title", "\"Trail board\""));
        for (Schema.Entry entry : Schema.all()) {
            if (!PackPlace.holds(entry.input()) && entry.required()) {
                want(entry.key(), 0, expected(entry, entry.key()));
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
                    "the id of a cell in the tables, for example "
                            + keys.spelling().pair(cell, "\"samsung-30q\"")
                            + ", or "
                            + keys.spelling().table(place, GivenPack.CELL));
        }
        for (Schema.Entry entry : Schema.all()) {
            boolean wanted =
                    entry.required() || (ownCell && entry.need() == Schema.Need.OF_OWN_CELL);
            if (PackPlace.holds(entry.input()) && wanted) {
                String key = place.key(entry.input());
                want(key, place.line(), expected(entry, key));
            }
        }
    }

    private void want(String key, int line, String expected) {
        if (!keys.values().containsKey(key) && !keys.unread().mayHold(key)) {
            problems.add(new Problem(line, key, MISSING, expected));
        }
    }

    private String expected(Schema.Entry entry, String key) {
        return entry.kind().expected() + ", for example " + keys.spelling().example(entry, key);
    }
}
