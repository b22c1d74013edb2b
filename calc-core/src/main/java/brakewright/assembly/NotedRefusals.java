package brakewright.assembly;

import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Notes what the parts of a vehicle refuse, each at the input that was told so.
 *
 * @param told what was told, by dotted key
 * @param found what is wrong with a value that was told
 * @param followed what is refused though no single value that was told is named
 */
record NotedRefusals(
        Map<String, Value> told, List<UnfitBuild.Misfit> found, List<UnfitBuild.Misfit> followed)
        implements Attempts {

    @Override
    public <T> @Nullable T attempt(Supplier<T> part, String blamed) {
        try {
            return part.get();
        } catch (IllegalArgumentException refused) {
            String why = String.valueOf(refused.getMessage());
            culprit(blamed, why)
                    .ifPresentOrElse(
                            key -> note(key, why), () -> followed.add(misfit(blamed, why)));
            return null;
        }
    }

    /** What follows from a value that is wrong itself is not told beside it. */
    List<UnfitBuild.Misfit> all() {
        return found.isEmpty() ? followed : found;
    }

    void note(String key, String wrong) {
        found.add(misfit(key, wrong));
    }

    private static UnfitBuild.Misfit misfit(String key, String wrong) {
        Unit unit = Input.ofKey(PackKeys.ofOne(key)).map(Input::unit).orElse(Unit.NONE);
        return new UnfitBuild.Misfit(key, unit, wrong);
    }

    /**
     * A part says which value it refuses: the one input of its table that was told so; empty where
     * none or several were.
     */
    private Optional<String> culprit(String blamed, String why) {
        String one = PackKeys.ofOne(blamed);
        int name = blamed.length() - one.length();
        String table = blamed.substring(0, name + one.indexOf('.') + 1);
        List<String> so =
                told.entrySet().stream()
                        .filter(each -> each.getKey().startsWith(table))
                        .filter(each -> isSaid(each.getValue(), why))
                        .map(Map.Entry::getKey)
                        .toList();
        return so.size() == 1 ? Optional.of(so.get(0)) : Optional.empty();
    }

    /** Messages end in the value that was told, or in two that do not go together. */
    private static boolean isSaid(Value value, String why) {
        if (!(value instanceof Value.Number number)) {
            return false;
        }
        String end = (why + " ").substring(why.lastIndexOf(", was ") + 1);
        String said = " " + number.quantity().value() + " ";
        return why.contains(", was ") && end.contains(said);
    }
}
