package brakewright.cli.chart;

/**
 * A rectangle of the drawing; {@code y} grows downwards.
 *
 * @param left its left edge
 * @param top its upper edge
 * @param right its right edge
 * @param bottom its lower edge
 */
record Box(double left, double top, double right, double bottom) {

    /** Around a text that begins somewhere on a line. */
    static Box ofText(String text, double left, double line) {
        return new Box(
                left,
                line - Lettering.ABOVE * Lettering.SIZE,
                left + Lettering.width(text),
                line + Lettering.BELOW * Lettering.SIZE);
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean holds(Box other) {
        return left <= other.left
                && top <= other.top
                && right >= other.right
                && bottom >= other.bottom;
    }

    boolean holds(double x, double y) {
        return x >= left && x <= right && y >= top && y <= bottom;
    }

    Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }
}
