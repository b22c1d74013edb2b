package brakewright.cli.text;

import brakewright.braking.Descent;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.spec.Build;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.HardestBraking;
import brakewright.worksheet.LeftBraking;
import brakewright.worksheet.Worksheet;

/** What rider, tyres and windings bear, and the descent. */
final class CheckRide {

    private final CheckSheet check;
    private final UnitSystem units;
    private final CheckRows rows;
    private final Page page;
    private final Build build;

    CheckRide(CheckSheet check, UnitSystem units, CheckRows rows, Page page) {
        this.check = check;
        this.units = units;
        this.rows = rows;
        this.page = page;
        this.build = check.proposed().build();
    }

    /** The hardest electric braking against what grip, balance and the rider bear. */
    void printFeel() {
        rows.heading("What the rider feels, and what grip and balance bear");
        page.line(
                "  hardest at any speed and charge in use; no friction brake; bears: without the"
                        + " margin of the limits");
        rows.row("", "present", "proposed", "bears");
        HardestBraking before = check.hardestPresent();
        HardestBraking after = check.hardestProposed();
        LoadTransfer transfer = new LoadTransfer(build.vehicle().axles());
        bears(
                "electric brake on the tyres, dry",
                before.tyreUse(),
                after.tyreUse(),
                transfer.brakingGrip(build.vehicle().grip()));
        bears(
                "electric brake on the tyres, wet",
                before.tyreUse(),
                after.tyreUse(),
                transfer.brakingGrip(build.vehicle().gripWet()));
        felt("tipping of the vehicle", transfer.brakingTip());
        felt("balance of a standing rider", RiderBalance.tip(build.rider()));
        felt("what the rider bears", build.criteria().riderDecelerationMax() / Gravity.STANDARD);
    }

    /** Of the whole deceleration, the road's part included. */
    private void felt(String name, double bound) {
        bears(name, check.hardestPresent().felt(), check.hardestProposed().felt(), bound);
    }

    private void bears(String name, double before, double after, double bound) {
        if (Double.isInfinite(bound)) {
            return;
        }
        rows.row(name, multiple(before, bound), multiple(after, bound), multiple(bound, bound));
    }

    private static String multiple(double value, double bound) {
        return Numbers.nearest(value, 2) + " g" + (value > bound ? " over" : "");
    }

    void printHeatAndDescent() {
        rows.heading("Heat, and the steepest slope in use");
        rows.row("", "present", "proposed", "");
        String limit = "limit " + Numbers.nearest(build.motor().windingLimitC(), 0) + " °C";
        rows.row(
                "winding after 1 stop",
                winding(check.present(), 1),
                winding(check.proposed(), 1),
                limit);
        rows.row(
                "winding after 10 stops, speed regained",
                winding(check.present(), 10),
                winding(check.proposed(), 10),
                limit);
        Descent before = check.descent(check.present());
        Descent after = check.descent(check.proposed());
        rows.row(
                Numbers.percent(build.use().slope())
                        + " down at "
                        + units.speedText(build.use().speedMax()),
                held(before),
                held(after),
                "");
        rows.row("  held for", reach(before), reach(after), "");
        rows.row("  what ends it", end(before), end(after), "");
        rows.row(
                "  charge then, from " + Numbers.percent(build.use().chargeFrom()),
                charge(before),
                charge(after),
                "");
        rows.row("  winding reaches its limit after", time(before), time(after), "");
        rows.row(
                "  steepest slope held at that speed",
                slope(before.steepestHeld()),
                slope(after.steepestHeld()),
                "");
        rows.row(
                "  steepest that the pack bears for long",
                slope(before.steepestSustained()),
                slope(after.steepestSustained()),
                "");
        String left =
                Numbers.nearest(
                                LeftBraking.downhill(
                                        build, build.use().speedMax(), build.use().slope()),
                                2)
                        + " m/s²";
        rows.row("  slows there without the electric brake", left, left, "");
    }

    private static String winding(Worksheet sheet, int stops) {
        return CheckSheet.repeatedStops(sheet, stops)
                .map(
                        heat ->
                                Numbers.nearest(heat.windingC(), 0)
                                        + " °C"
                                        + (heat.windingC() > heat.limitC() ? " over" : ""))
                .orElse("not known");
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
                : units.distanceDown(descent.distance());
    }

    private static String end(Descent descent) {
        return switch (descent.end()) {
            case NOT_HELD -> "-";
            case BRAKE_FADES -> "brake fades";
            case PACK_REFUSES -> "pack refuses";
            case FULL -> "pack full";
            case LOWEST_CHARGE -> "lowest charge";
            case NEVER -> "nothing";
        };
    }

    private static String charge(Descent descent) {
        return descent.isHeld()
                ? Numbers.percent(descent.endCharge())
                        + ", "
                        + Numbers.nearest(descent.endCellVoltage(), 2)
                        + " V"
                : "-";
    }

    private String time(Descent descent) {
        if (!descent.isHeld()) {
            return "-";
        }
        if (descent.windingTime().isPresent()) {
            return Numbers.time(descent.windingTime().getAsDouble());
        }
        return check.proposed().heat().known().isPresent() ? "never" : "not known";
    }

    private static String slope(double steepest) {
        return Double.isInfinite(steepest) ? "any" : Numbers.down(100.0 * steepest, 1) + " %";
    }
}
