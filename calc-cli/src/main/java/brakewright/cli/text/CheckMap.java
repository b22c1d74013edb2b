package brakewright.cli.text;

import brakewright.battery.BatteryModel;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.ride.Deceleration;
import brakewright.spec.Build;
import brakewright.worksheet.Check;
import java.util.List;
import java.util.Locale;

/** The present and the proposed brake over speed and charge, one line under the other. */
final class CheckMap {

    private static final int COLUMNS = 6;

    private final Check check;
    private final UnitSystem units;
    private final Page page;
    private final Build build;
    private final BatteryModel pack;
    private final double[] speeds;

    CheckMap(Check check, UnitSystem units, Page page) {
        this.check = check;
        this.units = units;
        this.page = page;
        this.build = check.proposed().build();
        this.pack = new BatteryModel(build.battery());
        this.speeds = ShownSpeeds.upTo(units, check.proposed().operation().topSpeed(), COLUMNS);
    }

    void printCurrents(Ink ink, List<Double> charges) {
        page.line(ink.heading("Current into the pack over speed and charge"));
        page.line("  asked: with no pack limit; sent: after it; braking in full [A]");
        heading("may take");
        for (double charge : charges) {
            PackState state = PackState.of(pack, charge, build.battery().temperatureC());
            double may =
                    check.proposed()
                            .limits()
                            .packRegen()
                            .valueAt(charge, build.battery().temperatureC());
            String at = Numbers.percent(charge);
            currents(at, "present asked", check.present().operation().brake(), state, may, true);
            currents("", "present sent", check.present().operation().brake(), state, may, false);
            currents("", "proposed asked", check.proposed().operation().brake(), state, may, true);
            currents("", "proposed sent", check.proposed().operation().brake(), state, may, false);
        }
        page.line("  !  more than the pack may take     -  drawn from the pack");
    }

    void printForces(Ink ink) {
        double charge = build.use().chargeFrom();
        PackState state = PackState.of(pack, charge, build.battery().temperatureC());
        page.line(
                ink.heading("Electric brake over speed at " + Numbers.percent(charge) + " charge"));
        heading("");
        forces("present", check.present().operation().brake(), state);
        forces("proposed", check.proposed().operation().brake(), state);
    }

    private void heading(String bound) {
        StringBuilder head = new StringBuilder(row("", units.speedUnit(), bound));
        for (double speed : speeds) {
            head.append(String.format(Locale.ROOT, "%8s ", Numbers.nearest(units.speed(speed), 0)));
        }
        page.line(head.toString());
    }

    private void currents(
            String charge,
            String name,
            ElectricBrake brake,
            PackState state,
            double may,
            boolean asked) {
        StringBuilder line =
                new StringBuilder(
                        row(charge, name, charge.isEmpty() ? "" : Numbers.down(may, 1) + " A"));
        for (double speed : speeds) {
            double current =
                    asked ? brake.askedPackCurrent(speed, state) : brake.packCurrent(speed, state);
            line.append(
                    String.format(
                            Locale.ROOT,
                            "%8s%s",
                            Numbers.nearest(current, 1),
                            current > may ? "!" : " "));
        }
        page.line(line.toString());
    }

    private void forces(String name, ElectricBrake brake, PackState state) {
        StringBuilder force = new StringBuilder(row("", name + ", wheel force [N]", ""));
        StringBuilder slowing = new StringBuilder(row("", name + ", with road [m/s²]", ""));
        for (double speed : speeds) {
            double newtons = brake.powertrain().brakeForce(brake.motorCurrent(speed, state), speed);
            force.append(String.format(Locale.ROOT, "%8s ", Numbers.nearest(newtons, 0)));
            slowing.append(
                    String.format(
                            Locale.ROOT,
                            "%8s ",
                            Numbers.nearest(Deceleration.electric(build, brake, speed, state), 2)));
        }
        page.line(force.toString());
        page.line(slowing.toString());
    }

    private static String row(String charge, String name, String bound) {
        return charge.isEmpty() && bound.isEmpty()
                ? String.format(Locale.ROOT, "  %-34s", name.isEmpty() ? "" : "        " + name)
                : String.format(Locale.ROOT, "  %6s  %-16s %8s ", charge, name, bound);
    }
}
