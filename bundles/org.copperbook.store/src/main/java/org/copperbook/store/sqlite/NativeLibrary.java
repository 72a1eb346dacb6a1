package org.copperbook.store.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.copperbook.store.files.DurableFile;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * Puts the engine's native library into the application's own folder before the driver looks for it. Left alone, the
 * driver unpacks a copy into the system's temp folder at every start, leaves it there when the program is killed, and
 * fails where programs may not run from the temp folder.
 */
final class NativeLibrary {

    private static final System.Logger LOG = System.getLogger(NativeLibrary.class.getName());
    private static final String PATH = "org.sqlite.lib.path";
    private static final String NAME = "org.sqlite.lib.name";

    private NativeLibrary() {
    }

    /**
     * Unpacks the library under the folder, unless the very same bytes are there, and points the driver at it. Where
     * the folder cannot be written the driver's own way remains. A path given by the user is respected.
     */
    static synchronized void prepare(Path folder) {
        if (System.getProperty(PATH) != null) {
            return;
        }
        String name = LibraryLoaderUtil.getNativeLibName();
        String inside = LibraryLoaderUtil.getNativeLibResourcePath();
        try (InputStream packed = SQLiteDataSource.class.getResourceAsStream(inside + "/" + name)) {
            if (packed == null) {
                return;
            }
            byte[] bytes = packed.readAllBytes();
            Path own = folder.resolve("sqlite-" + SQLiteJDBCLoader.getVersion());
            Path file = own.resolve(name);
            if (!Files.isRegularFile(file) || !Arrays.equals(Files.readAllBytes(file), bytes)) {
                DurableFile.write(file, bytes);
            }
            System.setProperty(PATH, own.toString());
            System.setProperty(NAME, name);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "the database library could not be unpacked into " + folder, e);
        }
    }
}
