package org.pullproof.cli;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Setup;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Photographs of parts, cylinders, steps and the car. */
@Command(
        name = "picture",
        description = "Attaches photographs (JPEG or PNG), which are kept untouched in the session, and lists them.",
        footer = {"", "Example: pullproof picture grey-coupe --part \"battery lead\" IMG_2041.jpg"})
final class PictureCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(index = "0", paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "FILE", description = "Photographs to attach.")
    private List<Path> files = List.of();

    @Option(names = "--part", paramLabel = "PART", description = "They show this part.")
    private Optional<String> part = Optional.empty();

    @Option(names = "--cylinder", paramLabel = "N", description = "They show this cylinder.")
    private Optional<Integer> cylinder = Optional.empty();

    @Option(names = "--plug", paramLabel = "N", description = "They show the plug of this cylinder.")
    private Optional<Integer> plug = Optional.empty();

    @Option(names = "--borescope", paramLabel = "N", description = "They show what a borescope sees in this cylinder.")
    private Optional<Integer> borescope = Optional.empty();

    @Option(names = "--setup", paramLabel = "NAME", description = "They show this setup.")
    private Optional<String> setup = Optional.empty();

    @Option(names = "--words", paramLabel = "TEXT", description = "What is to be seen.")
    private String words = "";

    @Spec
    private CommandSpec spec;

    @Mixin
    private Output output;

    PictureCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        OpenSession open = tools.desk().open(session);
        LocalDateTime now = LocalDateTime.now(ZoneId.systemDefault()).withNano(0);
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
        EngineProfile profile = open.session().profile();
        return part.map(About::part)
                .or(() -> cylinder.map(profile::requireCylinder).map(About::cylinder))
                .or(() -> plug.map(profile::requireCylinder).map(About::plug))
                .or(() -> borescope.map(profile::requireCylinder).map(About::borescope))
                .or(() -> setup.map(name -> known(open, name)).map(About::setup))
                .orElse(About.car());
    }

    private String known(OpenSession open, String name) {
        List<String> names = open.session().setups().stream().map(Setup::name).toList();
        if (!names.contains(name)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "There is no setup \"" + name + "\"; there are " + String.join(", ", names) + ".");
        }
        return name;
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
