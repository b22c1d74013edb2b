package brakewright.cli.text;

import java.util.List;

/** A part of a page as it was meant, before it is laid out in lines. */
public sealed interface Piece {

    /**
     * What stands above a section.
     *
     * @param text as it is spelled within a sentence
     */
    record Heading(String text) implements Piece {}

    /**
     * Sentences.
     *
     * @param label what they are about; empty for none
     * @param text the sentences
     */
    record Paragraph(String label, String text) implements Piece {}

    /**
     * Rows that follow each other, in columns.
     *
     * @param cells of each row, all rows equally long
     */
    record Rows(List<List<String>> cells) implements Piece {}

    /**
     * Sentences that are told one by one.
     *
     * @param sentences in their order
     */
    record Items(List<String> sentences) implements Piece {}

    /**
     * Lines that are kept as they are.
     *
     * @param lines to copy
     */
    record Verbatim(List<String> lines) implements Piece {}
}
