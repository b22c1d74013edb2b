package brakewright.buildfile;

import brakewright.propertyruns.SeededProperties;
import net.jqwik.api.Tag;

/** The properties of this module are drawn from the seeds of the run. */
@Tag("law")
class SeedProperties extends SeededProperties {}
