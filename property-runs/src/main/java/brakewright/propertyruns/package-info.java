/**
 * From which seeds the properties of all modules are drawn, and how often. {@link
 * brakewright.propertyruns.PropertyRuns} is found on the class path by jqwik itself, so that no
 * property has to name it; {@link brakewright.propertyruns.SeededProperties} holds that in each
 * module.
 */
@NullMarked
package brakewright.propertyruns;

import org.jspecify.annotations.NullMarked;
