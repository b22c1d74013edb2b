package brakewright.cli.json;

import brakewright.braking.StopOutcome;
import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.Judged;
import brakewright.cli.doubt.Remembered;
import brakewright.limit.Limit;
import brakewright.operation.FirstStop;
import brakewright.profile.Headroom;
import brakewright.profile.Headrooms;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.spec.Use;
import brakewright.worksheet.Both;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.CheckedStop;
import brakewright.worksheet.HardestBraking;
import brakewright.worksheet.LeftBraking;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * A proposal beside the present settings, as JSON. Keys end in their unit, fractions have none;
 * what was not computed is absent.
 */
public final class CheckJson {

    private final JsonText json = new JsonText();
    private final CheckSheet check;
    private final Build build;

    private CheckJson(CheckSheet check) {
        this.check = check;
        this.build = check.proposed().build();
    }

    /**
     * Writes a check.
     *
     * @param file the build file with the proposal put in
     * @param check the comparison, with nominal inputs
     * @param headrooms how high the brake could be set, likewise
     * @param judged both verdicts on the proposal
     * @return JSON
     */
    public static String of(BuildFile file, CheckSheet check, Headrooms headrooms, Judged judged) {
        return new CheckJson(check).written(file, headrooms, judged);
    }

    private String written(BuildFile file, Headrooms headrooms, Judged judged) {
        json.startObject();
        json.text("schema", "brakewright.check/1");
        json.text("title", file.title());
        ChangesJson.write(json, file.changes());
        json.text("verdict", judged.review().verdict().outcome().key());
        json.texts("verdict_from_memory", Remembered.in(file, check.proposed()));
        new ConditionJson(json).write(judged.review().all().conditions());
        new DecisionJson(json).brake(judged.brake());
        json.startObject("present");
        side(check.present(), check.safeChargePresent(), check.hardestPresent());
        json.endObject();
        json.startObject("proposed");
        side(check.proposed(), check.safeChargeProposed(), check.hardestProposed());
        json.endObject();
        json.number("useless_above_m_per_s", check.uselessAbove());
        if (check.uselessAbove().isPresent()) {
            json.text(
                    "useless_for",
                    check.isUselessForTaper() ? "high-voltage-taper" : "pack-regen-current");
        }
        json.startObject("highest");
        Limit brake = check.proposed().permitted().motorBrake();
        headroom("motor_brake_current", headrooms.motorBrake(), brake.value(), brake);
        Limit regen = check.proposed().permitted().packRegen().fixed();
        headroom(
                "pack_regen_current",
                headrooms.packRegen(),
                build.controllers().each(regen.value()),
                regen);
        json.endObject();
        stops();
        new CheckRideJson(json, check).write();
        pairs(json, "first_stop", check.sheets(), this::firstStops);
        pairs(json, "left_where_the_pack_refuses", check.sheets(), this::left);
        json.startObject("findings");
        new FindingJson(json, build).write("added", check.findingsAdded());
        new FindingJson(json, check.present().build()).write("mended", check.findingsMended());
        json.endObject();
        json.endObject();
        return json.finish();
    }

    /** What belongs to one of both alone. */
    private void side(Worksheet sheet, double safeCharge, HardestBraking hardest) {
        Settings settings = sheet.build().settings();
        json.text("verdict_nominal", sheet.review().verdict().outcome().key());
        json.startObject("settings");
        json.number("motor_drive_current_A", settings.motorDriveCurrent());
        json.number("motor_brake_current_A", settings.motorBrakeCurrent());
        json.number("pack_discharge_current_A", settings.packDischargeCurrent());
        json.number("pack_regen_current_A", settings.packRegenCurrent());
        settings.lowVoltageTaper().ifPresent(taper -> taper("low_voltage_taper_V", taper));
        settings.highVoltageTaper().ifPresent(taper -> taper("high_voltage_taper_V", taper));
        json.number("speed_cap_m_per_s", settings.speedCap());
        json.endObject();
        json.number("safe_charge", safeCharge);
        json.number("top_speed_m_per_s", sheet.inEffect().topSpeed());
        json.number("hardest_deceleration_m_per_s2", hardest.deceleration());
        json.number("hardest_brake_force_N", hardest.brakeForce());
    }

    private void taper(String name, Taper taper) {
        json.numbers(name, new double[] {taper.begins(), taper.ends()});
    }

    private void headroom(String name, Headroom headroom, double bare, Limit bound) {
        json.startObject(name);
        json.number("bare_limit_A", bare);
        json.text("bare_limit_bound_by", bound.binding().id().key());
        headroom.circumstances().ifPresent(this::circumstances);
        SolutionJson answer = new SolutionJson(json, "value_A");
        headroom.there().ifPresent(there -> answer.write("where_present_is_safe", there));
        answer.write("throughout", headroom.throughout());
        json.endObject();
    }

    private void circumstances(Use part) {
        json.startObject("present_is_safe");
        json.number("charge_from", part.chargeFrom());
        json.number("charge_to", part.chargeTo());
        json.number("coldest_C", part.climate().coldestPackC());
        json.number("warmest_C", part.climate().warmestPackC());
        json.endObject();
    }

    /** The same for the present settings and the proposal, under one name. */
    static <T> void pairs(
            JsonText json, String name, Both<? extends T> sides, BiConsumer<String, T> writer) {
        json.startObject(name);
        writer.accept("present", sides.present());
        writer.accept("proposed", sides.proposed());
        json.endObject();
    }

    private void stops() {
        List<CheckedStop> stops = check.stops();
        json.startObject("stops");
        json.number("charge", build.use().chargeFrom());
        json.numbers("from_m_per_s", stops.stream().mapToDouble(CheckedStop::from).toArray());
        json.number("reaction_s", build.use().effort().reaction());
        surface("dry", stops, CheckedStop::dry);
        surface("wet", stops, CheckedStop::wet);
        json.endObject();
    }

    /** A stop from more than a side's own highest speed is left out. */
    private void surface(
            String name,
            List<CheckedStop> stops,
            Function<CheckedStop, Both<Optional<StopOutcome>>> road) {
        json.startObject(name);
        side("present", stops, stop -> road.apply(stop).present());
        side("proposed", stops, stop -> road.apply(stop).proposed());
        json.endObject();
    }

    private void side(
            String name,
            List<CheckedStop> stops,
            Function<CheckedStop, Optional<StopOutcome>> outcome) {
        json.startArray(name);
        for (CheckedStop stop : stops) {
            outcome.apply(stop)
                    .ifPresent(
                            ended -> {
                                json.startObject();
                                json.number("from_m_per_s", stop.from());
                                StopJson.write(json, ended);
                                json.endObject();
                            });
        }
        json.endArray();
    }

    private void firstStops(String side, Worksheet sheet) {
        json.startArray(side);
        for (FirstStop stop : sheet.firstStops()) {
            json.startObject();
            json.number("cells_C", stop.cellsC());
            json.number("pack_current_A", stop.packCurrent());
            json.number("may_take_A", stop.mayTake());
            json.number("cell_voltage_V", stop.cellVoltage());
            json.text("opens", stop.opening().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            json.number("left_m_per_s2", stop.leftDeceleration());
            StopJson.write(json, stop.outcome());
            FirstStopJson.opened(json, stop);
            json.endObject();
        }
        json.endArray();
    }

    private void left(String side, Worksheet sheet) {
        json.startArray(side);
        for (LeftBraking left : sheet.leftBraking()) {
            json.startObject();
            json.text("refusal", left.refusal().key());
            json.number("charge", left.charge());
            json.number("cells_C", left.cellsC());
            json.number("may_take_A", left.mayTake());
            StopJson.write(json, left.outcome());
            json.endObject();
        }
        json.endArray();
    }
}
