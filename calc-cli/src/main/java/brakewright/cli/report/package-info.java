/**
 * What a document tells, before it is HTML or Markdown: chapters of sentences, tables and pictures.
 *
 * <p>{@link brakewright.cli.report.Report} is the document. It takes its numbers from sheets, its
 * sentences from {@code words} and, where a page of text tells the same, from that page ({@link
 * brakewright.cli.text.Manuscript}), so that each is said in one place. It computes nothing.
 */
@NullMarked
package brakewright.cli.report;

import org.jspecify.annotations.NullMarked;
