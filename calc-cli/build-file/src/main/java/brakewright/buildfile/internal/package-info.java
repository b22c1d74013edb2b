/**
 * Internal: texts that build files and the command line treat alike. On the module path only the
 * command line sees it; on the class path programs should not use it, as nothing of it is promised.
 *
 * <p>{@link brakewright.buildfile.internal.Printable} keeps foreign text from moving the cursor,
 * {@link brakewright.buildfile.internal.Nearest} finds what was meant by a misspelled word.
 */
@NullMarked
package brakewright.buildfile.internal;

import org.jspecify.annotations.NullMarked;
