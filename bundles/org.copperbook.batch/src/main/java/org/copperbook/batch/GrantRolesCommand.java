package org.copperbook.batch;

import java.util.concurrent.Callable;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.store.postgres.DatabaseRoles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Makes the roles of a server's database match those of the workshop. */
@Command(name = "grant-roles", mixinStandardHelpOptions = true)
final class GrantRolesCommand implements Callable<Integer> {

    private final BatchContext context;

    @Parameters(paramLabel = "SERVER", descriptionKey = "grant-roles.server")
    private String server;

    GrantRolesCommand(BatchContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (!(StorePlace.parse(server) instanceof StorePlace.OnServer place)) {
            throw new BadUse(BatchText.of("grant-roles.noServer", server));
        }
        DatabaseRoles.grant(place.at(), place.password(context));
        context.out().println(OneLine.of(BatchText.of("grant-roles.done", place)));
        for (Role role : Role.values()) {
            context.out().println("  GRANT " + DatabaseRoles.name(role) + " TO ...;");
        }
        return ExitCode.DONE;
    }
}
