package brakewright.cli.json;

import brakewright.battery.ShortCircuit;
import brakewright.spec.Battery;
import brakewright.spec.Wiring;

/** Writes what each fuse has to break, and what it can. */
final class FuseJson {

    private final JsonText json;

    FuseJson(JsonText json) {
        this.json = json;
    }

    void write(Battery battery) {
        ShortCircuit fault = new ShortCircuit(battery);
        json.startArray("fuses");
        for (int place = 0; place < battery.packs().size(); place++) {
            write(
                    battery.isOnePack() ? 0 : place + 1,
                    battery.packs().get(place).wiring(),
                    fault.voltage(),
                    fault.currentThrough(place));
        }
        write(0, battery.trunk(), fault.voltage(), fault.current());
        json.endArray();
    }

    private void write(int pack, Wiring wiring, double voltage, double current) {
        if (wiring.fuseRating().isEmpty()) {
            return;
        }
        json.startObject();
        if (pack > 0) {
            json.number("pack", pack);
        }
        json.number("full_V", voltage);
        json.number("short_circuit_A", current);
        wiring.fuseBreaking().voltage().ifPresent(value -> json.number("breaks_V", value));
        wiring.fuseBreaking().capacity().ifPresent(value -> json.number("breaks_A", value));
        json.endObject();
    }
}
