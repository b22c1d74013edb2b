package brakewright.cli.json;

import brakewright.assembly.Value;
import brakewright.buildfile.Changes;

/** What was put in place of values of a build file; nothing is written where nothing was. */
final class ChangesJson {

    private ChangesJson() {}

    static void write(JsonText json, Changes changes) {
        if (changes.isNone()) {
            return;
        }
        json.startObject("changes");
        changes.all()
                .forEach(
                        (input, change) -> {
                            json.startObject(input.key());
                            if (change.value() instanceof Value.Number number) {
                                json.number("value", number.quantity().value());
                            } else if (change.value() instanceof Value.Pair pair) {
                                json.numbers("value", new double[] {pair.first(), pair.second()});
                            } else if (change.value() instanceof Value.Unset) {
                                json.text("value", Value.Unset.WORD);
                            }
                            json.text("unit", input.unit().plain());
                            json.text("source", change.source());
                            json.endObject();
                        });
        json.endObject();
    }
}
