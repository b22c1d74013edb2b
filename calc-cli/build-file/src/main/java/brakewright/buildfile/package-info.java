/**
 * Reads a build file: TOML or JSON in, a validated vehicle with the origin of every number out, or
 * all problems of the file at once.
 *
 * <p>The entry class is {@link brakewright.buildfile.BuildFile}. {@link
 * brakewright.buildfile.KeyGuide} tells what a person has to know of each key. What the file leaves
 * out is filled from the reference tables, and each value remembers whether it came from the file,
 * from a table or was assumed. {@link brakewright.buildfile.Variations} makes the vehicle anew from
 * other numbers, {@link brakewright.buildfile.Spreads} says which numbers are not known exactly.
 * What follows from either is calculated elsewhere.
 *
 * <pre>{@code
 * BuildFile file = BuildFile.read(bytes, ReferenceTables.load());
 * Build build = file.build();
 * String grip = file.named().get("vehicle.grip").source();
 * String written = file.toml();
 * }</pre>
 */
@NullMarked
package brakewright.buildfile;

import org.jspecify.annotations.NullMarked;
