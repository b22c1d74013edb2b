package brakewright.cli.recording;

/** What stands between whole and part of a number. */
enum DecimalMark {
    /** As programs write. */
    POINT,
    /** As many people write. */
    COMMA;

    /** Of so few digits a double holds every whole number. */
    private static final int EXACT_DIGITS = 15;

    /** The powers of ten that go with them, each of which a double holds, too. */
    private static final double[] POWERS_OF_TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    /** Reads a number; NaN where the text is none. */
    double number(String text) {
        String bare = text.strip();
        double plain = plain(bare);
        return Double.isNaN(plain) ? any(bare) : plain;
    }

    /**
     * A number of at most 15 digits without an exponent: one division of two exact numbers, so
     * rounded as the text would be; NaN where it is not so plain.
     *
     * <p>Source: W. D. Clinger, How to Read Floating Point Numbers Accurately, PLDI 1990.
     */
    private double plain(String bare) {
        char mark = mark();
        int first = !bare.isEmpty() && bare.charAt(0) == '-' ? 1 : 0;
        long digits = 0;
        int whole = -1;
        for (int i = first; i < bare.length(); i++) {
            char letter = bare.charAt(i);
            if (letter >= '0' && letter <= '9') {
                digits = 10 * digits + (letter - '0');
            } else if (letter == mark && whole < 0) {
                whole = i - first;
            } else {
                return Double.NaN;
            }
        }
        int count = bare.length() - first - (whole < 0 ? 0 : 1);
        if (count < 1 || count > EXACT_DIGITS) {
            return Double.NaN;
        }
        double value = digits / POWERS_OF_TEN[whole < 0 ? 0 : count - whole];
        return first == 0 ? value : -value;
    }

    private double any(String bare) {
        if (bare.isEmpty() || !isNumber(bare)) {
            return Double.NaN;
        }
        try {
            return Double.parseDouble(this == COMMA ? bare.replace(',', '.') : bare);
        } catch (NumberFormatException none) {
            return Double.NaN;
        }
    }

    private char mark() {
        return this == COMMA ? ',' : '.';
    }

    /** Words such as NaN and the letters that end numbers of programs are no numbers. */
    private boolean isNumber(String bare) {
        char mark = mark();
        for (int i = 0; i < bare.length(); i++) {
            char letter = bare.charAt(i);
            boolean isDigit = letter >= '0' && letter <= '9';
            if (!isDigit && letter != mark && "+-eE".indexOf(letter) < 0) {
                return false;
            }
        }
        return true;
    }
}
