package org.pullproof.cli;

import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.FileSystemException;
import org.pullproof.files.BadFileException;
import org.pullproof.files.Reason;
import org.pullproof.units.Inert;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Turns what a command throws into sentences on standard error; the trace goes to the log only. */
final class Failures implements IExecutionExceptionHandler {
    private static final Logger LOG = System.getLogger(Failures.class.getName());

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
        LOG.log(Level.DEBUG, "The command failed", failure);
        command.getErr().println(Inert.lines(sentence(failure)));
        return Output.WRONG_INPUT;
    }

    private static String sentence(Exception failure) {
        if (failure instanceof BadFileException || failure instanceof IllegalArgumentException) {
            return String.valueOf(failure.getMessage());
        }
        if (failure instanceof IOException io) {
            return fileAndReason(io);
        }
        return "This should not happen (" + failure.getClass().getSimpleName()
                + "). The session on disk is as it was; please tell the developers what you did.";
    }

    private static String fileAndReason(IOException failure) {
        return failure instanceof FileSystemException system && system.getFile() != null
                ? system.getFile() + ": " + Reason.of(failure) + "."
                : "A file could not be read or written: " + Reason.of(failure) + ".";
    }
}
