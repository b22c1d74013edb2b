package brakewright.cli.text;

import brakewright.cli.words.LimitWords;
import brakewright.cli.words.MeasureWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.powertrain.TopSpeed;
import brakewright.spec.Use;
import brakewright.worksheet.DriveSheet;
import brakewright.worksheet.HeldBy;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What the drive achieves, quarter by quarter of the charge. */
final class DriveTable {

    private static final String ROW = "  %6s %10s  %-17s %10s %10s %10s  %-13s %8s";

    private final Worksheet sheet;
    private final UnitSystem units;
    private final Page page;
    private final Use use;

    DriveTable(Worksheet sheet, UnitSystem units, Page page) {
        this.sheet = sheet;
        this.units = units;
        this.page = page;
        this.use = sheet.build().use();
    }

    void print(Ink ink) {
        List<DriveSheet> rows = sheet.driveByCharge();
        page.line(ink.heading("Driving, quarter by quarter"));
        page.paragraph(
                "",
                2,
                "with all that the settings permit, the speed cap left out; level road, calm air,"
                        + " cells at "
                        + Numbers.nearest(sheet.build().battery().temperatureC(), 0)
                        + " °C");
        page.row(
                ROW,
                "",
                "",
                "",
                "time to",
                "top speed",
                "",
                "",
                ink.isNarrow() ? "max." : "steepest");
        page.row(
                ROW,
                "charge",
                "launch",
                "held down by",
                units.speedText(use.riding().cruiseSpeed()),
                "for 10 s",
                "lasting",
                "held down by",
                "climb");
        rows.forEach(this::row);
        cap(rows);
        ground(rows);
        wind(rows);
        slope(rows);
        new ThrustTable(sheet, units, ink, page).print(rows);
    }

    /** Who holds a drive down, in few letters. */
    static String holder(TopSpeed.Holder holder) {
        return switch (holder) {
            case MOTOR_CURRENT -> "motor current";
            case PACK_CURRENT -> "pack current";
            case VOLTAGE -> "pack voltage";
            case STANDSTILL -> "stands still";
        };
    }

    private void row(DriveSheet row) {
        page.row(
                ROW,
                Numbers.percent(row.charge()),
                MeasureWords.acceleration(units, row.launch()),
                LimitWords.brief(row.launchBoundBy()),
                row.toCruise().isPresent() ? Numbers.time(row.toCruise().get().time()) : "never",
                units.speedText(row.topSpeedFlat().speed()),
                units.speedText(row.lastingFlat().speed()),
                holder(row.lastingFlat().holder()),
                steepest(row.climb().steepest()));
    }

    static String steepest(double slope) {
        return Double.isInfinite(slope) ? "any" : Numbers.down(100.0 * slope, 1) + " %";
    }

    private void cap(List<DriveSheet> rows) {
        OptionalDouble cap = sheet.build().settings().speedCap();
        if (cap.isPresent()
                && rows.stream().anyMatch(row -> row.topSpeedFlat().speed() > cap.getAsDouble())) {
            page.paragraph(
                    "",
                    2,
                    "Of these top speeds no more than the speed cap set, "
                            + units.speedText(cap.getAsDouble())
                            + ", is used.");
        }
    }

    private void ground(List<DriveSheet> rows) {
        List<DriveSheet> held = rows.stream().filter(DriveSheet::isLaunchHeldByGround).toList();
        if (held.isEmpty()) {
            return;
        }
        String what = ground(held.get(0).launchBoundBy());
        page.paragraph(
                "",
                2,
                "At the start "
                        + what
                        + " before the thrust is exhausted"
                        + (held.size() == rows.size()
                                ? ""
                                : ", down to "
                                        + Numbers.percent(held.get(held.size() - 1).charge())
                                        + " charge")
                        + ": the launch told is what can be used, and no more should be asked"
                        + " for.");
    }

    private static String ground(HeldBy holder) {
        return switch (((HeldBy.AConstraint) holder).id()) {
            case GRIP -> "a driven wheel spins";
            case TIPPING -> "the vehicle tips backwards";
            default -> "the rider loses balance";
        };
    }

    private void wind(List<DriveSheet> rows) {
        double wind = use.riding().headwind();
        if (wind == 0.0) {
            return;
        }
        DriveSheet full = rows.get(0);
        DriveSheet empty = rows.get(rows.size() - 1);
        page.paragraph(
                "",
                2,
                (wind > 0.0
                                ? "Against a headwind of " + units.speedText(wind)
                                : "With a wind of " + units.speedText(-wind) + " from behind")
                        + " the lasting top speed is "
                        + units.speedText(full.lastingWind().speed())
                        + " at "
                        + Numbers.percent(full.charge())
                        + " charge and "
                        + units.speedText(empty.lastingWind().speed())
                        + " at "
                        + Numbers.percent(empty.charge())
                        + ".");
    }

    private void slope(List<DriveSheet> rows) {
        if (use.slope() == 0.0) {
            return;
        }
        DriveSheet full = rows.get(0);
        DriveSheet empty = rows.get(rows.size() - 1);
        page.paragraph(
                "",
                2,
                "The steepest slope in use ("
                        + Numbers.percent(use.slope())
                        + (use.slopeLength() > 0.0
                                ? ", " + units.lengthText(use.slopeLength()) + " long"
                                : "")
                        + "): "
                        + (full.climb().speedUp() > 0.0 || empty.climb().speedUp() > 0.0
                                ? up(full)
                                        + ". "
                                        + (rows.size() > 1 ? capital(up(empty)) + "." : "")
                                : "it is not climbed."));
    }

    private static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private String up(DriveSheet row) {
        String at = "at " + Numbers.percent(row.charge()) + " charge ";
        if (!(row.climb().speedUp() > 0.0)) {
            return at + "it is not climbed";
        }
        String time = use.slopeLength() > 0.0 ? " in " + Numbers.time(row.climb().timeUp()) : "";
        String winding =
                row.climb().lastsUp().isPresent()
                        ? "a cold winding lasts "
                                + Numbers.time(row.climb().lastsUp().getAsDouble())
                                + (row.climb().lastsUp().getAsDouble() < row.climb().timeUp()
                                        ? ", too short"
                                        : "")
                        : sheet.heat().known().isPresent()
                                ? "the winding bears it for any time"
                                : "how long the winding lasts is not computed (the motor's thermal"
                                        + " figures are not given)";
        return at
                + "it is climbed at "
                + units.speedText(row.climb().speedUp())
                + time
                + "; "
                + winding;
    }
}
