package brakewright.buildfile;

import brakewright.assembly.InputSet;
import brakewright.assembly.Taken;
import brakewright.assembly.Value;
import brakewright.buildfile.internal.Plain;
import brakewright.spec.Input;
import brakewright.tables.FuseFamily;
import brakewright.tables.PlugEntry;
import brakewright.tables.ReferenceTables;
import brakewright.tables.WireEntry;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Looks up the fuse, the wire and the plug that carry the current of one pack, or of all together.
 */
final class WiringResolver {

    /**
     * Where a wiring is described.
     *
     * @param fuse its rating
     * @param fuseFamily what kind of fuse
     * @param fuseVoltage at which it breaks
     * @param fuseCapacity which current it breaks
     * @param wire its size
     * @param ampacity of the wire
     * @param length of one lead
     * @param plug its id
     * @param plugRating of the plug
     * @param plugAntiSpark whether the plug connects through a resistor first
     */
    record Keys(
            Input fuse,
            Input fuseFamily,
            Input fuseVoltage,
            Input fuseCapacity,
            Input wire,
            Input ampacity,
            Input length,
            Input plug,
            Input plugRating,
            Input plugAntiSpark) {

        /** The wiring of one pack. */
        static final Keys OF_PACK =
                new Keys(
                        Input.WIRING_FUSE,
                        Input.WIRING_FUSE_FAMILY,
                        Input.WIRING_FUSE_VOLTAGE,
                        Input.WIRING_FUSE_BREAKING_CAPACITY,
                        Input.WIRING_WIRE,
                        Input.WIRING_WIRE_AMPACITY,
                        Input.WIRING_LENGTH,
                        Input.WIRING_PLUG,
                        Input.WIRING_PLUG_RATING,
                        Input.WIRING_PLUG_ANTI_SPARK);

        /** What carries the current of several packs together. */
        static final Keys OF_TRUNK =
                new Keys(
                        Input.TRUNK_FUSE,
                        Input.TRUNK_FUSE_FAMILY,
                        Input.TRUNK_FUSE_VOLTAGE,
                        Input.TRUNK_FUSE_BREAKING_CAPACITY,
                        Input.TRUNK_WIRE,
                        Input.TRUNK_WIRE_AMPACITY,
                        Input.TRUNK_LENGTH,
                        Input.TRUNK_PLUG,
                        Input.TRUNK_PLUG_RATING,
                        Input.TRUNK_PLUG_ANTI_SPARK);
    }

    private final ReferenceTables tables;
    private final Given given;
    private final PackPlace place;
    private final Keys keys;
    private final InputSet inputs;
    private final List<Problem> problems;

    WiringResolver(
            ReferenceTables tables,
            Given given,
            PackPlace place,
            Keys keys,
            InputSet inputs,
            List<Problem> problems) {
        this.tables = tables;
        this.given = given;
        this.place = place;
        this.keys = keys;
        this.inputs = inputs;
        this.problems = problems;
    }

    void lookUp() {
        inputs.word(keys.fuseFamily()).ifPresent(this::lookUpFuse);
        inputs.word(keys.wire()).ifPresent(this::lookUpWire);
        inputs.word(keys.plug()).ifPresent(this::lookUpPlug);
    }

    /** Returns the resistance of both leads of the length given [Ω]; 0 where that is not known. */
    double leads() {
        Optional<WireEntry> wire = inputs.word(keys.wire()).flatMap(tables::wire);
        return wire.isPresent() && inputs.has(keys.length())
                ? 2.0 * inputs.number(keys.length()) * wire.get().resistancePerMetre().value()
                : 0.0;
    }

    private void lookUpFuse(String id) {
        Optional<FuseFamily> family = tables.fuseFamily(id);
        if (family.isPresent()) {
            FuseFamily found = family.get();
            take(keys.fuseVoltage(), found.voltageRating(), "V", found);
            take(keys.fuseCapacity(), found.breakingCapacity(), "A", found);
            if (inputs.has(keys.fuse()) && inputs.number(keys.fuse()) > found.largestRating()) {
                tellNoSuchFuse(found);
            }
        } else if (!inputs.has(keys.fuseVoltage()) || !inputs.has(keys.fuseCapacity())) {
            unknown(
                    keys.fuseFamily(),
                    id,
                    "family of fuses",
                    tables.fuseFamilies().stream().map(FuseFamily::id));
        }
    }

    private void take(Input input, double value, String unit, FuseFamily from) {
        inputs.look(
                input, Taken.number(value, unit, from.source(), from.kind().text(), from.note()));
    }

    private void tellNoSuchFuse(FuseFamily family) {
        String key = place.key(keys.fuse());
        problems.add(
                new Problem(
                        given.line(key),
                        key,
                        String.format(
                                Locale.ROOT,
                                "%s A is above the largest fuse of the family %s, %s A",
                                Plain.number(inputs.number(keys.fuse())),
                                family.id(),
                                Plain.number(family.largestRating())),
                        "a rating up to that, or another "
                                + place.key(keys.fuseFamily())
                                + ", for example "
                                + given.spelling()
                                        .example(
                                                Schema.of(keys.fuseFamily()),
                                                place.key(keys.fuseFamily()))));
    }

    private void lookUpWire(String size) {
        Optional<WireEntry> wire = tables.wire(size);
        if (wire.isPresent()) {
            inputs.look(keys.ampacity(), wire.get().ampacity().taken());
        } else {
            unknown(keys.wire(), size, "wire", tables.wires().stream().map(WireEntry::size));
        }
    }

    private void lookUpPlug(String id) {
        Optional<PlugEntry> plug = tables.plug(id);
        if (plug.isPresent()) {
            PlugEntry found = plug.get();
            String kind = found.kind().text();
            inputs.look(
                    keys.plugRating(),
                    Taken.number(found.current(), "A", found.source(), kind, found.note()));
            inputs.look(
                    keys.plugAntiSpark(),
                    new Taken(
                            new Value.Word(found.isAntiSpark() ? "yes" : "no"),
                            "",
                            found.source(),
                            kind,
                            found.note()));
        } else if (!inputs.has(keys.plugRating())) {
            unknown(keys.plug(), id, "plug", tables.plugs().stream().map(PlugEntry::id));
        }
    }

    private void unknown(Input input, String said, String what, Stream<String> known) {
        String key = place.key(input);
        problems.add(
                new Problem(
                        given.line(key),
                        key,
                        String.format(Locale.ROOT, "\"%s\" is no %s of the tables", said, what),
                        "one of " + known.collect(Collectors.joining(", "))));
    }
}
