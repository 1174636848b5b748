package fitworthy.counter.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import fitworthy.document.Json;
import fitworthy.source.InputFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The steps of a sheet, a line of JSON each, in a hidden folder beside it, so that they can be undone after a restart.
 * Lines are only added, each before its sheet is written. One that was torn, or whose sheet was not written any more, is
 * passed over. Where the file cannot be had, or another run has it, steps are kept for this run alone.
 */
final class Journal implements AutoCloseable {

    private static final String FOLDER = ".fitworthy";
    /** What is longer begins anew: nobody goes back so far after a restart. */
    private static final int LONGEST = 8 << 20;

    private final List<Step> steps = new ArrayList<>();
    private FileChannel channel;
    private long end;
    private long before;

    /** @param version what the sheet's text is known again by */
    Journal(Path sheet, String version) {
        Path folder = sheet.toAbsolutePath().resolveSibling(FOLDER);
        Path file = folder.resolve(sheet.getFileName() + ".steps");
        try {
            Files.createDirectories(folder);
            channel = FileChannel.open(
                    file, Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS));
            if (channel.tryLock() == null) {
                close();
            } else {
                read(file, version);
                channel.truncate(end);
            }
        } catch (IOException | OverlappingFileLockException e) {
            close();
        }
    }

    /** The steps that led to the text of the sheet, the oldest first. */
    List<Step> steps() {
        return List.copyOf(steps);
    }

    private void read(Path file, String version) throws IOException {
        byte[] all = new byte[0];
        try (InputStream in = InputFile.open(file)) {
            all = in.readNBytes(LONGEST + 1);
        }
        List<Step> read = new ArrayList<>();
        int begin = 0;
        for (int i = 0; i < all.length && all.length <= LONGEST; i++) {
            if (all[i] == '\n') {
                Step step = step(new String(all, begin, i - begin, StandardCharsets.UTF_8));
                if (step == null) {
                    break;
                }
                begin = i + 1;
                read.add(step);
                if (step.is().equals(version)) {
                    steps.clear();
                    steps.addAll(read);
                    end = begin;
                }
            }
        }
    }

    /** Null where it is none. */
    private static Step step(String line) {
        try {
            return Json.MAPPER.readValue(line, Step.class);
        } catch (JsonProcessingException e) {
            return null;
        }
    }

    void add(Step step) {
        before = end;
        if (channel != null) {
            try {
                ByteBuffer line = ByteBuffer.wrap((Json.line(step) + "\n").getBytes(StandardCharsets.UTF_8));
                while (line.hasRemaining()) {
                    end += channel.write(line, end);
                }
            } catch (IOException e) {
                close();
            }
        }
    }

    /** Takes back the step added last, whose sheet was not written. */
    void takeBack() {
        end = before;
    }

    /** Keeps no more of them. */
    @Override
    public void close() {
        try {
            if (channel != null) {
                channel.close();
            }
        } catch (IOException e) {
            // It is not written to any more.
        }
        channel = null;
    }
}
