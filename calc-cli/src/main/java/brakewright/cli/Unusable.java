package brakewright.cli;

/** The input cannot be used; nothing was written. */
final class Unusable extends RuntimeException {

    private static final long serialVersionUID = 1L;

    Unusable(String message) {
        super(message);
    }

    Unusable(String message, Throwable cause) {
        super(message, cause);
    }
}
