/** A document as Markdown, for pages that are written by others. */
@NullMarked
package brakewright.cli.markdown;

import org.jspecify.annotations.NullMarked;
