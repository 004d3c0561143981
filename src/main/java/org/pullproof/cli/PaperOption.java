package org.pullproof.cli;

import org.pullproof.report.Paper;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The paper of something printed, as it is named on the command line. */
final class PaperOption implements ITypeConverter<Paper> {
    /** What is said of the option, the same at every command. */
    static final String WORDS =
            "Paper of the PDF; without it the one chosen in the window, at first letter for US units, a4 for metric ones.";

    @Override
    public Paper convert(String key) {
        return Paper.named(key)
                .orElseThrow(() -> new TypeConversionException(
                        "expected one of " + Paper.keys() + " (case-sensitive) but was '" + key + "'"));
    }
}
