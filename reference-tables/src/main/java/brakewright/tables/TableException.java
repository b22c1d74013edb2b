package brakewright.tables;

/**
 * A reference table that cannot be used: a fault of the program's own data, not of a build file.
 */
public final class TableException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    TableException(String message) {
        super(message);
    }

    TableException(String message, Throwable cause) {
        super(message, cause);
    }
}
