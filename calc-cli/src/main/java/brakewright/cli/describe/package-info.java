/**
 * Describes a vehicle by questions and answers.
 *
 * <p>{@link brakewright.cli.describe.Questions} are a table; an {@link
 * brakewright.cli.describe.Interview} asks those that apply and takes an answer or that it is not
 * known; a {@link brakewright.cli.describe.Description} makes a build file of them.
 */
@NullMarked
package brakewright.cli.describe;

import org.jspecify.annotations.NullMarked;
