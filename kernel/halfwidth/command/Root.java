package halfwidth.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program without a command: says what there is. */
@Command(
        name = "halfwidth",
        subcommands = {
            OpenScreen.class,
            ListPages.class,
            RunPage.class,
            CheckPages.class,
            VerifyRecords.class,
            SignRecord.class,
            AgreeToPage.class,
            ShowHistory.class,
            UndoEntry.class,
            ImportReadings.class,
            ExportValues.class,
            BackUpJob.class,
            HelpCommand.class
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Worked procedures for bringing an ILS localizer into service.",
        footer = {
            "",
            "Exit status: 0 it ran; 1 an input or a step failed; 2 wrong usage;"
                    + " 3 it ran, but a limit is not met."
        })
final class Root implements Runnable {
    @Spec private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "Name a command: " + String.join(", ", spec.subcommands().keySet()) + ".");
    }
}
