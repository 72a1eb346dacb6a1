package org.copperbook.desk.shared;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.EnumSet;
import javax.crypto.spec.PBEKeySpec;
import org.copperbook.store.UserFolders;
import org.eclipse.core.runtime.ILog;
import org.eclipse.equinox.security.storage.provider.IPreferencesContainer;
import org.eclipse.equinox.security.storage.provider.PasswordProvider;

/**
 * Unlocks the secure storage with a random key in a file that only this user of the machine can read. It keeps the
 * passwords out of copied preferences and from other users; it does not keep them from whoever can read this user's
 * files, because the key lies beside. A provider that the platform brings goes before it.
 */
public final class KeyFilePasswords extends PasswordProvider {

    private static final int KEY_BYTES = 32;

    @Override
    public PBEKeySpec getPassword(IPreferencesContainer container, int passwordType) {
        try {
            return new PBEKeySpec(key(UserFolders.current().home().resolve("secure-storage.key")).toCharArray());
        } catch (IOException e) {
            ILog.of(KeyFilePasswords.class).error("the key of the secure storage cannot be read", e);
            return null;
        }
    }

    private static String key(Path file) throws IOException {
        Files.createDirectories(file.getParent());
        byte[] random = new byte[KEY_BYTES];
        new SecureRandom().nextBytes(random);
        String made = Base64.getEncoder().encodeToString(random);
        try (var out = Files.newByteChannel(file, EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                onlyOwner(file))) {
            out.write(StandardCharsets.US_ASCII.encode(made));
            return made;
        } catch (FileAlreadyExistsException e) {
            return Files.readString(file, StandardCharsets.US_ASCII).strip();
        }
    }

    /** On Windows the folder of an application is the user's own already. */
    private static FileAttribute<?>[] onlyOwner(Path file) {
        boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        return posix ? new FileAttribute<?>[] {
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))}
                : new FileAttribute<?>[0];
    }
}
