/**
 * A document as one HTML file that needs nothing beside it: no script, no font, no network. Its
 * pages are templates in {@code src/main/jte}, which escape all that is not theirs.
 */
@NullMarked
package brakewright.cli.html;

import org.jspecify.annotations.NullMarked;
