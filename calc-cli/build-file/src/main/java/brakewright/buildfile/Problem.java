package brakewright.buildfile;

/**
 * One thing wrong with a build file.
 *
 * @param line where, counted from 1; 0 where no line is to blame
 * @param key which key; empty for the file as a whole
 * @param wrong what is wrong
 * @param expected what belongs there, with an example; empty where that is plain
 */
public record Problem(int line, String key, String wrong, String expected) {}
