package brakewright.cli.text;

import brakewright.braking.Descent;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.heat.RepeatedStops;
import brakewright.spec.Build;
import brakewright.worksheet.Bearing;
import brakewright.worksheet.Both;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.HardestBraking;
import java.util.Optional;

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
        page.note(
                "hardest at any speed and charge in use; no friction brake; bears: without the"
                        + " margin of the limits");
        rows.row("", "present", "proposed", "bears");
        Both<Double> tyres = check.hardest().map(HardestBraking::tyreUse);
        Both<Double> felt = check.hardest().map(HardestBraking::felt);
        Bearing bears = check.bears();
        bears("electric brake on the tyres, dry", tyres, bears.tyresDry());
        bears("electric brake on the tyres, wet", tyres, bears.tyresWet());
        bears("tipping of the vehicle", felt, bears.tipping());
        bears("balance of a standing rider", felt, bears.riderBalance());
        bears("what the rider bears", felt, bears.rider());
    }

    /** Of the whole deceleration, the road's part included, or of the brake force alone. */
    private void bears(String name, Both<Double> met, double bound) {
        if (Double.isInfinite(bound)) {
            return;
        }
        row(name, met.map(value -> multiple(value, bound)), multiple(bound, bound));
    }

    private static String multiple(double value, double bound) {
        return Numbers.nearest(value, 2) + " g" + (value > bound ? " over" : "");
    }

    void printHeatAndDescent() {
        rows.heading("Heat, and the steepest slope in use");
        rows.row("", "present", "proposed", "");
        String limit = "limit " + Numbers.nearest(build.motor().windingLimitC(), 0) + " °C";
        row("winding after 1 stop", check.repeatedStops(1).map(CheckRide::winding), limit);
        row(
                "winding after 10 stops, speed regained",
                check.repeatedStops(10).map(CheckRide::winding),
                limit);
        Both<Descent> descent = check.descent();
        row(
                Numbers.percent(build.use().slope())
                        + " down at "
                        + units.speedText(build.use().speedMax()),
                descent.map(CheckRide::held),
                "");
        row("  held for", descent.map(this::reach), "");
        row("  what ends it", descent.map(CheckRide::end), "");
        row(
                "  charge then, from " + Numbers.percent(build.use().chargeFrom()),
                descent.map(CheckRide::charge),
                "");
        row("  winding reaches its limit after", descent.map(this::time), "");
        row(
                "  steepest slope held at that speed",
                descent.map(each -> slope(each.steepestHeld())),
                "");
        row(
                "  steepest that the pack bears for long",
                descent.map(each -> slope(each.steepestSustained())),
                "");
        String left = Numbers.nearest(check.leftDownhill(), 2) + " m/s²";
        rows.row("  slows there without the electric brake", left, left, "");
    }

    private void row(String name, Both<String> sides, String other) {
        rows.row(name, sides.present(), sides.proposed(), other);
    }

    private static String winding(Optional<RepeatedStops> stops) {
        return stops.map(
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
