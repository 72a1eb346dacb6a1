package org.copperbook.desk.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import org.copperbook.desk.text.Words;
import org.copperbook.store.UserFolders;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.program.Program;
import org.eclipse.ui.handlers.HandlerUtil;
import org.osgi.framework.Bundle;

/** Opens the handbook in the system's browser; where there is none, says where its pages lie. */
public final class HandbookHandler extends AbstractHandler {

    private static final String HELP = "org.copperbook.help";
    private static final String PAGES = "handbook";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Words words = Words.of(HandbookHandler.class);
        try {
            Path folder = unpacked(Platform.getBundle(HELP));
            if (!Program.launch(folder.resolve("index.html").toUri().toString())) {
                MessageDialog.openInformation(HandlerUtil.getActiveShell(event), words.text("handbook.title"),
                        words.text("handbook.noBrowser", folder.resolve("index.html")));
            }
            return null;
        } catch (IOException | UncheckedIOException e) {
            throw new ExecutionException(words.text("handbook.notUnpacked"), e);
        }
    }

    private static Path unpacked(Bundle help) throws IOException {
        Path folder = UserFolders.current().home().resolve(PAGES);
        Files.createDirectories(folder);
        for (URL page : Collections.list(help.findEntries(PAGES, "*.html", false))) {
            try (var in = page.openStream()) {
                Files.write(folder.resolve(Path.of(page.getPath()).getFileName().toString()), in.readAllBytes());
            }
        }
        return folder;
    }
}
