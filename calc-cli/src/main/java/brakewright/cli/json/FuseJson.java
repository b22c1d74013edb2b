package brakewright.cli.json;

import brakewright.battery.FuseDuty;
import brakewright.spec.Battery;

/** Writes what each fuse has to break, and what it can. */
final class FuseJson {

    private final JsonText json;

    FuseJson(JsonText json) {
        this.json = json;
    }

    void write(Battery battery) {
        json.startArray("fuses");
        FuseDuty.of(battery).forEach(this::write);
        json.endArray();
    }

    private void write(FuseDuty fuse) {
        json.startObject();
        if (fuse.pack() > 0) {
            json.number("pack", fuse.pack());
        }
        json.number("full_V", fuse.voltage());
        json.number("short_circuit_A", fuse.current());
        fuse.breaking().voltage().ifPresent(value -> json.number("breaks_V", value));
        fuse.breaking().capacity().ifPresent(value -> json.number("breaks_A", value));
        json.endObject();
    }
}
