package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReasonTest {
    /** The words of strerror for ENOSPC, EDQUOT and EROFS: GNU C library manual, "Error Codes". */
    @ParameterizedTest
    @CsvSource({
        "No space left on device, the disk is full",
        "Disk quota exceeded, the disk is full",
        "Read-only file system, 'the disk may only be read, not written'"
    })
    void whatTheSystemSaysIsPutPlainly(String system, String words) {
        assertThat(Reason.of(new FileSystemException("session.json", null, system)))
                .isEqualTo(words);
        assertThat(Reason.of(new IOException(system))).isEqualTo(words);
    }

    @Test
    void otherWordsOfTheSystemStand() {
        assertThat(Reason.of(new IOException("Input/output error"))).isEqualTo("Input/output error");
    }

    @Test
    void whereTheSystemSaysNothingThereIsStillASentence() {
        assertThat(Reason.of(new NoSuchFileException("x"))).isEqualTo("there is no such file or folder");
        assertThat(Reason.of(new FileSystemException("x"))).isEqualTo("it could not be read or written");
    }
}
