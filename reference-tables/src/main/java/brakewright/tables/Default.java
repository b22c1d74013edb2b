package brakewright.tables;

import java.util.Map;

/**
 * What is taken where a build file says nothing.
 *
 * @param key dotted key of the build file
 * @param when facts of the build that must hold, by name; empty if it holds for every build
 * @param figure the value taken, with its unit and provenance
 */
public record Default(String key, Map<String, String> when, Figure figure) {

    /**
     * Returns the value taken.
     *
     * @return the value, in the unit of {@link #figure()}
     */
    public double value() {
        return figure.value();
    }

    boolean matches(Map<String, String> facts) {
        for (Map.Entry<String, String> condition : when.entrySet()) {
            if (!condition.getValue().equals(facts.get(condition.getKey()))) {
                return false;
            }
        }
        return true;
    }

    /** Whether one build could meet both, neither being the more specific. */
    boolean rivals(Default other) {
        if (when.size() != other.when.size()) {
            return false;
        }
        for (Map.Entry<String, String> condition : when.entrySet()) {
            String value = other.when.get(condition.getKey());
            if (value != null && !value.equals(condition.getValue())) {
                return false;
            }
        }
        return true;
    }
}
