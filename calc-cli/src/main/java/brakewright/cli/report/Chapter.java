package brakewright.cli.report;

import java.util.List;

/**
 * Part of a document under a heading.
 *
 * @param heading what it is about
 * @param blocks what it tells
 */
public record Chapter(String heading, List<Block> blocks) {

    /** Copies the blocks. */
    public Chapter {
        blocks = List.copyOf(blocks);
    }
}
