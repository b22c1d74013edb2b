package brakewright.cli;

/**
 * Two unequal packs for the trail board: the second is smaller and its cell is not of the tables.
 */
final class TwoPacks {

    static final String FIRST =
            """
            [[packs]]
            cell = "samsung-30q"
            series = 10
            parallel = 4
            resistance_spread = "10 %"

            [packs.protection]
            discharge_trip = "80 A"
            charge_trip = "25 A"
            cell_overvoltage_trip = "4.25 V"
            cell_undervoltage_trip = "2.8 V"

            [packs.wiring]
            fuse = "70 A"
            wire = "10 AWG"
            length = "0.4 m"
            plug = "xt90"

            """;

    static final String SECOND =
            """
            [[packs]]
            series = 10
            parallel = 3

            [packs.cell]
            chemistry = "nmc"
            capacity = "2.5 Ah"
            discharge_current = "20 A"
            charge_current = "4 A"
            voltage_max = "4.2 V"
            voltage_min = "2.5 V"
            resistance = "20 mΩ"
            mass = "45 g"

            """;

    private TwoPacks() {}

    static BuildText file(String battery) {
        return BuildText.withPacks(Example.TRAIL_BOARD, FIRST + SECOND + battery);
    }
}
