package brakewright.buildfile;

import brakewright.assembly.Completed;
import brakewright.assembly.Quantity;
import brakewright.assembly.Resolved;
import brakewright.assembly.Value;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.WhichPack;
import brakewright.tables.ReferenceTables;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes the vehicle of a build file anew with some of its numbers changed. What the file leaves out
 * is completed again, so that everything derived from a changed number follows it.
 */
public final class Variations {

    private static final List<String> PREFIXES =
            List.of("", "settings.", "use.", "pack.", "vehicle.", "motor.", "controller.");

    private final Given given;
    private final Completed completed;
    private final ReferenceTables tables;

    Variations(Given given, Completed completed, ReferenceTables tables) {
        this.given = given;
        this.completed = completed;
        this.tables = tables;
    }

    /** What is told of recordings. */
    Map<String, String> recording() {
        return RecordingKeys.told(given.source().raw());
    }

    /**
     * Finds a number by the key of its input.
     *
     * @param key as the build file has it; for a settings key {@code settings.} may be left out,
     *     for a key of {@code use} likewise, for one of the pack {@code pack.}; with several packs
     *     it begins with {@code packs.1.} or another
     * @return where it stands; empty where there is no such number, or it is not told of which pack
     */
    public Optional<InputPlace> find(String key) {
        for (String prefix : PREFIXES) {
            String whole = prefix + key;
            Optional<Input> input = Input.ofKey(PackPlace.schemaKey(whole));
            if (input.isPresent() && Schema.of(input.get()).kind().isSingleNumber()) {
                return place(input.get(), whole);
            }
        }
        return Optional.empty();
    }

    /** With several packs the number of the pack must be told, with one it must not. */
    private Optional<InputPlace> place(Input input, String key) {
        WhichPack which = WhichPack.WHOLE;
        for (int pack = 1; pack <= given.packs().size(); pack++) {
            if (key.startsWith(PackPlace.SEVERAL + "." + pack + ".")) {
                which = WhichPack.of(pack);
            }
        }
        boolean ofPack = PackPlace.holds(input);
        boolean told = !which.isWhole() && !given.hasOnePack();
        boolean fits = ofPack ? told != given.hasOnePack() : which.isWhole();
        return fits && (told || !key.startsWith(PackPlace.SEVERAL + "."))
                ? Optional.of(new InputPlace(input, which, InputPlace.Part.WHOLE))
                : Optional.empty();
    }

    /**
     * Returns the nominal value of a number.
     *
     * @param place where it stands
     * @return the value, in calculation units; empty where the file and the tables have none
     */
    public Optional<Double> nominal(InputPlace place) {
        Map<Input, Resolved> of =
                PackPlace.holds(place.input())
                        ? completed.packs().get(index(place))
                        : completed.whole();
        Resolved resolved = of.get(place.input());
        return resolved != null && resolved.value() instanceof Value.Number number
                ? Optional.of(number.quantity().value())
                : Optional.empty();
    }

    /**
     * Makes the vehicle.
     *
     * @param places which numbers change
     * @param values what they become, in the same order and in calculation units
     * @return the vehicle
     * @throws BuildFileException if the numbers do not go together
     */
    public Build with(List<InputPlace> places, double[] values) throws BuildFileException {
        Map<Input, Value> whole = new EnumMap<>(Input.class);
        whole.putAll(given.values());
        List<GivenPack> packs = new ArrayList<>(given.packs());
        for (int i = 0; i < values.length; i++) {
            InputPlace place = places.get(i);
            if (PackPlace.holds(place.input())) {
                int index = index(place);
                GivenPack old = packs.get(index);
                Map<Input, Value> own = new EnumMap<>(Input.class);
                own.putAll(old.values());
                put(own, place, values[i]);
                packs.set(index, new GivenPack(old.place(), old.cell(), own));
            } else {
                put(whole, place, values[i]);
            }
        }
        return Assembly.of(given.with(whole, packs), tables).build();
    }

    /** Puts other values in place of those of the file. */
    BuildFile with(Changes changes) throws BuildFileException {
        try {
            return BuildFile.of(given.with(changes), tables, new ArrayList<>());
        } catch (BuildFileException wrong) {
            throw new BuildFileException(
                    new Blame(given, changes, each -> Assembly.problems(each, tables)).problems());
        }
    }

    /** Returns what was put in place of values of the file. */
    Changes changes() {
        return given.changes();
    }

    /** Writes the file anew. */
    String toml() {
        return new TomlWriter(given, completed).text();
    }

    /** Of the pack, from 0; a single one is the first. */
    private static int index(InputPlace place) {
        return place.pack().number().orElse(1) - 1;
    }

    private static void put(Map<Input, Value> values, InputPlace place, double value) {
        Quantity quantity = Quantity.exact(value);
        Value old = values.get(place.input());
        Value changed =
                old instanceof Value.Pair pair && place.part() != InputPlace.Part.WHOLE
                        ? place.part() == InputPlace.Part.FIRST
                                ? new Value.Pair(quantity, pair.two())
                                : new Value.Pair(pair.one(), quantity)
                        : new Value.Number(quantity);
        values.put(place.input(), changed);
    }
}
