package brakewright.recording;

/**
 * Where in the files something is.
 *
 * @param source the name of the file
 * @param line in it, counted from 1
 */
public record Place(String source, int line) {}
