package brakewright.cli.words;

import brakewright.operation.RegenOvershoot;

/** Says what a hard grab sends into the packs before the regen limiter acts. */
final class SurgeWords {

    private final UnitSystem units;

    SurgeWords(UnitSystem units) {
        this.units = units;
    }

    String of(RegenOvershoot surge) {
        return "In a hard grab the regen limiter is late: for "
                + Numbers.time(surge.response())
                + " up to "
                + Numbers.nearest(surge.current(), 1)
                + " A go into the pack, "
                + Numbers.nearest(surge.surplus(), 1)
                + " A more than it then lets through, at "
                + Numbers.percent(surge.charge())
                + " charge ("
                + Numbers.nearest(surge.cellsC(), 0)
                + " °C) and top speed. "
                + Initial.capital(LimitWords.of(surge.trip(), surge.pack()))
                + " permits "
                + Numbers.down(surge.permitted(), 1)
                + " A, passed from "
                + units.speedDown(surge.speed())
                + " on"
                + opening(surge);
    }

    private static String opening(RegenOvershoot surge) {
        if (surge.opens()) {
            return ", and opens after "
                    + Numbers.time(surge.delay().orElseThrow())
                    + ": the electric brake vanishes.";
        }
        return surge.delay().isPresent()
                ? "; it waits "
                        + Numbers.time(surge.delay().getAsDouble())
                        + ", no less than that, and should not open."
                : "; how long it waits is not given (typically "
                        + Numbers.time(surge.typicalDelay())
                        + "). If that is less, it opens and the electric brake vanishes: look it up.";
    }
}
