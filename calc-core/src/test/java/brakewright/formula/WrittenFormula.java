package brakewright.formula;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/**
 * Evaluates a formula as it is written for a reader, with the numbers of its terms put in: a small
 * recursive descent that shares nothing with the calculation.
 */
public final class WrittenFormula {

    private static final Map<String, DoubleUnaryOperator> FUNCTIONS =
            Map.of(
                    "abs", Math::abs,
                    "exp", Math::exp,
                    "ln", Math::log,
                    "tan", Math::tan,
                    "asin", Math::asin,
                    "atan", Math::atan);

    private final String text;
    private final Map<String, Double> terms;
    private final Set<String> used = new TreeSet<>();
    private int at;

    private WrittenFormula(String text, Map<String, Double> terms) {
        this.text = text.replace(" ", "");
        this.terms = terms;
    }

    /**
     * What a formula gives.
     *
     * @param value the value
     * @param used the symbols that it names
     */
    public record Evaluated(double value, Set<String> used) {}

    public static Evaluated evaluate(String formula, Map<String, Double> terms) {
        WrittenFormula written = new WrittenFormula(formula, terms);
        double value = written.sum();
        if (written.at < written.text.length()) {
            throw new IllegalArgumentException(
                    formula + " is not understood from " + written.text.substring(written.at));
        }
        return new Evaluated(value, written.used);
    }

    private double sum() {
        double value = product();
        while (true) {
            if (take('+')) {
                value += product();
            } else if (take('−')) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = signed();
        while (true) {
            if (take('·')) {
                value *= signed();
            } else if (take('/')) {
                value /= signed();
            } else {
                return value;
            }
        }
    }

    private double signed() {
        return take('−') ? -power() : power();
    }

    private double power() {
        double value = atom();
        while (true) {
            if (take('²')) {
                value *= value;
            } else if (take('^')) {
                value = Math.pow(value, atom());
            } else {
                return value;
            }
        }
    }

    private double atom() {
        if (take('(')) {
            double value = sum();
            expect(')');
            return value;
        }
        if (take('√')) {
            return Math.sqrt(atom());
        }
        if (take('½')) {
            return 0.5;
        }
        return Character.isDigit(peek()) ? number() : named();
    }

    private double number() {
        int from = at;
        while (Character.isDigit(peek()) || peek() == '.') {
            at++;
        }
        return Double.parseDouble(text.substring(from, at));
    }

    private double named() {
        int from = at;
        while (Character.isLetterOrDigit(peek()) || peek() == '_') {
            at++;
        }
        String name = text.substring(from, at);
        if (name.equals("π")) {
            return Math.PI;
        }
        if (take('(')) {
            return called(name);
        }
        Double value = terms.get(name);
        if (value == null) {
            throw new IllegalArgumentException(text + " has no term for \"" + name + "\"");
        }
        used.add(name);
        return value;
    }

    private double called(String name) {
        double value = sum();
        if (name.equals("min") || name.equals("max")) {
            while (take(',')) {
                double other = sum();
                value = name.equals("min") ? Math.min(value, other) : Math.max(value, other);
            }
        } else {
            DoubleUnaryOperator function = FUNCTIONS.get(name);
            if (function == null) {
                throw new IllegalArgumentException(text + " calls " + name);
            }
            value = function.applyAsDouble(value);
        }
        expect(')');
        return value;
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private boolean take(char letter) {
        boolean is = peek() == letter;
        at += is ? 1 : 0;
        return is;
    }

    private void expect(char letter) {
        if (!take(letter)) {
            throw new IllegalArgumentException(text + " lacks " + letter + " at " + at);
        }
    }
}
