package brakewright.cli.json;

import brakewright.cli.words.Cautions;
import brakewright.replay.BeyondLimit;
import brakewright.replay.HeldBack;
import brakewright.replay.RidePoint;
import brakewright.replay.RideTotals;
import brakewright.replay.RouteRide;

/** Writes what a ride along a route will be, as JSON. */
public final class RouteJson {

    private static final double HOUR = 3600.0;

    private final String title;
    private final RouteRide ride;
    private final JsonText json = new JsonText();

    /**
     * Takes what is written.
     *
     * @param title of the vehicle
     * @param ride along the route
     */
    public RouteJson(String title, RouteRide ride) {
        this.title = title;
        this.ride = ride;
    }

    /**
     * Returns the document.
     *
     * @return JSON
     */
    public String text() {
        RideTotals totals = ride.totals();
        json.startObject();
        json.text("schema", "brakewright.route/1");
        json.text("title", title);
        json.text("end", ride.end().key());
        json.number("route_m", ride.route().length());
        json.number("distance_m", ride.distance());
        json.number("time_s", ride.time());
        json.number("standing_s", totals.standing());
        json.number("drawn_Wh", totals.drawn() / HOUR);
        json.number("returned_Wh", totals.returned() / HOUR);
        json.number("out_Ah", totals.chargeOut() / HOUR);
        json.number("back_Ah", totals.chargeBack() / HOUR);
        json.number("friction_brake_Wh", totals.spent().friction() / HOUR);
        json.number("consumption_Wh_per_km", ride.consumption() / 3.6);
        json.number("winding_limit_C", ride.windingLimitC());
        json.number("cells_limit_C", ride.cellsLimitC());
        json.startArray("held_back");
        for (HeldBack each : ride.heldBack()) {
            json.startObject();
            json.text("by", each.holder().key());
            json.text("what", each.isTooFast() ? "too-fast" : "too-slow");
            json.number("from_m", each.from());
            json.number("to_m", each.to());
            json.number("worst_m_per_s", each.worst());
            json.number("allowed_m_per_s", each.allowed());
            json.endObject();
        }
        json.endArray();
        json.startArray("beyond_limits");
        for (BeyondLimit each : ride.beyond()) {
            json.startObject();
            json.text("direction", each.isReturned() ? "into" : "out-of");
            json.number("from_m", each.first().state().distance());
            json.number("worst_m", each.worst().state().distance());
            json.number("current_A", each.current());
            json.number("permitted_A", each.permitted());
            json.text("by", each.heldBy().key());
            json.endObject();
        }
        json.endArray();
        json.startArray("course");
        ride.course().forEach(this::point);
        json.endArray();
        json.texts("cautions", Cautions.all());
        json.endObject();
        return json.finish();
    }

    private void point(RidePoint point) {
        json.startObject();
        json.number("distance_m", point.state().distance());
        json.number("time_s", point.state().time());
        json.number("height_m", point.height());
        json.number("speed_m_per_s", point.state().speed());
        json.number("allowed_m_per_s", point.allowed());
        json.number("charge", point.state().charge());
        json.number("motor_current_A", point.motorCurrent());
        json.number("pack_current_A", point.packCurrent());
        json.number("pack_voltage_V", point.packVoltage());
        if (ride.isCellHeatKnown()) {
            json.number("cells_C", point.state().cellsC());
        }
        if (ride.isWindingHeatKnown()) {
            json.number("winding_C", point.state().windingC());
        }
        point.holder().ifPresent(holder -> json.text("held_by", holder.key()));
        json.endObject();
    }
}
