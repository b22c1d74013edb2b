package brakewright.cli.json;

import brakewright.buildfile.Changes;
import brakewright.cli.words.Cautions;
import brakewright.profile.Proposals;
import brakewright.profile.Recommendation;
import java.util.OptionalDouble;

/** Writes complete sets of settings as JSON of the schema {@code brakewright.proposals/1}. */
public final class ProposeJson {

    private ProposeJson() {}

    /**
     * Writes the sets.
     *
     * @param title what the vehicle is called
     * @param changes what was put in place of values of the file
     * @param proposals the sets
     * @param present the present settings, judged alike
     * @return JSON, ending in a line feed
     */
    public static String of(
            String title, Changes changes, Proposals proposals, Recommendation present) {
        JsonText json = new JsonText();
        DecisionJson sets = new DecisionJson(json);
        json.startObject();
        json.text("schema", "brakewright.proposals/1");
        json.text("title", title);
        ChangesJson.write(json, changes);
        json.startObject("present");
        sets.content(present, OptionalDouble.empty(), OptionalDouble.empty());
        proposals.wetNow().ifPresent(wet -> sets.brake("brake_verdict_wet", wet));
        json.endObject();
        json.startArray("proposals");
        for (Proposals.Proposal each : proposals.sets()) {
            json.startObject();
            json.text("name", each.kind().key());
            sets.content(each.set(), each.chargeFrom(), each.coldestC());
            each.wet().ifPresent(wet -> sets.brake("brake_verdict_wet", wet));
            json.endObject();
        }
        json.endArray();
        proposals
                .obstacle()
                .ifPresent(
                        obstacle -> {
                            json.startObject("obstacle");
                            json.text("held_setting", obstacle.held().key());
                            json.text("held_by", obstacle.by().id().key());
                            obstacle.next()
                                    .ifPresent(next -> json.text("held_next_by", next.id().key()));
                            json.number("deceleration_m_per_s2", obstacle.reached());
                            json.number("wanted_m_per_s2", obstacle.wanted());
                            json.number("speed_low_enough_m_per_s", obstacle.slowEnough());
                            json.endObject();
                        });
        json.texts("cautions", Cautions.braking());
        json.endObject();
        return json.finish();
    }
}
