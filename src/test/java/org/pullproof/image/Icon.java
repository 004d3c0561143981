package org.pullproof.image;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** The program's mark as a picture of points. */
final class Icon {
    private Icon() {}

    /** Writes a drawing as PNG in its own size. */
    static Path png(Path svg, Path to) throws IOException {
        try (OutputStream out = Files.newOutputStream(to)) {
            new PNGTranscoder().transcode(new TranscoderInput(svg.toUri().toString()), new TranscoderOutput(out));
            return to;
        } catch (TranscoderException broken) {
            throw new IOException(svg + " cannot be drawn; it should be SVG 1.1", broken);
        }
    }
}
