/**
 * Worksheets that were kept as JSON, in their order: what changed between them. It reads what
 * stands in them, and calculates nothing anew.
 */
@NullMarked
package brakewright.cli.history;

import org.jspecify.annotations.NullMarked;
