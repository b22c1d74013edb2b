package brakewright.buildfile;

import brakewright.buildfile.internal.Printable;
import java.io.Serializable;

/**
 * One thing wrong with a build file.
 *
 * @param line where, counted from 1; 0 where no line is to blame
 * @param key which key; empty for the file as a whole
 * @param wrong what is wrong
 * @param expected what belongs there, with an example; empty where that is plain
 */
public record Problem(int line, String key, String wrong, String expected) implements Serializable {

    /**
     * Writes it for a person: place, key, what is wrong, and below that what is expected.
     *
     * @return one or two lines, in which nothing of the file can move the cursor
     */
    public String told() {
        StringBuilder told = new StringBuilder();
        if (line > 0) {
            told.append("line ").append(line).append("  ");
        }
        if (!key.isEmpty()) {
            told.append(Printable.shortened(key)).append(": ");
        }
        told.append(Printable.shortened(wrong));
        if (!expected.isEmpty()) {
            told.append("\n    expected: ").append(Printable.shortened(expected));
        }
        return told.toString();
    }
}
