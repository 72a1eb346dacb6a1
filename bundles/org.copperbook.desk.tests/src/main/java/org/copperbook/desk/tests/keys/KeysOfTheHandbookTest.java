package org.copperbook.desk.tests.keys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.jface.bindings.keys.KeySequence;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;
import org.junit.jupiter.api.Test;

/** The table of keys in the handbook names every key of the window, and each does what it says. */
class KeysOfTheHandbookTest {

    private static final String OURS = "org.copperbook.desk.keys";
    private static final Map<String, String> COMMANDS = Map.ofEntries(
            Map.entry("Ctrl+N", "org.copperbook.desk.command.newJob"),
            Map.entry("F3", "org.copperbook.desk.command.register"),
            Map.entry("F4", "org.copperbook.desk.command.signIn"),
            Map.entry("F12", "org.copperbook.desk.command.openJob"),
            Map.entry("Ctrl+S", "org.eclipse.ui.file.save"),
            Map.entry("Ctrl+W", "org.eclipse.ui.file.close"),
            Map.entry("Ctrl+Z", "org.eclipse.ui.edit.undo"),
            Map.entry("Ctrl+Y", "org.eclipse.ui.edit.redo"),
            Map.entry("F7", "org.copperbook.office.command.board"),
            Map.entry("F8", "org.copperbook.office.command.month"),
            Map.entry("F9", "org.copperbook.office.command.stock"),
            Map.entry("F11", "org.copperbook.office.command.registers"),
            Map.entry("Ctrl+Shift+Q", "org.copperbook.desk.command.quoteWorkbook"),
            Map.entry("Ctrl+Shift+R", "org.copperbook.desk.command.recordWorkbook"),
            Map.entry("Ctrl+Shift+I", "org.copperbook.winding.command.takeInCards"),
            Map.entry("Ctrl+Shift+F", "org.copperbook.winding.command.findPast"));

    private final IBindingService bindings = PlatformUI.getWorkbench().getService(IBindingService.class);

    @Test
    void everyKeyOfTheTableDoesWhatItSays() throws Exception {
        String table = table();
        for (Map.Entry<String, String> key : COMMANDS.entrySet()) {
            assertTrue(table.contains(key.getKey()), key.getKey() + " stands in the table");
            Binding bound = bindings.getPerfectMatch(KeySequence.getInstance(key.getKey()
                    .replace("Ctrl+Shift+", "M1+M2+").replace("Ctrl+", "M1+")));
            assertNotNull(bound, key.getKey() + " does something");
            assertEquals(key.getValue(), bound.getParameterizedCommand().getId(), key.getKey());
        }
    }

    @Test
    void everyKeyBoundByTheDeskStandsInTheTable() throws Exception {
        String table = table();
        List<String> missing = new ArrayList<>();
        for (Binding b : bindings.getBindings()) {
            if (OURS.equals(b.getSchemeId()) && b.getParameterizedCommand() != null) {
                String key = b.getTriggerSequence().format().replace("Shift+Ctrl+", "Ctrl+Shift+")
                        .replace("Page Up", "PageUp").replace("Page Down", "PageDown");
                if (!table.contains(key)) {
                    missing.add(key + " for " + b.getParameterizedCommand().getId());
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    private static String table() throws Exception {
        try (var in = Platform.getBundle("org.copperbook.help").getEntry("handbook/keys.html").openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
