package brakewright.cli.json;

import brakewright.cli.recording.Recordings;
import brakewright.cli.words.Cautions;
import brakewright.fitting.Fits;
import brakewright.limit.ConstraintId;
import brakewright.recording.ChargeBand;
import brakewright.recording.Energy;
import brakewright.recording.Exceeded;
import brakewright.recording.Extreme;
import brakewright.recording.HardChange;
import brakewright.recording.HeldLimits;
import brakewright.recording.Moment;
import brakewright.recording.Pace;
import brakewright.recording.Ride;
import brakewright.recording.Satellites;
import brakewright.recording.Untold;
import brakewright.recording.Ways;
import brakewright.replay.AgainstModel;
import java.util.List;
import java.util.Optional;

/** Writes what a ride was, as JSON. */
public final class RideJson {

    private final String title;
    private final Recordings read;
    private final Ride ride;
    private final HeldLimits held;
    private final Optional<AgainstModel> model;
    private final Fits fits;
    private final JsonText json = new JsonText();

    /**
     * Takes what is written.
     *
     * @param title of the vehicle
     * @param read the files
     * @param ride what it was
     * @param held where it went beyond the limits
     * @param model what it says of the ride; empty where it says nothing
     * @param fits what the ride says of the vehicle
     */
    public RideJson(
            String title,
            Recordings read,
            Ride ride,
            HeldLimits held,
            Optional<AgainstModel> model,
            Fits fits) {
        this.title = title;
        this.read = read;
        this.ride = ride;
        this.held = held;
        this.model = model;
        this.fits = fits;
    }

    /**
     * Returns the document.
     *
     * @return JSON
     */
    public String text() {
        json.startObject();
        json.text("schema", "brakewright.ride/1");
        json.text("title", title);
        RecordingJson.write(json, read);
        RecordingJson.repairs(json, ride.repairs());
        json.texts("untold", ride.untold().stream().map(Untold::key).toList());
        ways(ride.ways());
        ride.satellites().ifPresent(this::satellites);
        pace(ride.pace());
        ride.energy().ifPresent(this::energy);
        changes("hard_stops", ride.stops());
        changes("hard_pulls", ride.pulls());
        extremes();
        limits();
        json.startArray("top_speed_by_charge");
        for (ChargeBand band : ride.bands()) {
            json.startObject();
            json.number("charge_from", band.from());
            json.number("charge_to", band.to());
            json.number("held_m_per_s", band.held());
            json.endObject();
        }
        json.endArray();
        model.ifPresent(new ModelJson(json)::write);
        new FitsJson(json).write(fits);
        json.texts("cautions", Cautions.all());
        json.endObject();
        return json.finish();
    }

    private void ways(Ways ways) {
        json.startObject("distance");
        json.text("speed_from", ways.source().key());
        json.number("measured_m", ways.measured());
        json.number("by_speed_m", ways.bySpeed());
        json.number("by_speed_doubt_m", ways.speedDoubt());
        json.number("by_position_m", ways.byPosition());
        json.number("by_counter_m", ways.byCounter());
        json.number("positions_over_wheels", ways.positionsOverWheels());
        json.number("implied_wheel_diameter_m", held.impliedWheel());
        json.number("least_across_gaps_m", ways.acrossGaps());
        json.number("not_recorded_m", ways.unrecorded());
        json.number("in_all_at_least_m", ways.atLeast());
        json.endObject();
    }

    private void satellites(Satellites received) {
        json.startObject("satellites");
        json.number("lag_s", received.lag());
        json.number("drop_outs", received.dropOuts());
        json.number("longest_drop_out_s", received.longestDropOut());
        json.number("missing_s", received.missing());
        json.endObject();
    }

    private void pace(Pace pace) {
        json.startObject("pace");
        json.number("speed_known_s", pace.seconds());
        json.number("moving_s", pace.movingSeconds());
        json.number("mean_moving_m_per_s", pace.meanMoving());
        json.number("mean_overall_m_per_s", pace.meanOverall());
        json.number("hold_s", pace.hold());
        pace.held().ifPresent(moment -> moment("held", "held_m_per_s", moment));
        pace.bothWays()
                .ifPresent(
                        ways -> {
                            json.startObject("both_ways");
                            json.number("mean_m_per_s", ways.mean());
                            moment("faster", "held_m_per_s", ways.faster());
                            moment("slower", "held_m_per_s", ways.slower());
                            json.endObject();
                        });
        json.number("stops", pace.stops());
        json.number("stops_per_km", pace.stopsPerKilometre());
        json.endObject();
    }

    private void energy(Energy energy) {
        json.startObject("energy");
        json.number("current_known_s", energy.seconds());
        json.number("out_Ah", energy.outAh());
        json.number("back_Ah", energy.backAh());
        json.number("net_Ah", energy.netAh());
        json.number("out_Wh", energy.outWh());
        json.number("back_Wh", energy.backWh());
        json.number("net_Wh", energy.netWh());
        json.number("returned", energy.returned());
        json.number("consumption_Wh_per_km", energy.perKilometre());
        json.number("idle_W", energy.idlePower());
        json.number("whole_charge_Ah", energy.wholeChargeAh());
        json.endObject();
    }

    private void changes(String name, List<HardChange> changes) {
        json.startArray(name);
        for (HardChange change : changes) {
            json.startObject();
            moment("begin", "from_m_per_s", change.begin());
            json.number("to_m_per_s", change.to());
            json.number("time_s", change.seconds());
            json.number("distance_m", change.distance());
            json.number("mean_m_per_s2", change.mean());
            json.number("highest_m_per_s2", change.highest());
            json.endObject();
        }
        json.endArray();
    }

    private void extremes() {
        json.startObject("extremes");
        ride.extremes().forEach((extreme, value) -> moment(extreme.key(), unit(extreme), value));
        held.lowestCell().ifPresent(value -> moment("lowest_cell_voltage", "value_V", value));
        held.highestCell().ifPresent(value -> moment("highest_cell_voltage", "value_V", value));
        json.endObject();
    }

    private static String unit(Extreme extreme) {
        return switch (extreme) {
            case HIGHEST_SPEED -> "value_m_per_s";
            case LOWEST_VOLTAGE, HIGHEST_VOLTAGE -> "value_V";
            case HIGHEST_CURRENT_OUT, HIGHEST_CURRENT_BACK, HIGHEST_MOTOR_CURRENT -> "value_A";
            case WARMEST_PACK, WARMEST_MOTOR -> "value_C";
        };
    }

    private void limits() {
        json.text("charge_from", held.chargeFrom().key());
        json.text("cell_temperature_from", held.isTemperatureRecorded() ? "recorded" : "build");
        json.startArray("limits_exceeded");
        for (Exceeded each : held.exceeded()) {
            String unit =
                    switch (each.what()) {
                        case PACK_MAY_GIVE, PACK_MAY_TAKE, MOTOR_CURRENT -> "_A";
                        case SPEED -> "_m_per_s";
                        case CELL_FLOOR, CELL_CEILING -> "_V";
                    };
            json.startObject();
            json.text("limit", each.what().key());
            json.number("lasts_s", each.seconds());
            json.number("rows", each.rows());
            each.boundBy().map(ConstraintId::key).ifPresent(by -> json.text("bound_by", by));
            moment("first", "value" + unit, each.first());
            moment("worst", "value" + unit, each.worst());
            json.number("limit_at_worst" + unit, each.limit());
            json.endObject();
        }
        json.endArray();
    }

    private void moment(String name, String value, Moment moment) {
        json.startObject(name);
        json.number(value, moment.value());
        json.number("clock_s", moment.time());
        json.text("file", moment.place().source());
        json.number("line", moment.place().line());
        json.number("charge", moment.charge());
        if (!value.endsWith("_m_per_s")) {
            json.number("speed_m_per_s", moment.speed());
        }
        json.endObject();
    }
}
