package fitworthy.effect;

import com.fasterxml.jackson.core.JsonProcessingException;
import fitworthy.advice.View;
import fitworthy.batch.LineReader;
import fitworthy.document.Json;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import fitworthy.source.ProgramFile;
import fitworthy.source.Standing;
import java.io.Closeable;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What has been found out so far, a line of JSON for each finished sheet, so that a run that was ended early can go on.
 * Lines are only ever added. One that was torn when the run was ended is passed over, and so is one of another text of
 * the sheet, of another view, or of another build of the program.
 */
final class Journal implements Closeable {

    private static final String HEAD = "{\"shape\":\"fitworthy-effect-journal/1\"}";
    private static final int LONGEST_LINE = 1 << 26;

    /**
     * A line.
     *
     * @param content digest of the sheet's text; null for one that cannot be used, which is looked at again each time
     * @param views digest of both views
     */
    private record Entry(String content, String views, SheetEffect effect) {}

    /** Where a line stands. */
    record Span(long at, int length) {}

    private final FileChannel channel;
    private final String views;
    private final Map<String, Span> finished = new HashMap<>();

    private Journal(FileChannel channel, String views) {
        this.channel = channel;
        this.views = views;
    }

    /**
     * Opens a journal, and goes on with what is in it already.
     *
     * @param path null for one that is forgotten at the end
     * @throws FaultsException where the file is something else, or another run is writing it
     */
    static Journal open(Path path, View before, View after) throws FaultsException, IOException {
        String views = Digests.of(before.key(), after.key(), program());
        if (path == null) {
            Path forgotten = Files.createTempFile("fitworthy-effect-", ".ndjson");
            return new Journal(
                    FileChannel.open(
                            forgotten,
                            StandardOpenOption.READ,
                            StandardOpenOption.WRITE,
                            StandardOpenOption.DELETE_ON_CLOSE),
                    views);
        }
        Standing.checkWritable(path);
        FileChannel channel =
                FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        try {
            if (!locked(channel)) {
                throw refused(path, "another run is writing it", "a file of its own for each run");
            }
            Journal journal = new Journal(channel, views);
            journal.readFrom(path);
            return journal;
        } catch (FaultsException | IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    /** The build of the program, because another one may reckon otherwise. */
    private static String program() {
        File file = ProgramFile.path().toFile();
        return file.isFile() ? file.length() + " " + file.lastModified() : "";
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    private static FaultsException refused(Path path, String problem, String right) {
        return new FaultsException(List.of(new Fault(Place.of("--resume"), path.toString(), problem, right)));
    }

    private void readFrom(Path path) throws FaultsException, IOException {
        // Not closed, since that would close the channel.
        LineReader lines = new LineReader(Channels.newInputStream(channel.position(0)), LONGEST_LINE);
        byte[] head = lines.next();
        String begin = head == null ? "" : new String(head, StandardCharsets.UTF_8);
        if (!lines.ended() && HEAD.startsWith(begin)) {
            channel.truncate(0);
            append(HEAD);
            return;
        }
        if (!begin.equals(HEAD)) {
            throw refused(
                    path,
                    "is not a journal of this command, so nothing is added to it",
                    "a file that is not there yet");
        }
        long at = lines.at();
        for (byte[] line = lines.next(); line != null; line = lines.next()) {
            if (lines.ended()) {
                note(line, at);
            }
            at = lines.at();
        }
        if (!lines.ended()) {
            channel.write(ByteBuffer.wrap(new byte[] {'\n'}), channel.size());
        }
    }

    private void note(byte[] line, long at) throws IOException {
        try {
            Entry entry = Json.MAPPER.readValue(line, Entry.class);
            if (views.equals(entry.views) && entry.content != null && entry.effect != null) {
                finished.put(entry.content, new Span(at, line.length));
            }
        } catch (JsonProcessingException e) {
            // Torn, or damaged: the sheet is looked at again.
        }
    }

    /** Where a text was finished with by an earlier run. */
    Optional<Span> find(String content) {
        return Optional.ofNullable(finished.get(content));
    }

    /** A line for a finished sheet. */
    String line(String content, SheetEffect effect) {
        return Json.line(new Entry(effect.isBad() ? null : content, views, effect));
    }

    /** Adds a line; by one thread at a time. */
    Span append(String line) {
        try {
            byte[] bytes = (line + "\n").getBytes(StandardCharsets.UTF_8);
            long at = channel.size();
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest, at + rest.position());
            }
            return new Span(at, bytes.length - 1);
        } catch (IOException e) {
            throw new JournalNotWritten(e);
        }
    }

    /** What stands in a line. */
    SheetEffect read(Span span) {
        try {
            ByteBuffer line = ByteBuffer.allocate(span.length);
            while (line.hasRemaining() && channel.read(line, span.at + line.position()) >= 0) {
                // Reads on until all of it is there.
            }
            return Json.MAPPER.readValue(line.array(), Entry.class).effect;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
