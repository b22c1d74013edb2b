package brakewright.cli.text;

import brakewright.battery.BatteryModel;
import brakewright.cli.buildfile.BuildFile;
import brakewright.cli.buildfile.Judged;
import brakewright.cli.buildfile.Tolerated;
import brakewright.cli.words.Cautions;
import brakewright.cli.words.FindingWords;
import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.limit.Limit;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.review.Finding;
import brakewright.review.FirstStop;
import brakewright.review.Verdict;
import brakewright.ride.Deceleration;
import brakewright.ride.Descent;
import brakewright.ride.RepeatedStops;
import brakewright.ride.Stop;
import brakewright.ride.StopOutcome;
import brakewright.ride.Surroundings;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.worksheet.Check;
import brakewright.worksheet.StopTable;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A proposal beside the present settings, as text: the answer first. */
public final class CheckText {

    private static final String ROW = "  %-44s %16s %16s %16s";

    private static final int SPEED_STEPS = 40;

    private final BuildFile file;
    private final Check check;
    private final Judged judged;
    private final UnitSystem units;
    private final Ink ink;
    private final Build build;
    private final BatteryModel pack;
    private final Page page;

    /**
     * Prepares the text.
     *
     * @param file the build file
     * @param check the comparison, with nominal inputs
     * @param tolerated what the tolerances stated make of the proposal; empty where none is
     * @param units for speeds and distances
     * @param ink how to put it on the page
     */
    public CheckText(
            BuildFile file, Check check, Optional<Tolerated> tolerated, UnitSystem units, Ink ink) {
        this.file = file;
        this.check = check;
        this.judged = Judged.of(check.proposed(), tolerated);
        this.units = units;
        this.ink = ink;
        this.page = new Page(ink);
        this.build = check.proposed().build();
        this.pack = new BatteryModel(build.battery());
    }

    /**
     * Writes the text.
     *
     * @return lines of at most 100 columns
     */
    public String text() {
        page.line(ink.heading(file.title() + ": the proposal"));
        page.blank();
        answer();
        page.blank();
        settings();
        page.blank();
        packCurrents();
        page.blank();
        CheckMap map = new CheckMap(check, units, page);
        map.printCurrents(ink, charges());
        page.blank();
        map.printForces(ink);
        page.blank();
        stops();
        page.blank();
        feel();
        page.blank();
        firstStop();
        page.blank();
        heatAndDescent();
        page.blank();
        findings();
        page.blank();
        page.line(ink.heading("Cautions"));
        for (String caution : Cautions.braking()) {
            page.paragraph("  -", 4, caution);
        }
        return page.text();
    }

    private void answer() {
        Verdict verdict = judged.review().verdict();
        Ink.Tone tone =
                switch (verdict.outcome()) {
                    case WITHIN_LIMITS -> Ink.Tone.GOOD;
                    case CONDITIONAL -> Ink.Tone.DOUBTFUL;
                    case OUTSIDE_LIMITS -> Ink.Tone.BAD;
                };
        String word =
                switch (verdict.outcome()) {
                    case WITHIN_LIMITS -> "SAFE";
                    case CONDITIONAL -> "SAFE BELOW A CONDITION";
                    case OUTSIDE_LIMITS -> "NOT SAFE";
                };
        page.paragraph("Answer: " + ink.paint(tone, word), 2, "");
        for (String sentence : new VerdictWords(judged.build(), units).of(judged.review())) {
            page.paragraph("", 2, sentence);
        }
        if (!judged.word().equals(Judged.word(check.proposed().review()))) {
            page.paragraph(
                    "",
                    2,
                    "This is at the unfavourable corner of the tolerances stated; with nominal"
                            + " values it would be: "
                            + Judged.word(check.proposed().review())
                            + ".");
        }
        page.paragraph("", 2, buys());
        check.uselessAbove()
                .ifPresent(
                        speed ->
                                page.paragraph(
                                        "",
                                        2,
                                        "Above "
                                                + units.speedDown(speed)
                                                + " at "
                                                + Numbers.percent(build.use().chargeFrom())
                                                + " charge raising the motor brake current is"
                                                + " useless: there the pack limit decides how hard"
                                                + " it brakes."));
        page.paragraph(
                "",
                2,
                "The highest motor brake current within limits is "
                        + Numbers.down(check.highestBrake(), 1)
                        + " A, held down by "
                        + LimitWords.of(check.highestBrakeBoundBy())
                        + ". "
                        + highestRegen());
    }

    private String highestRegen() {
        Limit regen =
                check.proposed().limits().packRegen().staticPart(build.battery().temperatureC());
        return "The highest pack regen current is "
                + Numbers.down(regen.value() / build.controllers().count(), 1)
                + " A per controller, held down by "
                + LimitWords.of(regen.binding().id())
                + ", and safe up to "
                + Numbers.down(
                        100.0
                                * check.proposed()
                                        .limits()
                                        .packRegen()
                                        .chargeBound(regen.value(), build.battery().temperatureC()),
                        1)
                + " % charge.";
    }

    /** What the proposal buys in metres at the highest speed, at the fullest and at half charge. */
    private String buys() {
        double top = check.proposed().operation().topSpeed();
        double full = build.use().chargeFrom();
        double half = middle();
        return "From "
                + units.speedText(top)
                + " it "
                + gain(top, full)
                + " at "
                + Numbers.percent(full)
                + " charge and "
                + gain(top, half)
                + " at "
                + Numbers.percent(half)
                + ", reaction apart.";
    }

    private String gain(double speed, double charge) {
        OptionalDouble before = distance(check.present(), speed, charge);
        OptionalDouble after = distance(check.proposed(), speed, charge);
        if (before.isEmpty() || after.isEmpty()) {
            return "does not stop the vehicle";
        }
        double gain = before.getAsDouble() - after.getAsDouble();
        return (gain >= 0.0 ? "shortens the stop by " : "lengthens the stop by ")
                + units.lengthText(Math.abs(gain))
                + " to "
                + units.lengthText(after.getAsDouble());
    }

    private static OptionalDouble distance(Worksheet sheet, double speed, double charge) {
        return stop(sheet, Surroundings.of(sheet.build()), speed, charge)
                .map(stopped -> OptionalDouble.of(stopped.distance()))
                .orElse(OptionalDouble.empty());
    }

    private static Optional<StopOutcome.Stopped> stop(
            Worksheet sheet, Surroundings surroundings, double speed, double charge) {
        StopOutcome outcome =
                new Stop(sheet.build(), sheet.operation().brake(), surroundings)
                        .from(speed, charge);
        return outcome instanceof StopOutcome.Stopped stopped
                ? Optional.of(stopped)
                : Optional.empty();
    }

    private void settings() {
        page.line(ink.heading("Settings"));
        row("", "present", "proposed", "");
        changed("motor drive current, per motor", Settings::motorDriveCurrent);
        changed("motor brake current, per motor", Settings::motorBrakeCurrent);
        changed("pack discharge current, per controller", Settings::packDischargeCurrent);
        changed("pack regen current, per controller", Settings::packRegenCurrent);
        taper("low-voltage taper", Settings::lowVoltageTaper);
        taper("high-voltage taper", Settings::highVoltageTaper);
        row(
                "safe for the pack up to a charge of",
                Numbers.down(100.0 * check.safeChargePresent(), 1) + " %",
                Numbers.down(100.0 * check.safeChargeProposed(), 1) + " %",
                "");
    }

    private void changed(String name, Function<Settings, OptionalDouble> setting) {
        OptionalDouble before = setting.apply(check.present().build().settings());
        OptionalDouble after = setting.apply(build.settings());
        row(name, amperes(before), amperes(after), before.equals(after) ? "" : "changed");
    }

    private static String amperes(OptionalDouble value) {
        return value.isPresent() ? Numbers.nearest(value.getAsDouble(), 1) + " A" : "not set";
    }

    private void taper(String name, Function<Settings, Optional<Taper>> setting) {
        Optional<Taper> before = setting.apply(check.present().build().settings());
        Optional<Taper> after = setting.apply(build.settings());
        row(name, volts(before), volts(after), before.equals(after) ? "" : "changed");
    }

    private static String volts(Optional<Taper> taper) {
        return taper.map(
                        each ->
                                Numbers.nearest(each.begins(), 1)
                                        + " to "
                                        + Numbers.nearest(each.ends(), 1)
                                        + " V")
                .orElse("not set");
    }

    private void packCurrents() {
        page.line(ink.heading("Current into the pack, from the highest speed"));
        row("", "present", "proposed", "may take");
        for (double charge : charges()) {
            PackState state = PackState.of(pack, charge, build.battery().temperatureC());
            double top = check.proposed().operation().topSpeed();
            double may =
                    check.proposed()
                            .limits()
                            .packRegen()
                            .valueAt(charge, build.battery().temperatureC());
            row(
                    "at " + Numbers.percent(charge) + " charge",
                    flow(check.present().operation().brake().greatestReturn(top, state), may),
                    flow(check.proposed().operation().brake().greatestReturn(top, state), may),
                    Numbers.down(may, 1) + " A");
            row(
                    "  each cell",
                    cell(check.present(), top, state),
                    cell(check.proposed(), top, state),
                    "");
        }
    }

    private String cell(Worksheet sheet, double top, PackState state) {
        double current = sheet.operation().brake().greatestReturn(top, state);
        return Numbers.nearest(pack.cellCurrent(current, state.charge(), state.temperatureC()), 1)
                + " A, "
                + Numbers.nearest(
                        pack.cellVoltage(current, state.charge(), state.temperatureC()), 2)
                + " V";
    }

    private static String flow(double current, double may) {
        return Numbers.nearest(current, 1) + " A" + (current > may ? " over" : "");
    }

    private List<Double> charges() {
        List<Double> shown = new ArrayList<>();
        for (double charge : new double[] {1.0, 0.95, 0.9, 0.8, 0.5}) {
            if (charge < build.use().chargeFrom() && charge >= build.use().chargeTo()) {
                shown.add(charge);
            }
        }
        shown.add(0, build.use().chargeFrom());
        return shown;
    }

    private void stops() {
        page.line(
                ink.heading(
                        "Stopping distance at "
                                + Numbers.percent(build.use().chargeFrom())
                                + " charge, level dry road"));
        row("", "present", "proposed", "reaction adds");
        double reaction = build.use().effort().reaction();
        for (double speed : StopTable.speeds(check.proposed().operation().topSpeed())) {
            row(
                    "from " + units.speedText(speed),
                    length(distance(check.present(), speed, build.use().chargeFrom())),
                    length(distance(check.proposed(), speed, build.use().chargeFrom())),
                    units.lengthText(speed * reaction));
        }
    }

    private String length(OptionalDouble metres) {
        return metres.isPresent() ? units.lengthText(metres.getAsDouble()) : "does not stop";
    }

    /** The highest deceleration over speed against what grip, balance and the rider bear. */
    private void feel() {
        page.line(ink.heading("What the rider feels, and what grip and balance bear"));
        row("", "present", "proposed", "bears");
        double before = hardest(check.present());
        double after = hardest(check.proposed());
        LoadTransfer transfer = new LoadTransfer(build.vehicle().axles());
        bears(
                "hardest braking, dry grip",
                before,
                after,
                transfer.brakingGrip(build.vehicle().grip()));
        bears(
                "hardest braking, wet grip",
                before,
                after,
                transfer.brakingGrip(build.vehicle().gripWet()));
        bears("tipping of the vehicle", before, after, transfer.brakingTip());
        bears("balance of a standing rider", before, after, RiderBalance.tip(build.rider()));
        bears(
                "what the rider bears",
                before,
                after,
                build.criteria().riderDecelerationMax() / Gravity.STANDARD);
    }

    private void bears(String name, double before, double after, double bound) {
        if (Double.isInfinite(bound)) {
            return;
        }
        row(name, multiple(before, bound), multiple(after, bound), multiple(bound, bound));
    }

    private static String multiple(double value, double bound) {
        return Numbers.nearest(value, 2) + " g" + (value > bound ? " over" : "");
    }

    private double hardest(Worksheet sheet) {
        ElectricBrake brake = sheet.operation().brake();
        PackState state = PackState.of(pack, middle(), build.battery().temperatureC());
        double hardest = 0.0;
        for (int step = 1; step <= SPEED_STEPS; step++) {
            double speed = sheet.operation().topSpeed() * step / SPEED_STEPS;
            hardest = Math.max(hardest, Deceleration.electric(build, brake, speed, state));
        }
        return hardest / Gravity.STANDARD;
    }

    private void firstStop() {
        page.line(ink.heading("First stop after a full charge, cells as they are"));
        FirstStop before = check.present().firstStops().get(0);
        FirstStop after = check.proposed().firstStops().get(0);
        row("", "present", "proposed", "may take");
        row(
                "into the pack",
                flow(before.packCurrent(), before.mayTake()),
                flow(after.packCurrent(), after.mayTake()),
                Numbers.down(after.mayTake(), 1) + " A");
        row("what opens first", opening(before), opening(after), "");
    }

    private static String opening(FirstStop stop) {
        return switch (stop.opening()) {
            case NOTHING -> "nothing";
            case CHARGE_TRIP -> "charge trip";
            case OVERVOLTAGE_TRIP -> "over-voltage";
        };
    }

    private void heatAndDescent() {
        page.line(ink.heading("Heat, and the steepest slope in use"));
        row("", "present", "proposed", "");
        for (int stops : new int[] {1, 10}) {
            row(
                    "winding after " + stops + (stops == 1 ? " stop" : " stops in a row"),
                    winding(check.present(), stops),
                    winding(check.proposed(), stops),
                    "limit " + Numbers.nearest(build.motor().windingLimitC(), 0) + " °C");
        }
        Descent before = descent(check.present());
        Descent after = descent(check.proposed());
        String where =
                Numbers.percent(build.use().slope())
                        + " down at "
                        + units.speedText(build.use().speedMax());
        row(where, held(before), held(after), "");
        row("  held for", reach(before), reach(after), "");
        row(
                "  charge climbs to, from " + Numbers.percent(middle()),
                climbed(before),
                climbed(after),
                "");
        row("  winding reaches its limit after", time(before), time(after), "");
        row("  steepest slope held at that speed", slope(before), slope(after), "");
        row("  left there if the pack refuses", left(), left(), "");
    }

    private static String winding(Worksheet sheet, int stops) {
        return RepeatedStops.of(
                        sheet.build(),
                        sheet.operation().brake(),
                        sheet.operation().drive(),
                        sheet.operation().topSpeed(),
                        0.5 * (sheet.build().use().chargeFrom() + sheet.build().use().chargeTo()),
                        stops)
                .map(
                        heat ->
                                Numbers.nearest(heat.windingC(), 0)
                                        + " °C"
                                        + (heat.windingC() > heat.limitC() ? " over" : ""))
                .orElse("not known");
    }

    /** The steepest slope in use, from half way through the charge in use. */
    private Descent descent(Worksheet sheet) {
        return Descent.of(
                sheet.build(),
                sheet.operation().brake(),
                sheet.limits(),
                build.battery().temperatureC(),
                build.use().slope(),
                build.use().speedMax(),
                middle());
    }

    /** Half way through the charge in use. */
    private double middle() {
        return 0.5 * (build.use().chargeFrom() + build.use().chargeTo());
    }

    private static String held(Descent descent) {
        return descent.isHeld() ? "held" : "gains speed";
    }

    private String reach(Descent descent) {
        if (!descent.isHeld()) {
            return "-";
        }
        return Double.isInfinite(descent.distance())
                ? "any distance"
                : units.distanceText(descent.distance());
    }

    private static String climbed(Descent descent) {
        return descent.isHeld()
                ? Numbers.percent(descent.endCharge())
                        + ", "
                        + Numbers.nearest(descent.endCellVoltage(), 2)
                        + " V"
                : "-";
    }

    private static String time(Descent descent) {
        if (!descent.isHeld()) {
            return "-";
        }
        return descent.windingTime().isPresent()
                ? Numbers.time(descent.windingTime().getAsDouble())
                : "never";
    }

    /**
     * What road and friction brake leave of the slope's pull; negative where the vehicle gains
     * speed.
     */
    private String left() {
        double road = RoadLoad.of(build).force(build.use().speedMax(), -build.use().slope(), 0.0);
        double slowing = road / build.inertia() + build.vehicle().frictionBrake().orElse(0.0);
        return Numbers.nearest(slowing, 2) + " m/s²";
    }

    private static String slope(Descent descent) {
        return Double.isInfinite(descent.steepestHeld())
                ? "any"
                : Numbers.down(100.0 * descent.steepestHeld(), 1) + " %";
    }

    private void findings() {
        page.line(ink.heading("Findings for the proposal"));
        FindingWords words = new FindingWords(build, units);
        for (Finding finding : check.proposed().review().findings()) {
            page.paragraph(
                    "  " + finding.signal().key().toUpperCase(Locale.ROOT), 12, words.of(finding));
        }
    }

    private void row(String name, String present, String proposed, String other) {
        page.line(
                String.format(
                        Locale.ROOT,
                        ROW,
                        ink.settle(name),
                        ink.settle(present),
                        ink.settle(proposed),
                        ink.settle(other)));
    }
}
