package brakewright.cli.json;

import brakewright.assembly.Resolved;
import brakewright.assembly.Value;
import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.HeatSpreads;
import brakewright.cli.doubt.Judged;
import brakewright.cli.doubt.Remembered;
import brakewright.cli.doubt.Tolerated;
import brakewright.cli.doubt.Unmeasured;
import brakewright.cli.words.Cautions;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.limit.BrakingTime;
import brakewright.limit.Constraint;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.TaperLimit;
import brakewright.operation.FirstStop;
import brakewright.profile.Recommendation;
import brakewright.profile.WetRoad;
import brakewright.spec.Controllers;
import brakewright.spec.Input;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.worksheet.BrakeMap;
import brakewright.worksheet.LimitSheet;
import brakewright.worksheet.PackLimitSheet;
import brakewright.worksheet.PackRow;
import brakewright.worksheet.SettingsInEffect;
import brakewright.worksheet.StopTable;
import brakewright.worksheet.TimedAnswer;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes the worksheet as JSON of the schema {@code brakewright.worksheet/1}. */
public final class WorksheetJson {

    private final BuildFile file;
    private final Worksheet sheet;
    private final Optional<Tolerated> tolerated;
    private final Optional<Unmeasured> unmeasured;
    private final Judged judged;
    private final Recommendation recommended;
    private final WetRoad wet;
    private final JsonText json = new JsonText();

    /**
     * Prepares the text.
     *
     * @param file the build file it is about
     * @param sheet its worksheet, with nominal inputs
     * @param tolerated what the tolerances stated do; empty where none is
     * @param unmeasured what values from tables and assumptions could do; empty where not asked for
     * @param judged both verdicts
     * @param recommended the set that holds together
     * @param wet what a wet road leaves
     */
    public WorksheetJson(
            BuildFile file,
            Worksheet sheet,
            Optional<Tolerated> tolerated,
            Optional<Unmeasured> unmeasured,
            Judged judged,
            Recommendation recommended,
            WetRoad wet) {
        this.file = file;
        this.sheet = sheet;
        this.tolerated = tolerated;
        this.unmeasured = unmeasured;
        this.judged = judged;
        this.recommended = recommended;
        this.wet = wet;
    }

    /**
     * Writes the text.
     *
     * @return the worksheet, ending in a line feed
     */
    public String text() {
        json.startObject();
        json.text("schema", "brakewright.worksheet/1");
        json.text("title", file.title());
        json.text("verdict", judged.review().verdict().outcome().key());
        json.texts(
                "verdict_text",
                new VerdictWords(judged.build(), UnitSystem.SI).of(judged.review()));
        json.texts("verdict_from_memory", Remembered.in(file, sheet));
        new ConditionJson(json).write(judged.review().all().conditions());
        DecisionJson decision = new DecisionJson(json);
        decision.brake(judged.brake());
        if (wet.bindsBrake(judged.brake())) {
            decision.brake("brake_verdict_wet", wet.brake());
        }
        decision.recommended(recommended);
        if (isWetLess()) {
            decision.recommendedOnWetRoad(wet);
        }
        json.text("table_version", file.tableVersion());
        inputs();
        limits();
        horizons();
        packByCharge();
        brakeMap();
        stops();
        firstStops();
        FirstStopJson.help(json, sheet.firstStopHelp());
        new DrivingJson(json).write(sheet);
        new SagJson(json, sheet).write();
        new RangeJson(json).write(sheet.range());
        new HeatJson(json)
                .write(sheet.heat(), sheet.heat().doubtedCruise(sheet, HeatSpreads.of(file)));
        new SharingJson(json).write(sheet.sharing());
        new FuseJson(json).write(sheet.fuses());
        new FindingJson(json, file.build()).write("findings", sheet.review().findings());
        tolerated.ifPresent(each -> ToleranceJson.write(json, sheet.review().verdict(), each));
        unmeasured.ifPresent(each -> UnmeasuredJson.write(json, each));
        json.texts("cautions", Cautions.all());
        json.endObject();
        return json.finish();
    }

    private void inputs() {
        json.startObject("inputs");
        for (Map.Entry<String, Resolved> entry : file.named().entrySet()) {
            Resolved resolved = entry.getValue();
            json.startObject(entry.getKey());
            value(resolved.value());
            json.text("unit", resolved.input().unit().plain());
            json.text("from", resolved.from().key());
            json.text("source", resolved.source());
            if (!resolved.kind().isEmpty()) {
                json.text("kind", resolved.kind());
            }
            json.endObject();
        }
        recommendedSettings();
        json.endObject();
    }

    /** A current that is not set is taken at its limit, and everything is computed with that. */
    private void recommendedSettings() {
        Settings settings = file.build().settings();
        SettingsInEffect set = sheet.inEffect();
        Controllers controllers = file.build().controllers();
        recommended(
                Input.SETTINGS_MOTOR_DRIVE_CURRENT, settings.motorDriveCurrent(), set.motorDrive());
        recommended(
                Input.SETTINGS_MOTOR_BRAKE_CURRENT, settings.motorBrakeCurrent(), set.motorBrake());
        recommended(
                Input.SETTINGS_PACK_DISCHARGE_CURRENT,
                settings.packDischargeCurrent(),
                controllers.each(set.packDischarge()));
        recommended(
                Input.SETTINGS_PACK_REGEN_CURRENT,
                settings.packRegenCurrent(),
                controllers.each(set.packRegen()));
    }

    private void recommended(Input input, OptionalDouble setting, double limit) {
        if (setting.isEmpty()) {
            json.startObject(input.key());
            json.number("value", limit);
            json.text("unit", input.unit().plain());
            json.text("from", Resolved.From.ASSUMED.key());
            json.text("source", "recommended-limit");
            json.endObject();
        }
    }

    private void value(Value value) {
        if (value instanceof Value.Number number) {
            json.number("value", number.quantity().value());
            if (number.quantity().tolerance() > 0.0) {
                json.number("tolerance", number.quantity().tolerance());
            }
        } else if (value instanceof Value.Pair pair) {
            json.numbers("value", new double[] {pair.first(), pair.second()});
        } else if (value instanceof Value.Points points) {
            json.startArray("value");
            for (double[] point : points.pairs()) {
                json.numbers(point);
            }
            json.endArray();
        } else if (value instanceof Value.Word word) {
            json.text("value", word.text());
        }
    }

    private void limits() {
        Settings settings = file.build().settings();
        LimitSheet limits = sheet.permitted();
        json.startObject("limits");
        limit(limits.motorDrive(), settings.motorDriveCurrent());
        limit(limits.motorBrake(), settings.motorBrakeCurrent());
        packLimit(limits.packDischarge(), settings.packDischargeCurrent());
        packLimit(limits.packRegen(), settings.packRegenCurrent());
        taper(limits.lowVoltageTaper(), settings.lowVoltageTaper());
        taper(limits.highVoltageTaper(), settings.highVoltageTaper());
        limit(limits.speedCap(), settings.speedCap());
        json.endObject();
    }

    private void limit(Limit limit, OptionalDouble set) {
        json.startObject(limit.id().key());
        json.text("unit", limit.id().unit().plain());
        limit(limit.id(), limit.value());
        json.text("bound_by", limit.binding().id().key());
        if (limit.id() == LimitId.MOTOR_BRAKE_CURRENT && isWetLess()) {
            json.number("limit_wet", wet.motorBrake());
            json.text("bound_by_wet", wet.heldBy().key());
        }
        set.ifPresent(value -> json.number("set", value));
        constraints("constraints", limit.constraints());
        json.endObject();
    }

    private boolean isWetLess() {
        return wet.bindsCurrent(judged.limits().of(LimitId.MOTOR_BRAKE_CURRENT));
    }

    /** With tolerances the least within them, and beside it the nominal one. */
    private void limit(LimitId id, double nominal) {
        json.number("limit", judged.limits().of(id));
        if (tolerated.isPresent()) {
            json.number("limit_nominal", nominal);
        }
    }

    private void packLimit(PackLimitSheet limit, OptionalDouble set) {
        Limit fixed = limit.fixed();
        json.startObject(limit.id().key());
        json.text("unit", "A");
        limit(limit.id(), fixed.value());
        json.number(
                "per_controller", file.build().controllers().each(judged.limits().of(limit.id())));
        json.text("bound_by", fixed.binding().id().key());
        json.number("set", limit.set());
        json.number("set_per_controller", set);
        String side = limit.isTaking() ? "below" : "above";
        json.number("holds_" + side + "_charge", limit.holdsTo());
        json.number("set_holds_" + side + "_charge", limit.setHoldsTo());
        BrakingTime braking = sheet.permitted().brakingTime();
        if (limit.isTaking() && Double.isFinite(braking.seconds())) {
            json.number("braking_time_s", braking.seconds());
            json.text("braking_time_of", braking.reason().key());
            json.number("braking_adds_charge", braking.charge());
        }
        constraints("constraints", fixed.constraints());
        json.number("end_of_use_charge", limit.endOfUse());
        constraints("constraints_at_end_of_use", limit.atEndOfUse().constraints());
        json.endObject();
    }

    private void taper(TaperLimit limit, Optional<Taper> set) {
        json.startObject(limit.id().key());
        json.text("unit", "V");
        limit.value()
                .ifPresent(
                        taper ->
                                json.numbers("limit", new double[] {taper.begins(), taper.ends()}));
        json.text("bound_by", limit.binding().id().key());
        set.ifPresent(taper -> json.numbers("set", new double[] {taper.begins(), taper.ends()}));
        constraints("constraints", limit.ends());
        json.number("band_least_V", limit.band().limit());
        json.endObject();
    }

    private void constraints(String name, List<Constraint> constraints) {
        json.startArray(name);
        for (Constraint constraint : constraints) {
            json.startObject();
            json.text("id", constraint.id().key());
            json.number("limit", constraint.limit());
            json.text("source", source(constraint));
            json.text("input", BuildFile.nameOf(constraint.decisive(), constraint.pack()));
            json.pack(constraint.pack());
            json.endObject();
        }
        json.endArray();
    }

    private String source(Constraint constraint) {
        return file.find(constraint.decisive(), constraint.pack())
                .map(Resolved::source)
                .orElse("derived");
    }

    /** For how long a current flows in what is told; without a time where it does for ever. */
    private void horizons() {
        json.startArray("horizons");
        for (TimedAnswer answer : TimedAnswer.values()) {
            double seconds = answer.horizon().seconds(sheet);
            json.startObject();
            json.text("answer", key(answer));
            json.text("lasts", key(answer.horizon()));
            if (Double.isFinite(seconds)) {
                json.number("time_s", seconds);
            }
            json.endObject();
        }
        json.endArray();
    }

    private static String key(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void packByCharge() {
        json.startArray("pack_by_charge");
        for (PackRow row : sheet.pack()) {
            json.startObject();
            json.number("charge", row.charge());
            json.number("open_circuit_V", row.openCircuitVoltage());
            json.number("resistance_ohm", row.resistance());
            json.number("cell_resistance_ohm", row.cellResistance());
            json.number("may_give_A", row.mayGive());
            json.text("give_bound_by", row.giveBoundBy().key());
            json.number("may_take_A", row.mayTake());
            json.text("take_bound_by", row.takeBoundBy().key());
            row.loadedVoltage().ifPresent(voltage -> json.number("loaded_V", voltage));
            json.number("top_speed_m_per_s", row.topSpeed().speed());
            json.endObject();
        }
        json.endArray();
    }

    private void brakeMap() {
        BrakeMap map = sheet.brakeMap();
        json.startObject("brake_map");
        json.numbers("charge", map.charges());
        json.numbers("speed_m_per_s", map.speeds());
        json.grid("asked_pack_current_A", map.askedPackCurrent());
        json.grid("pack_current_A", map.packCurrent());
        json.grid("motor_current_A", map.motorCurrent());
        json.grid("cell_voltage_V", map.cellVoltage());
        json.grid("wheel_force_N", map.wheelForce());
        json.numbers("may_take_A", map.mayTake());
        json.endObject();
    }

    private void stops() {
        json.startArray("stops");
        for (StopTable.Row row : sheet.stops()) {
            json.startObject();
            json.number("from_m_per_s", row.from());
            json.number("charge", row.charge());
            json.number("slope", 0.0);
            json.number("reaction_m", row.reaction());
            StopJson.writeWhole(json, row.outcome());
            json.endObject();
        }
        json.endArray();
    }

    private void firstStops() {
        json.startArray("first_stop");
        for (FirstStop stop : sheet.firstStops()) {
            json.startObject();
            json.number("from_m_per_s", stop.speed());
            json.number("charge", stop.charge());
            json.number("cells_C", stop.cellsC());
            json.number("pack_current_A", stop.packCurrent());
            json.number("cell_voltage_V", stop.cellVoltage());
            json.number("may_take_A", stop.mayTake());
            json.text("opens", stop.opening().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            json.number("opens_after_s", stop.opensAfter());
            json.number("left_m_per_s2", stop.leftDeceleration());
            stop.chargeTo().ifPresent(charge -> json.number("safe_charge", charge));
            stop.rideFirst().ifPresent(metres -> json.number("ride_first_m", metres));
            json.number("safe_regen_per_controller_A", stop.safeRegen());
            StopJson.writeWhole(json, stop.outcome());
            FirstStopJson.opened(json, stop);
            json.endObject();
        }
        json.endArray();
    }
}
