/** Published figures for cells, wires, plugs and ordinary riders, each with its source. */
module brakewright.tables {
    requires transitive brakewright.core;
    requires de.siegmar.fastcsv;
    requires static org.jspecify;

    exports brakewright.tables;
}
