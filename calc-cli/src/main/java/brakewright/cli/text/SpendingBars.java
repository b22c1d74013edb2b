package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.SpendingWords;
import brakewright.cli.words.UnitSystem;
import brakewright.driving.Cruise;
import brakewright.powertrain.Spending;
import java.util.List;
import java.util.Locale;

/** Where the charge is spent at the cruise speed. */
final class SpendingBars {

    private static final int COLUMNS_FOR_ALL = 50;

    private final UnitSystem units;
    private final Page page;

    SpendingBars(UnitSystem units, Page page) {
        this.units = units;
        this.page = page;
    }

    void print(Cruise cruise) {
        boolean held = cruise.distanceHeld() > 0.0;
        Spending spent = held ? cruise.spentHeld() : cruise.spent();
        if (!(spent.sum() > 0.0)) {
            page.line("  not computed: where the charge is spent, for the ride takes none");
            return;
        }
        page.line(
                "  where the charge is spent "
                        + (held
                                ? "at the cruise speed, " + units.speedText(cruise.speed())
                                : "on the way, slower than the cruise speed"));
        SpendingWords.parts(spent).forEach(this::bar);
    }

    private void bar(String name, double share) {
        int length = (int) Math.round(Math.max(0.0, Math.min(1.0, share)) * COLUMNS_FOR_ALL);
        String percent = Numbers.nearest(100.0 * share, 1);
        page.row(
                String.format(
                        Locale.ROOT, "    %-20s %6s %%  %s", name, percent, "#".repeat(length)),
                List.of(name, percent + " %"));
    }
}
