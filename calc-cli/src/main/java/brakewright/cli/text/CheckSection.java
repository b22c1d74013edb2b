package brakewright.cli.text;

import java.util.function.Consumer;

/** The sections of a check, each by the name under which it is asked for. */
public enum CheckSection {
    /** Every setting, present and proposed. */
    SETTINGS("settings", CheckText::settings),
    /** What goes into the pack over its charge. */
    PACK("pack", CheckText::packCurrents),
    /** The brake over speed and charge. */
    BRAKE("brake", CheckText::brake),
    /** How it stops with the fullest pack. */
    STOPS("stops", CheckText::stops),
    /** What rider, tyres and balance bear. */
    FEEL("feel", CheckText::feel),
    /** The first stop after a full charge. */
    FIRST_STOP("first-stop", CheckText::firstStop),
    /** What is left where the pack refuses. */
    LEFT("left", CheckText::left),
    /** Heat, and the steepest slope in use. */
    HEAT("heat", CheckText::heat),
    /** Everything that was found for the proposal. */
    FINDINGS("findings", CheckText::findings);

    private final String key;
    private final Consumer<CheckText> printing;

    CheckSection(String key, Consumer<CheckText> printing) {
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

    void print(CheckText text) {
        printing.accept(text);
    }
}
