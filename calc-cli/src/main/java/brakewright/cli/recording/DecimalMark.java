package brakewright.cli.recording;

/** What stands between whole and part of a number. */
enum DecimalMark {
    /** As programs write. */
    POINT,
    /** As many people write. */
    COMMA;

    /** Reads a number; NaN where the text is none. */
    double number(String text) {
        String bare = text.strip();
        if (bare.isEmpty() || !isNumber(bare)) {
            return Double.NaN;
        }
        try {
            return Double.parseDouble(this == COMMA ? bare.replace(',', '.') : bare);
        } catch (NumberFormatException none) {
            return Double.NaN;
        }
    }

    /** Words such as NaN and the letters that end numbers of programs are no numbers. */
    private boolean isNumber(String bare) {
        char mark = this == COMMA ? ',' : '.';
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
