package brakewright.buildfile;

import org.jspecify.annotations.Nullable;

/** What kind of quantity a build file asks for. */
enum Dimension {
    MASS("a mass"),
    LENGTH("a length"),
    AREA("an area"),
    SPEED("a speed"),
    ACCELERATION("an acceleration"),
    TIME("a time"),
    CURRENT("a current"),
    VOLTAGE("a voltage"),
    RESISTANCE("a resistance"),
    INDUCTANCE("an inductance"),
    CAPACITANCE("a capacitance"),
    CHARGE("a capacity"),
    SPEED_CONSTANT("a speed constant"),
    TEMPERATURE("a temperature"),
    TEMPERATURE_DIFFERENCE("a temperature difference"),
    THERMAL_RESISTANCE("a thermal resistance"),
    HEAT_CAPACITY("a heat capacity"),
    SPECIFIC_HEAT("a specific heat"),
    POWER("a power"),
    CONSUMPTION("a consumption"),
    VISCOUS_DRAG("a torque per angular speed");

    private final String text;

    Dimension(String text) {
        this.text = text;
    }

    String text() {
        return text;
    }

    /** Finds a dimension by its name without the article; null if there is none of that name. */
    static @Nullable Dimension named(String name) {
        for (Dimension dimension : values()) {
            String text = dimension.text;
            if (text.endsWith(name) && text.indexOf(' ') + 1 == text.length() - name.length()) {
                return dimension;
            }
        }
        return null;
    }
}
