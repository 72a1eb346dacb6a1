package org.copperbook.batch;

import java.io.PrintWriter;
import java.util.Arrays;
import org.copperbook.store.StoreException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Reads the command line, does the command and gives the exit code. */
public final class BatchCommands {

    static final String NAME = "copperbook-batch";

    private final BatchContext context;
    private final CommandLine line;

    BatchCommands(BatchContext context) {
        this.context = context;
        line = new CommandLine(new Root());
        line.addSubcommand("take-in", new TakeInCommand(context));
        line.addSubcommand("take-in-cards", new OldCardsCommand(context));
        line.addSubcommand("list", new ListCommand(context));
        line.addSubcommand("lots", new LotsCommand(context));
        line.addSubcommand("show", new ShowCommand(context));
        line.addSubcommand("verdicts", new VerdictsCommand(context));
        line.addSubcommand("plan", new PlanCommand(context));
        line.addSubcommand("find-fault", new FindFaultCommand(context));
        line.addSubcommand("workbooks", new WorkbooksCommand(context));
        line.addSubcommand("delivery-note", new DeliveryNoteCommand(context));
        line.addSubcommand("export", new ExportCommand(context));
        line.addSubcommand("verify", new VerifyCommand(context));
        line.addSubcommand("backup", new BackupCommand(context));
        line.addSubcommand("restore", new RestoreCommand(context));
        line.addSubcommand("month-report", new MonthReportCommand(context));
        line.addSubcommand("people", new PeopleCommand(context));
        line.addSubcommand("erase-person", new ErasePersonCommand(context));
        line.addSubcommand("erase-due", new EraseDueCommand(context));
        line.addSubcommand("archive", new ArchiveCommand(context));
        line.addSubcommand("take-in-archive", new TakeInArchiveCommand(context));
        line.addSubcommand("copy-store", new CopyStoreCommand(context));
        line.addSubcommand("grant-roles", new GrantRolesCommand(context));
        line.addSubcommand("check-copy", new CheckCopyCommand(context));
        line.addSubcommand("demo", new DemoCommand(context));
        line.addSubcommand("calc", new CalcCommand(context));
        line.addSubcommand("help", new HelpCommand());
        line.setResourceBundle(BatchText.bundle());
        line.setOut(new PrintWriter(context.out(), true));
        line.setErr(new PrintWriter(context.err(), true));
        line.setParameterExceptionHandler((e, arguments) -> refused(e));
        line.setExecutionExceptionHandler((e, command, result) -> failed(e));
        line.setUsageHelpWidth(110);
    }

    /**
     * Does one command.
     *
     * @return 0 done, 1 a check failed, 2 bad use or input
     */
    public int run(String... arguments) {
        try {
            return line.execute(Arrays.copyOf(arguments, arguments.length));
        } catch (OutOfMemoryError e) {
            say(BatchText.of("too-large"));
            return ExitCode.BAD_USE;
        }
    }

    private int refused(ParameterException e) {
        String command = e.getCommandLine().getParent() == null ? "" : " " + e.getCommandLine().getCommandName();
        say(BatchText.of("use.bad", NAME + command, e.getMessage().replaceFirst("\\.$", ""), NAME + " help" + command));
        return ExitCode.BAD_USE;
    }

    private int failed(Exception e) {
        if (e instanceof BadUse || e instanceof StoreException) {
            say(e.getMessage());
        } else {
            say(BatchText.of("unexpected", e));
            e.printStackTrace(context.err());
        }
        return ExitCode.BAD_USE;
    }

    private void say(String message) {
        context.err().println(NAME + ": " + OneLine.of(message));
    }

    /** The command without a subcommand, which is bad use. */
    @Command(name = NAME, mixinStandardHelpOptions = true, version = "Copperbook 0.1.0",
            synopsisSubcommandLabel = "COMMAND", exitCodeOnInvalidInput = ExitCode.BAD_USE)
    static final class Root implements Runnable {

        @Spec
        private CommandSpec spec;

        @Override
        public void run() {
            throw new ParameterException(spec.commandLine(), BatchText.of("use.no-command"));
        }
    }
}
