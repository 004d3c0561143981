package org.pullproof.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Cautions;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.tuneup.TuneUpFindings.State;

/** The cautions of what is still to be done, beside those that stand at their act further up; each sentence once. */
record CautionsSection(Appraisal appraisal, Cautions cautions, Set<ReportPart> parts) {
    /** Nothing where nothing is left to be careful of. */
    Optional<Section> section() {
        Set<String> said = saidAbove();
        List<Block> blocks = new ArrayList<>();
        acts().forEach((act, title) -> {
            List<String> fresh = cautions.of(act).stream().filter(said::add).toList();
            if (!fresh.isEmpty()) {
                blocks.add(new Block.Points("cautions", title, fresh, true));
            }
        });
        return blocks.isEmpty()
                ? Optional.empty()
                : Optional.of(new Section("cautions", "Cautions", "common practice, no source", blocks));
    }

    /** Acts that the chosen parts lead to, each with the words above its cautions. */
    private Map<String, String> acts() {
        Map<String, String> acts = new LinkedHashMap<>();
        if (has(ReportPart.HEALTH)) {
            appraisal
                    .health()
                    .missing()
                    .forEach(test -> acts.put(
                            test.key(), "Before the test: " + test.words().toLowerCase(Locale.ROOT)));
        }
        if (has(ReportPart.DYNO) || has(ReportPart.CHANGES)) {
            acts.put("change", "Before a change is made");
            acts.put("dyno-pull", "Before a pull on the dyno");
        }
        return acts;
    }

    /** What ends every list stands at the foot of every page. */
    private Set<String> saidAbove() {
        Set<String> said = new LinkedHashSet<>(Set.of(cautions.last()));
        if (has(ReportPart.SUMMARY)) {
            said.addAll(appraisal.next().cautions());
        }
        if (has(ReportPart.TUNE_UP)) {
            appraisal.tuneUp().steps().stream()
                    .filter(step -> step.state() != State.DONE)
                    .forEach(step -> said.addAll(step.step().cautions()));
        }
        return said;
    }

    private boolean has(ReportPart part) {
        return parts.contains(part);
    }
}
