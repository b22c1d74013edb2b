/** Tests of the reference tables. */
@NullMarked
package brakewright.tables;

import org.jspecify.annotations.NullMarked;
