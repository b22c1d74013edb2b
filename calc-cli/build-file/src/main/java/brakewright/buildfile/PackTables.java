package brakewright.buildfile;

import brakewright.spec.Input;
import java.util.List;

/**
 * Where the packs of a build file are described: one in {@code [pack]}, or several in {@code
 * [[packs]]}, joined as {@code [battery]} says.
 */
final class PackTables {

    private static final String BATTERY = "battery";

    private final FileKeys keys;
    private final Spelling spelling;
    private final List<Problem> problems;

    PackTables(FileKeys keys, List<Problem> problems) {
        this.keys = keys;
        this.spelling = keys.spelling();
        this.problems = problems;
    }

    /** Returns the places, with a problem noted for every table that must not be there. */
    List<PackPlace> places() {
        WrittenTable.Item odd = keys.values().get(PackPlace.SEVERAL);
        if (odd != null) {
            tell(
                    odd.line(),
                    PackPlace.SEVERAL,
                    "this must be " + spelling.aRow() + " of " + spelling.tables(),
                    spelling.packsBelow());
            return List.of();
        }
        List<PackPlace> places = keys.packs().isEmpty() ? List.of(PackPlace.one()) : keys.packs();
        if (!keys.packs().isEmpty() && keys.headings().containsKey(PackPlace.ONE)) {
            tell(
                    places.get(0).line(),
                    PackPlace.SEVERAL,
                    spelling.name(PackPlace.ONE)
                            + " and "
                            + spelling.eachPack()
                            + " stand in one file",
                    spelling.name(PackPlace.ONE)
                            + " for a single pack, or "
                            + spelling.eachPack()
                            + " for each of several");
        }
        if (places.size() == 1) {
            checkAlone(places.get(0));
        }
        return places;
    }

    /** Nothing joins a pack that is alone. */
    private void checkAlone(PackPlace place) {
        Integer battery = keys.headings().get(BATTERY);
        if (battery != null) {
            tell(
                    battery,
                    BATTERY,
                    "there is no second pack to be joined",
                    "no "
                            + spelling.name(BATTERY)
                            + ", or "
                            + spelling.eachPack()
                            + " for each of several packs");
        }
        String key = place.key(Input.PACK_CHARGE);
        WrittenTable.Item charge = keys.values().get(key);
        if (charge != null) {
            tell(
                    charge.line(),
                    key,
                    "there is no second pack to be joined at a charge",
                    "a charge in "
                            + spelling.eachPack()
                            + " of several packs; of a single pack use.charge_from and"
                            + " use.charge_to tell the charge in use");
        }
    }

    private void tell(int line, String key, String wrong, String expected) {
        problems.add(new Problem(line, key, wrong, expected));
    }
}
