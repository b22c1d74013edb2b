package brakewright.cli.json;

import brakewright.operation.Sharing;

/** Writes how several packs share a current, how they may be joined, and the loss of one. */
final class SharingJson {

    private final JsonText json;

    SharingJson(JsonText json) {
        this.json = json;
    }

    void write(Sharing sharing) {
        if (sharing.loads().isEmpty()) {
            return;
        }
        json.startObject("packs");
        json.startArray("loads");
        sharing.loads().forEach(this::load);
        json.endArray();
        json.startArray("joints");
        sharing.joints().forEach(this::joint);
        json.endArray();
        json.startArray("losses");
        sharing.losses().forEach(this::loss);
        json.endArray();
        json.endObject();
    }

    private void load(Sharing.Load load) {
        json.startObject();
        json.number("pack", load.pack());
        json.text("while", way(load.isDraw()));
        json.number("charge", load.charge());
        json.number("own_charge", load.ownCharge());
        json.number("whole_A", load.whole());
        json.number("current_A", load.current());
        json.number("limit_A", load.limit());
        json.text("bound_by", load.boundBy().key());
        json.number("share_of_limit", load.use());
        json.endObject();
    }

    private void joint(Sharing.Joint joint) {
        json.startObject();
        json.number("pack", joint.pack());
        json.number("permitted_A", joint.permitted());
        json.number("difference_V", joint.difference());
        json.number("worst_A", joint.worst());
        json.number("current_A", joint.current());
        if (joint.current().isPresent()) {
            json.text("flows", joint.isCharged() ? "into-pack" : "out-of-pack");
            json.text("joining", joint.isExceeded() ? "not-permitted" : "permitted");
        }
        json.endObject();
    }

    private void loss(Sharing.Loss loss) {
        json.startObject();
        json.number("pack", loss.pack());
        json.text("while", way(loss.isDraw()));
        json.number("greatest_share_of_trip", loss.greatestUse());
        json.number("charge", loss.charge());
        json.text("left", loss.isAllLost() ? "none" : "some");
        json.endObject();
    }

    private static String way(boolean isDraw) {
        return isDraw ? "driving" : "braking";
    }
}
