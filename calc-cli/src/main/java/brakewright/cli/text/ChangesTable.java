package brakewright.cli.text;

import brakewright.braking.StopOutcome;
import brakewright.cli.words.EnteredWords;
import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.limit.LimitId;
import brakewright.operation.FirstStop;
import brakewright.spec.Settings;
import brakewright.worksheet.Bearing;
import brakewright.worksheet.Both;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.HardestBraking;
import brakewright.worksheet.OwnStop;
import brakewright.worksheet.ReturnRow;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What a proposal changes, in one table. */
final class ChangesTable {

    private static final int STOPS = 10;

    private final CheckSheet check;
    private final UnitSystem units;
    private final CheckRows rows;

    ChangesTable(CheckSheet check, UnitSystem units, CheckRows rows) {
        this.check = check;
        this.units = units;
        this.rows = rows;
    }

    void print() {
        rows.heading("What changes");
        rows.row("", "present", "proposed", "bound");
        changed(LimitId.MOTOR_DRIVE_CURRENT, Settings::motorDriveCurrent, CheckRows::amperes);
        changed(LimitId.MOTOR_BRAKE_CURRENT, Settings::motorBrakeCurrent, CheckRows::amperes);
        changed(LimitId.PACK_DISCHARGE_CURRENT, Settings::packDischargeCurrent, CheckRows::amperes);
        changed(LimitId.PACK_REGEN_CURRENT, Settings::packRegenCurrent, CheckRows::amperes);
        changed(
                LimitId.LOW_VOLTAGE_TAPER,
                Settings::lowVoltageTaper,
                taper -> taper.map(EnteredWords::volts).orElse("not set"));
        changed(
                LimitId.HIGH_VOLTAGE_TAPER,
                Settings::highVoltageTaper,
                taper -> taper.map(EnteredWords::volts).orElse("not set"));
        changed(LimitId.SPEED_CAP, Settings::speedCap, this::speed);
        rows.row(
                "brake safe for the pack up to a charge of",
                safe(check.safeChargePresent()),
                safe(check.safeChargeProposed()),
                "");
        flows();
        for (OwnStop stop : check.stopsRidden()) {
            row(
                    "stop, dry, nothing opens, at " + Numbers.percent(stop.charge()),
                    stop.distance().map(this::length),
                    "");
        }
        FirstStop before = check.present().firstStops().get(0);
        FirstStop after = check.proposed().firstStops().get(0);
        rows.row("first stop after a full charge", first(before), first(after), "");
        Bearing bears = check.bears();
        row(
                "hardest electric braking felt",
                check.hardest().map(HardestBraking::felt).map(ChangesTable::multiple),
                multiple(Math.min(bears.rider(), bears.riderBalance())));
        row(
                "winding after " + STOPS + " stops, speed regained",
                check.repeatedStops(STOPS)
                        .map(
                                stops ->
                                        stops.map(
                                                        heat ->
                                                                Numbers.nearest(heat.windingC(), 0)
                                                                        + " °C")
                                                .orElse("not known")),
                Numbers.nearest(check.proposed().build().motor().windingLimitC(), 0) + " °C");
        rows.row(
                "found anew, and mended",
                "",
                Integer.toString(check.findingsAdded().size()),
                check.findingsMended().size() + " mended");
    }

    private <T> void changed(LimitId id, Function<Settings, T> setting, Function<T, String> told) {
        T before = setting.apply(check.present().build().settings());
        T after = setting.apply(check.proposed().build().settings());
        if (!before.equals(after)) {
            rows.row(LimitWords.of(id), told.apply(before), told.apply(after), "");
        }
    }

    private void flows() {
        double[] charges =
                check.ridden().charges().stream().mapToDouble(Double::doubleValue).toArray();
        for (ReturnRow row : check.returned(charges)) {
            row(
                    "most into the pack, at " + Numbers.percent(row.charge()),
                    row.flows().map(each -> CheckRows.flow(each.current(), each.isExceeded())),
                    Numbers.down(row.mayTake(), 1) + " A");
        }
    }

    private void row(String name, Both<String> sides, String bound) {
        rows.row(name, sides.present(), sides.proposed(), bound);
    }

    private String speed(OptionalDouble cap) {
        return cap.isPresent() ? units.speedText(cap.getAsDouble()) : "not set";
    }

    private String length(OptionalDouble distance) {
        return distance.isPresent() ? units.lengthText(distance.getAsDouble()) : "does not stop";
    }

    private String first(FirstStop stop) {
        StopOutcome outcome = stop.opened().map(FirstStop.Opened::outcome).orElse(stop.outcome());
        return (outcome instanceof StopOutcome.Stopped stopped
                        ? units.lengthText(stopped.distance())
                        : "does not stop")
                + (stop.opening() == FirstStop.Opening.NOTHING ? "" : ", opens");
    }

    private static String safe(double charge) {
        return charge > 0.0 ? Numbers.down(100.0 * charge, 1) + " %" : "at none";
    }

    private static String multiple(double value) {
        return Double.isInfinite(value) ? "" : Numbers.nearest(value, 2) + " g";
    }
}
