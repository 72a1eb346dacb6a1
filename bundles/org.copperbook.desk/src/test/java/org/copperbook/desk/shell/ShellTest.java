package org.copperbook.desk.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.junit.jupiter.api.Test;

class ShellTest {

    @Test
    void argumentsOfThePlatformArePassedOver() {
        DeskArguments a = DeskArguments.parse("-data", "x", "-demo", "demo-data", "-job", "2026-0001");
        assertEquals(Optional.of(Path.of("demo-data")), a.demo());
        assertEquals(Optional.of("2026-0001"), a.job());
        assertEquals(Optional.empty(), a.store());
        assertEquals(DeskArguments.NONE, DeskArguments.parse());
    }

    @Test
    void anArgumentWithoutItsValueIsNamed() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> DeskArguments.parse("-demo")).getMessage()
                .contains("-demo"));
    }

    @Test
    void aMissingDisplayAndAMissingToolkitAreToldApart() {
        String display = MissingDisplay.in(new SWTError(SWT.ERROR_NO_HANDLES)).orElseThrow();
        String toolkit = MissingDisplay.in(new RuntimeException(new UnsatisfiedLinkError("libgtk"))).orElseThrow();
        assertTrue(!display.equals(toolkit));
        assertEquals(Optional.empty(), MissingDisplay.in(new IllegalStateException("something else")));
    }
}
