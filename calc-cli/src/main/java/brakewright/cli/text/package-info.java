/**
 * The worksheet and the explanation of a limit as text: as wide as is asked for, calm, the verdict
 * first. Tables hold plain letters only, so that they stay aligned in every terminal; colour, where
 * there is a terminal, never says anything that the words do not.
 */
@NullMarked
package brakewright.cli.text;

import org.jspecify.annotations.NullMarked;
