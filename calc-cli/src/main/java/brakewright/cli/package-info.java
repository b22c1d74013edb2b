/**
 * The commands: each parses its arguments, makes one call, prints and returns a status.
 *
 * <p>The entry class is {@link brakewright.cli.Main}. Results go to standard output, everything
 * else to standard error. Exit status: 0 within limits or conditional, 1 outside limits, 2 unusable
 * input, 70 a fault in the program.
 */
@NullMarked
package brakewright.cli;

import org.jspecify.annotations.NullMarked;
