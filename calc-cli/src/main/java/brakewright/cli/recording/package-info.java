/**
 * Reads recordings of rides: what separates their fields, what each column is and in which unit,
 * and hands the rows to {@code brakewright.recording}. It judges no ride.
 */
@NullMarked
package brakewright.cli.recording;

import org.jspecify.annotations.NullMarked;
