package org.pullproof.app;

import java.nio.charset.StandardCharsets;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Cautions;
import org.pullproof.report.Format;
import org.pullproof.report.Paper;
import org.pullproof.report.RunCard;
import org.pullproof.report.RunCardMaker;
import org.pullproof.report.RunCardPage;

/** Makes the printed card of a tune-up's steps, for greasy hands. */
public final class MakeRunCard {
    private final Cautions cautions;

    public MakeRunCard(Cautions cautions) {
        this.cautions = cautions;
    }

    /** What the card says. */
    public RunCard card(Appraisal appraisal) {
        return new RunCardMaker(appraisal).make(cautions.last());
    }

    /**
     * The card as the bytes of a file.
     *
     * @param paper matters only to PDF
     */
    public byte[] bytes(Appraisal appraisal, Format format, Paper paper) {
        return switch (format) {
            case TEXT -> RunCardPage.text(card(appraisal)).getBytes(StandardCharsets.UTF_8);
            case HTML -> RunCardPage.html(card(appraisal)).getBytes(StandardCharsets.UTF_8);
            case PDF -> RunCardPage.pdf(card(appraisal), paper);
        };
    }
}
