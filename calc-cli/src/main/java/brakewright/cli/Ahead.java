package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.tables.ReferenceTables;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Loads the reference tables, and the classes that read a build file, on a second thread while the
 * command line is still being parsed.
 */
final class Ahead {

    private static final FutureTask<ReferenceTables> TABLES =
            new FutureTask<>(ReferenceTables::load);

    private Ahead() {}

    /** Begins, unless that was done before. */
    static void begin() {
        start(BuildFile::warmUp, "build-file");
        start(TABLES, "tables");
    }

    /** Returns the tables, loading them here if that has not begun. */
    static ReferenceTables tables() {
        TABLES.run();
        try {
            return TABLES.get();
        } catch (ExecutionException failed) {
            throw new IllegalStateException(failed.getCause());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }

    private static void start(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }
}
