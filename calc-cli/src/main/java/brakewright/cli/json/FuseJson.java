package brakewright.cli.json;

import brakewright.battery.FuseDuty;
import java.util.List;

/** Writes what each fuse has to break, and what it can. */
final class FuseJson {

    private final JsonText json;

    FuseJson(JsonText json) {
        this.json = json;
    }

    void write(List<FuseDuty> fuses) {
        json.startArray("fuses");
        fuses.forEach(this::write);
        json.endArray();
    }

    private void write(FuseDuty fuse) {
        json.startObject();
        json.pack(fuse.pack());
        json.number("full_V", fuse.voltage());
        json.number("short_circuit_A", fuse.current());
        fuse.breaking().voltage().ifPresent(value -> json.number("breaks_V", value));
        fuse.breaking().capacity().ifPresent(value -> json.number("breaks_A", value));
        json.endObject();
    }
}
