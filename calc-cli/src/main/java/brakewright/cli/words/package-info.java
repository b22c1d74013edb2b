/**
 * The words for what the core found: numbers with their units, findings, conditions, cautions. The
 * same words serve the text and the JSON worksheet.
 */
@NullMarked
package brakewright.cli.words;

import org.jspecify.annotations.NullMarked;
