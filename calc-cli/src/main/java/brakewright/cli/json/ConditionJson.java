package brakewright.cli.json;

import brakewright.review.Condition;
import java.util.List;

/** Writes the conditions under which all is well, the strictest of each kind. */
final class ConditionJson {

    private final JsonText json;

    ConditionJson(JsonText json) {
        this.json = json;
    }

    void write(List<Condition> conditions) {
        json.startArray("conditions");
        for (Condition condition : conditions) {
            json.startObject();
            write(condition);
            json.endObject();
        }
        json.endArray();
    }

    private void write(Condition condition) {
        if (condition instanceof Condition.ChargeBelow below) {
            json.text("kind", "charge-below");
            json.number("charge", below.charge());
            json.number("end_of_use_charge", below.highestCharge());
            json.number("speed_there_m_per_s", below.speedThere());
            json.number("cells_C", below.temperatureC());
        } else if (condition instanceof Condition.ChargeAbove above) {
            json.text("kind", "charge-above");
            json.number("charge", above.charge());
            json.number("end_of_use_charge", above.lowestCharge());
            json.number("cells_C", above.temperatureC());
        } else if (condition instanceof Condition.CellsFrom from) {
            json.text("kind", "cells-from");
            json.number("cells_C", from.temperatureC());
            excess(from.excess());
        } else if (condition instanceof Condition.CellsUpTo upTo) {
            json.text("kind", "cells-up-to");
            json.number("cells_C", upTo.temperatureC());
            excess(upTo.excess());
        } else if (condition instanceof Condition.RiddenUpTo ridden) {
            json.text("kind", "ridden-up-to");
            json.number("after_s", ridden.time());
            json.number("speed_m_per_s", ridden.speed());
            json.number("limit_C", ridden.limitC());
            json.number("start_C", ridden.startC());
            json.number("highest_C", ridden.highestC());
        }
    }

    /** What cells of another temperature in use do not bear. */
    private void excess(Condition.Excess excess) {
        json.startObject("excess");
        json.text("flow", excess.isReturned() ? "regen" : "draw");
        json.number("current_A", excess.current());
        json.number("limit_A", excess.permitted());
        json.number("cells_C", excess.temperatureC());
        json.endObject();
    }
}
