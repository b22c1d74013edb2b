package brakewright.buildfile;

import brakewright.assembly.Completed;
import brakewright.assembly.Quantity;
import brakewright.assembly.Resolved;
import brakewright.assembly.Value;
import brakewright.spec.Input;
import brakewright.spec.WhichPack;
import brakewright.tables.ReferenceTables;
import brakewright.tables.SourceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which numbers of a build file are not known exactly, and how far they may lie off. */
public final class Spreads {

    /** What is derived from other inputs is known no better than a working rule. */
    private static final String OF_DERIVED = SourceKind.COMMON_PRACTICE.text();

    private final Given given;
    private final Completed completed;
    private final ReferenceTables tables;

    Spreads(Given given, Completed completed, ReferenceTables tables) {
        this.given = given;
        this.completed = completed;
        this.tables = tables;
    }

    /**
     * Returns every number of the file that carries a tolerance.
     *
     * @return with its range, cut to what is physically possible
     */
    public List<Spread> stated() {
        List<Spread> all = new ArrayList<>();
        given.values().forEach((input, value) -> addStated(all, input, WhichPack.WHOLE, value));
        for (int i = 0; i < given.packs().size(); i++) {
            WhichPack pack = which(i);
            given.packs()
                    .get(i)
                    .values()
                    .forEach((input, value) -> addStated(all, input, pack, value));
        }
        return all;
    }

    private static void addStated(List<Spread> all, Input input, WhichPack pack, Value value) {
        if (value instanceof Value.Number number) {
            addStated(all, new InputPlace(input, pack, InputPlace.Part.WHOLE), number.quantity());
        } else if (value instanceof Value.Pair pair) {
            addStated(all, new InputPlace(input, pack, InputPlace.Part.FIRST), pair.one());
            addStated(all, new InputPlace(input, pack, InputPlace.Part.SECOND), pair.two());
        }
    }

    private static void addStated(List<Spread> all, InputPlace place, Quantity quantity) {
        if (quantity.tolerance() > 0.0) {
            all.add(Spread.about(place, quantity));
        }
    }

    /**
     * Returns every number that the file does not give and of which a usual spread is known.
     *
     * @return with that spread, cut to what is physically possible
     */
    public List<UsualSpread> usual() {
        List<UsualSpread> all = new ArrayList<>();
        completed
                .whole()
                .forEach((input, resolved) -> addUsual(all, input, WhichPack.WHOLE, resolved));
        for (int i = 0; i < completed.packs().size(); i++) {
            WhichPack pack = which(i);
            completed
                    .packs()
                    .get(i)
                    .forEach((input, resolved) -> addUsual(all, input, pack, resolved));
        }
        return all;
    }

    private void addUsual(List<UsualSpread> all, Input input, WhichPack pack, Resolved resolved) {
        if (resolved.from() != Resolved.From.FILE
                && resolved.value() instanceof Value.Number number) {
            String kind = resolved.kind().isEmpty() ? OF_DERIVED : resolved.kind();
            usual(input, kind, number.quantity().value())
                    .map(
                            quantity ->
                                    Spread.about(
                                            new InputPlace(input, pack, InputPlace.Part.WHOLE),
                                            quantity))
                    .ifPresent(spread -> all.add(new UsualSpread(spread, kind)));
        }
    }

    private WhichPack which(int place) {
        return given.hasOnePack() ? WhichPack.WHOLE : WhichPack.of(place + 1);
    }

    private Optional<Quantity> usual(Input input, String kind, double value) {
        return tables.usualSpread(input.key(), kind)
                .map(spread -> new Quantity(value, spread.value() * Math.abs(value)))
                .filter(quantity -> quantity.tolerance() > 0.0);
    }
}
