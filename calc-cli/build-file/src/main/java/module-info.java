/**
 * Build files: TOML or JSON in, the vehicle with the origin of every number or all problems out.
 */
module brakewright.buildfile {
    requires transitive brakewright.core;
    requires transitive brakewright.tables;
    requires com.fasterxml.jackson.core;
    requires de.siegmar.fastcsv;
    requires org.tomlj;
    requires static org.jspecify;

    exports brakewright.buildfile;
    exports brakewright.buildfile.internal to
            brakewright.cli;
}
