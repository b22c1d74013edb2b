package brakewright.buildfile;

import brakewright.assembly.Value;
import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.tables.ReferenceTables;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * What a build file itself says.
 *
 * @param title what the vehicle is called
 * @param notes free text
 * @param values by input, those of packs left out
 * @param packs the pack or packs; empty only where the file is wrong about how many there are
 * @param lines where each key stands
 * @param proposals what they change, by name
 * @param source in which words
 * @param changes what of the values was put in place of those of the file
 */
record Given(
        String title,
        String notes,
        Map<Input, Value> values,
        List<GivenPack> packs,
        Map<String, Integer> lines,
        Map<String, Changes> proposals,
        WrittenSource source,
        Changes changes) {

    /** Nothing at all. */
    static final Given NOTHING =
            new Given(
                    "",
                    "",
                    Map.of(),
                    List.of(),
                    Map.of(),
                    Map.of(),
                    WrittenSource.NONE,
                    Changes.NONE);

    /** Puts other values in place of those given. */
    Given with(Changes others) {
        Map<Input, Value> all = new EnumMap<>(Input.class);
        all.putAll(values);
        others.all()
                .forEach(
                        (input, change) -> {
                            if (change.value() instanceof Value.Unset) {
                                all.remove(input);
                            } else {
                                all.put(input, change.value());
                            }
                        });
        return new Given(
                title, notes, all, packs, lines, proposals, source, changes.overlaidBy(others));
    }

    /** Puts other values and packs in place of those given, from no other source. */
    Given with(Map<Input, Value> others, List<GivenPack> otherPacks) {
        return new Given(title, notes, others, otherPacks, lines, proposals, source, changes);
    }

    Spelling spelling() {
        return source.spelling();
    }

    boolean hasOnePack() {
        return packs.size() == 1;
    }

    /** Whether the file says that its packs are joined in series. */
    boolean isInSeries() {
        return values.get(Input.PACKS_JOINING) instanceof Value.Word joining
                && joining.text().equals(Joining.SERIES.key());
    }

    /** Returns the line of a key; 0 where it does not stand in the file. */
    int line(String key) {
        return lines.getOrDefault(key, 0);
    }

    /**
     * The voltage of all packs at their makers' highest cell voltages [V]: packs in parallel are
     * full where the first of them is. Empty where one is not described.
     */
    OptionalDouble fullVoltage(ReferenceTables tables) {
        List<OptionalDouble> each = packs.stream().map(pack -> pack.fullVoltage(tables)).toList();
        if (each.stream().anyMatch(OptionalDouble::isEmpty)) {
            return OptionalDouble.empty();
        }
        DoubleStream volts = each.stream().mapToDouble(OptionalDouble::orElseThrow);
        return isInSeries() && !each.isEmpty() ? OptionalDouble.of(volts.sum()) : volts.min();
    }
}
