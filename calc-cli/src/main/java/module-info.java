/** The command line of Brakewright. */
module brakewright.cli {
    requires brakewright.core;
    requires brakewright.tables;
    requires com.fasterxml.jackson.core;
    requires info.picocli;
    requires org.apache.commons.text;
    requires org.tomlj;
    requires static org.jspecify;

    opens brakewright.cli to
            info.picocli;
}
