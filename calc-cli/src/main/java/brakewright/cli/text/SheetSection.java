package brakewright.cli.text;

import brakewright.cli.doubt.HeatSpreads;
import java.util.function.Consumer;

/**
 * The sections of the worksheet, each by the name under which it is asked for. A new one is a class
 * that prints it and a line here.
 */
public enum SheetSection {
    /** The pack over its charge. */
    PACK("pack", to -> new PackTable(to.sheet(), to.page()).print(to.ink())),
    /** Several packs, one by one. */
    PACKS("packs", SheetSection::packs),
    /** The brake over speed and charge. */
    BRAKE("brake", to -> new BrakeTable(to.sheet(), to.units(), to.ink(), to.page()).print()),
    /** The first stop after a full charge. */
    FIRST_STOP(
            "first-stop",
            to -> new FirstStopText(to.sheet(), to.units(), to.page()).print(to.ink())),
    /** Launch, top speed, climbing and thrust. */
    DRIVE("drive", to -> new DriveTable(to.sheet(), to.units(), to.page()).print(to.ink())),
    /** The voltage under load. */
    SAG("sag", to -> new SagTable(to.sheet(), to.sheet().sag(), to.page()).print(to.ink())),
    /** How far it goes. */
    RANGE(
            "range",
            to ->
                    new RangeTable(to.sheet(), to.sheet().range(), to.units(), to.page())
                            .print(to.ink())),
    /** How warm motor and pack get. */
    HEAT(
            "heat",
            to ->
                    new HeatText(
                                    to.sheet(),
                                    HeatSpreads.of(to.asked().file()),
                                    to.units(),
                                    to.page())
                            .print(to.ink())),
    /** What is not known exactly. */
    DOUBTS("doubts", to -> new DoubtsText(to).print()),
    /** Everything that was found. */
    FINDINGS("findings", to -> new FindingsText(to).print()),
    /** What the build file does not say. */
    ASSUMED("assumed", to -> new AssumedText(to).print());

    private final String key;
    private final Consumer<Showing> printing;

    SheetSection(String key, Consumer<Showing> printing) {
        this.key = key;
        this.printing = printing;
    }

    /**
     * Returns the name by which it is asked for.
     *
     * @return lower case with hyphens
     */
    public String key() {
        return key;
    }

    void print(Showing showing) {
        printing.accept(showing);
    }

    private static void packs(Showing to) {
        if (to.sheet().build().battery().isOnePack()) {
            to.page().line(to.ink().heading("The packs, one by one"));
            to.page().note("There is one pack: it carries all that flows.");
        } else {
            new SharingTable(to.sheet(), to.page()).print(to.ink());
        }
    }
}
