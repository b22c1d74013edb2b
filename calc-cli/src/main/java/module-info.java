/** The command line of Brakewright. */
module brakewright.cli {
    requires brakewright.buildfile;
    requires brakewright.core;
    requires brakewright.tables;
    requires com.fasterxml.jackson.core;
    requires de.siegmar.fastcsv;
    requires gg.jte.runtime;
    requires info.picocli;
    requires me.tongfei.progressbar;
    requires org.jline.reader;
    requires org.jline.terminal;
    requires static java.compiler;
    requires static org.jspecify;

    opens brakewright.cli to
            info.picocli;
}
