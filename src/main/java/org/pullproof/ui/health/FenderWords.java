package org.pullproof.ui.health;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.pullproof.drawing.EnginePlan;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.health.TestOrder.Stop;
import org.pullproof.ui.health.FenderScreen.State;
import org.pullproof.ui.health.FenderScreen.Tile;
import org.pullproof.ui.health.FenderViewModel.Phase;
import org.pullproof.units.Sentence;

/** What fender mode shows, put into words. */
final class FenderWords {
    private final FenderViewModel fender;
    private final FenderSetting setting;

    FenderWords(FenderViewModel fender) {
        this.fender = fender;
        this.setting = fender.setting();
    }

    private Phase phase() {
        return fender.phaseProperty().get();
    }

    private boolean allRead() {
        return fender.course().isOver();
    }

    FenderScreen screen() {
        return new FenderScreen(
                fender.kind(fender.entry().wet()).words(),
                conditions(),
                allRead()
                        ? org.pullproof.ui.health.Tile.NOT_MEASURED
                        : String.valueOf(fender.course().stop().cylinder()),
                label(),
                typed(),
                fender.entry().kept() && phase() != Phase.AIR,
                unit(),
                fender.said(),
                fender.isMarked(),
                keys(),
                rows(),
                fender.inHand());
    }

    private String conditions() {
        String car = fender.session().open().session().car().name();
        int all = fender.course().order().stops().size();
        long read = fender.course().read();
        String how = setting.words();
        return car + " · " + read + " of " + all + (how.isEmpty() ? " · how it is made is not recorded" : " · " + how);
    }

    private String label() {
        if (phase() == Phase.AIR) {
            return "Air heard at";
        }
        if (fender.entry().firstStroke()) {
            return "First stroke";
        }
        if (fender.entry().repeats()) {
            return "Reading, once more";
        }
        String first =
                fender.entry().first().map(text -> ", first stroke " + text).orElse("");
        return (fender.entry().kept() ? "Kept; type over it to correct it" : "Reading") + first + round();
    }

    private String round() {
        boolean several =
                fender.course().order().rounds() > 1 && !fender.course().isOver();
        return several ? ", round " + fender.course().stop().round() : "";
    }

    private String typed() {
        if (phase() == Phase.AIR) {
            return fender.air().heard().map(FenderFigures::letters).orElse("");
        }
        return fender.entry().text();
    }

    private String unit() {
        return phase() == Phase.AIR
                ? fender.entry().text() + " " + setting.unitWords()
                : setting.choices().isEmpty() ? setting.unitWords() : "";
    }

    /** What to do on arriving at a cylinder. */
    Optional<Sentence> onArrival() {
        return setting.test() == TestKind.LEAKDOWN
                ? Optional.of(TdcWords.before(
                        fender.engine(),
                        fender.course().stop().cylinder(),
                        fender.session().look().figures()))
                : Optional.empty();
    }

    private List<FenderScreen.Key> keys() {
        return switch (phase()) {
            case AIR -> airKeys();
            case ALL_READ -> List.of(new FenderScreen.Key("←", "back one"), conditionsKey(), leave());
            default -> readingKeys();
        };
    }

    private static FenderScreen.Key leave() {
        return new FenderScreen.Key("Esc", "leave, all is kept");
    }

    private static FenderScreen.Key conditionsKey() {
        return new FenderScreen.Key("F2", "conditions, cautions");
    }

    private static List<FenderScreen.Key> airKeys() {
        List<FenderScreen.Key> keys = new ArrayList<>();
        Arrays.stream(AirPlace.values())
                .forEach(place -> keys.add(new FenderScreen.Key(String.valueOf(place.letter()), place.listenAt())));
        keys.add(new FenderScreen.Key("0", "nothing is heard"));
        keys.add(new FenderScreen.Key("Enter", "keep, next cylinder"));
        keys.add(new FenderScreen.Key("←", "back to the reading"));
        keys.add(leave());
        return keys;
    }

    private List<FenderScreen.Key> readingKeys() {
        List<FenderScreen.Key> keys = new ArrayList<>();
        List<String> choices = setting.choices();
        for (int i = 0; i < choices.size(); i++) {
            keys.add(new FenderScreen.Key(String.valueOf(i + 1), choices.get(i).replace('-', ' ')));
        }
        keys.add(new FenderScreen.Key("Enter", "keep, next cylinder"));
        if (setting.test() != TestKind.PLUG) {
            keys.add(new FenderScreen.Key("R", "same cylinder again"));
        }
        if (setting.test() == TestKind.COMPRESSION_DRY) {
            keys.add(new FenderScreen.Key("W", fender.entry().wet() ? "it is a dry reading" : "this is a wet reading"));
        }
        if (fender.isCompression()) {
            keys.add(new FenderScreen.Key("F", "first stroke"));
        }
        keys.add(new FenderScreen.Key("S", "skip"));
        keys.add(new FenderScreen.Key("←", "back one"));
        keys.add(leave());
        return keys;
    }

    private List<List<Tile>> rows() {
        return EnginePlan.fromTop(fender.engine()).stream()
                .map(bank -> bank.cylinders().stream().map(this::tile).toList())
                .toList();
    }

    private Tile tile(int cylinder) {
        List<Reading> here = fender.course().run().at(cylinder, setting.test());
        boolean now = !allRead() && fender.course().stop().cylinder() == cylinder;
        String figure = here.isEmpty() ? "" : FenderFigures.of(here.get(here.size() - 1), setting.unit());
        State state = now ? State.NOW : figure.isEmpty() ? State.NOT_READ : State.READ;
        return new Tile(cylinder, state, figure, more(cylinder, here));
    }

    private String more(int cylinder, List<Reading> here) {
        List<String> more = new ArrayList<>();
        if (setting.test() == TestKind.COMPRESSION_DRY) {
            fender.course()
                    .kept(new Stop(cylinder, 1), TestKind.COMPRESSION_WET)
                    .ifPresent(wet -> more.add("wet " + FenderFigures.of(wet, setting.unit())));
        }
        if (here.size() > 1) {
            more.add("before " + FenderFigures.of(here.get(here.size() - 2), setting.unit()));
        }
        if (!here.isEmpty() && here.get(here.size() - 1) instanceof Reading.Leakdown leak) {
            leak.air().ifPresent(air -> more.add("air " + FenderFigures.letters(air)));
        }
        return String.join(" · ", more);
    }
}
