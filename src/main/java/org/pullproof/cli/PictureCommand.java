package org.pullproof.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Photographs of parts, cylinders, steps and the car. */
@Command(
        name = "picture",
        description = "Attaches photographs (JPEG or PNG), which are kept untouched in the session, and lists them.",
        footer = {"", "Example: pullproof picture grey-coupe --part \"battery lead\" IMG_2041.jpg"})
final class PictureCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final Clock clock;

    @Parameters(index = "0", paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "FILE", description = "Photographs to attach.")
    private List<Path> files = List.of();

    @Option(names = "--part", paramLabel = "PART", description = "They show this part.")
    private Optional<String> part = Optional.empty();

    @Option(names = "--cylinder", paramLabel = "N", description = "They show this cylinder or its plug.")
    private Optional<Integer> cylinder = Optional.empty();

    @Option(names = "--words", paramLabel = "TEXT", description = "What is to be seen.")
    private String words = "";

    @Mixin
    private Output output;

    PictureCommand(Toolbox tools, Clock clock) {
        this.tools = tools;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        OpenSession open = tools.desk().open(session);
        LocalDateTime now = LocalDateTime.now(clock).withNano(0);
        About about = about(open);
        for (Path file : files) {
            open = tools.attachPicture().attach(open, about, words, file, now);
        }
        List<Picture> pictures = open.session().pictures();
        if (output.json()) {
            output.print(new Json()
                    .put("pictures", pictures.stream().map(PictureCommand::json).toList()));
        } else {
            pictures.forEach(picture -> output.print(picture.about().words() + ": " + picture.kept()
                    + (picture.words().isEmpty() ? "" : ", " + picture.words()) + ", SHA-256 " + picture.sha256()));
        }
        return Output.DONE;
    }

    private About about(OpenSession open) {
        return part.map(About::part)
                .or(() -> cylinder.map(
                        number -> About.cylinder(open.session().profile().requireCylinder(number))))
                .orElse(new About(About.Kind.CAR, ""));
    }

    private static Json json(Picture picture) {
        return new Json()
                .put("of", picture.about().kind().key())
                .put("name", picture.about().name())
                .put("words", picture.words())
                .put("original", picture.original())
                .put("kept", picture.kept())
                .put("sha256", picture.sha256())
                .put("time", picture.time().toString());
    }
}
