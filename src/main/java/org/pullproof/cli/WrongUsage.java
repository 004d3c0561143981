package org.pullproof.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line in a line or two, and where the help is; the help itself would bury it. */
final class WrongUsage implements IParameterExceptionHandler {
    @Override
    public int handleParseException(ParameterException wrong, String[] arguments) {
        CommandLine command = wrong.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(wrong.getMessage());
        UnmatchedArgumentException.printSuggestions(wrong, err);
        err.println("See \"" + command.getCommandSpec().qualifiedName() + " --help\".");
        return command.getCommandSpec().exitCodeOnInvalidInput();
    }
}
