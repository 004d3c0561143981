package org.pullproof.app;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Cautions;
import org.pullproof.report.DayCardMaker;
import org.pullproof.report.Format;
import org.pullproof.report.Paper;
import org.pullproof.report.TallyKind;
import org.pullproof.report.TallyMaker;
import org.pullproof.report.TallyPage;
import org.pullproof.report.TallySheet;
import org.pullproof.report.TallyText;
import org.pullproof.session.Session;

/** Makes the printed blank of a test, for greasy hands; readings are typed in afterwards. */
public final class MakeTally {
    private final Cautions cautions;

    public MakeTally(Cautions cautions) {
        this.cautions = cautions;
    }

    /** What the blank says. */
    public TallySheet sheet(Session session, TallyKind test) {
        return new TallyMaker(session, test).make(cautions(test));
    }

    /** The run card of a dyno day. */
    public TallySheet runCard(Appraisal appraisal) {
        return new DayCardMaker(appraisal).make(cautions.of("dyno-pull"));
    }

    /** The cautions of every test on the sheet, each once, the one that ends every list at the end. */
    private List<String> cautions(TallyKind test) {
        Stream<String> acts = test.kinds().stream()
                .flatMap(kind -> cautions.of(kind).stream())
                .filter(sentence -> !sentence.equals(cautions.last()))
                .distinct();
        return Stream.concat(acts, Stream.of(cautions.last())).toList();
    }

    /** The blank as plain text, lines of at most 80 characters. */
    public String text(TallySheet sheet) {
        return new TallyText().write(sheet);
    }

    /**
     * The blank as the bytes of a file.
     *
     * @param paper matters only to PDF
     */
    public byte[] bytes(TallySheet sheet, Format format, Paper paper) {
        return switch (format) {
            case TEXT -> text(sheet).getBytes(StandardCharsets.UTF_8);
            case HTML -> TallyPage.html(sheet).getBytes(StandardCharsets.UTF_8);
            case PDF -> TallyPage.pdf(sheet, paper);
        };
    }
}
