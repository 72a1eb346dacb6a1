package org.copperbook.batch;

import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.osgi.service.datalocation.Location;

/** The headless application inside the product: hands its arguments to {@link BatchCommands}. */
public final class BatchApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) throws IOException {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        // Libraries that look for services through the context class loader must find those of the bundles.
        thread.setContextClassLoader(BatchApplication.class.getClassLoader());
        context.applicationRunning();
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        try {
            return new BatchCommands(BatchContext.standard(out, err, demoData())).run(arguments);
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    @Override
    public void stop() {
        // Every command ends by itself, and the store survives being cut off.
    }

    /** The demo workshop that the product brings along, beside its plug-ins. */
    private static Path demoData() {
        Location install = Platform.getInstallLocation();
        Path folder = install == null || install.getURL() == null ? Path.of("")
                : Path.of(URI.create(install.getURL().toString().replace(" ", "%20")));
        return folder.resolve("demo-data").toAbsolutePath().normalize();
    }
}
