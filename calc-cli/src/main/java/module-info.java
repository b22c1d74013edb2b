/** The command line of Brakewright. */
module brakewright.cli {
    requires transitive brakewright.core;
    requires transitive brakewright.tables;
    requires com.fasterxml.jackson.core;
    requires de.siegmar.fastcsv;
    requires info.picocli;
    requires me.tongfei.progressbar;
    requires org.apache.commons.text;
    requires org.jline.reader;
    requires org.jline.terminal;
    requires org.tomlj;
    requires static org.jspecify;

    exports brakewright.cli.buildfile;

    opens brakewright.cli to
            info.picocli;
}
