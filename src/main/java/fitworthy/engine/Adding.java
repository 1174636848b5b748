package fitworthy.engine;

import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Place;
import fitworthy.source.Standing;
import fitworthy.source.WholeFile;
import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is being added at the end of several files of a book. A note of it stands in the book's folder before the first of
 * them is put in its place and until the last is. A run that is killed between the two leaves the note: nobody reads that
 * book, and the next addition takes back first what is there of this one.
 */
public final class Adding implements Closeable {

    private static final String NOTE = ".adding";
    private static final String HEADING =
            "# What 'fitworthy begin' adds: file, letters before, digests before and after; last a digest of this\n";
    /** A page of a topic, and so no way out of the book. */
    private static final Pattern LINE =
            Pattern.compile("([a-z]+/[a-z]+\\.(?:drl|yaml)) ([0-9]{1,7}) ([0-9a-f]{32}) ([0-9a-f]{32})");

    private final Path folder;
    private final Path note;
    private final FileChannel channel;

    /** Has the note for itself, so that none takes back what another still adds. */
    private Adding(Path folder) throws IOException {
        this.folder = folder;
        note = note(folder);
        channel = FileChannel.open(note, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        if (!isLocked() || !Files.exists(note)) {
            channel.close();
            throw busy(note);
        }
    }

    private boolean isLocked() {
        try {
            // Beyond its text, which some systems would not let anybody read then.
            return channel.tryLock(InputFile.LARGEST_BYTES, 1, false) != null;
        } catch (OverlappingFileLockException e) {
            return false;
        } catch (IOException e) {
            // A disk that knows no locks.
            return true;
        }
    }

    private static FileSystemException busy(Path note) {
        return new FileSystemException(note.toString(), null, "another run is adding to this book");
    }

    /** Where the note stands. */
    public static Path note(Path folder) {
        return folder.resolve(NOTE);
    }

    /**
     * Takes note of what is going to be added.
     *
     * @param before texts as they are, by file
     * @param after the same with what is added at their ends
     * @throws IOException where the note cannot be written or another run adds something; nothing is changed then
     */
    public static Adding begin(Path folder, Map<Path, String> before, Map<Path, String> after) throws IOException {
        StringBuilder text = new StringBuilder(HEADING);
        before.forEach(
                (file, was) -> text.append(folder.relativize(file).toString().replace('\\', '/'))
                        .append(" " + was.length() + " " + Digests.of(was) + " " + Digests.of(after.get(file)) + "\n"));
        text.append(Digests.of(text.toString())).append("\n");
        try {
            WholeFile.writeNew(note(folder), text.toString().getBytes(StandardCharsets.UTF_8));
        } catch (FileAlreadyExistsException e) {
            throw busy(note(folder));
        }
        return new Adding(folder);
    }

    /** Whether a book has no note of an earlier run; a fault where it has one. */
    static boolean check(Path folder, List<Fault> faults) {
        if (!Files.exists(note(folder), LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        faults.add(new Fault(
                Place.of(note(folder).toString()),
                "",
                "'begin' was stopped before it had added to all the files it wanted to",
                "run the same 'fitworthy begin' again; it first takes back what was added"));
        return false;
    }

    /**
     * What an earlier run left, or null.
     *
     * @throws IOException where another run is still adding
     */
    public static Adding left(Path folder) throws IOException {
        Path note = note(folder);
        return switch (Standing.at(note, LinkOption.NOFOLLOW_LINKS)) {
            case NOTHING -> null;
            case FILE -> new Adding(folder);
            default -> throw new FileSystemException(note.toString(), null, "this is no file of ours; delete it");
        };
    }

    /**
     * The texts before of those files that have been added to.
     *
     * @throws FaultsException where the note is damaged, or a file is neither as it was nor as it was to be
     */
    public Map<Path, String> before() throws FaultsException {
        List<Fault> faults = new ArrayList<>();
        Map<Path, String> before = new LinkedHashMap<>();
        for (Matcher line : lines(InputFile.text(note, faults), faults)) {
            Path file = folder.resolve(line.group(1));
            String now = InputFile.page(folder, file, faults);
            if (now == null || Digests.of(now).equals(line.group(3))) {
                continue;
            }
            String was = now.substring(0, Math.min(now.length(), Integer.parseInt(line.group(2))));
            if (Digests.of(now).equals(line.group(4)) && Digests.of(was).equals(line.group(3))) {
                before.put(file, was);
            } else {
                faults.add(new Fault(
                        Place.of(file.toString()),
                        "",
                        "has been changed since 'begin' was stopped while it added to it",
                        byHand()));
            }
        }
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
        return before;
    }

    /** What the note says of each file, all of it or a fault. @param text null where it could not be read */
    private List<Matcher> lines(String text, List<Fault> faults) {
        if (text == null) {
            return List.of();
        }
        int end = Math.max(0, text.length() - Digests.of().length() - 1);
        List<Matcher> lines =
                text.substring(0, end).lines().skip(1).map(LINE::matcher).toList();
        if (text.endsWith(Digests.of(text.substring(0, end)) + "\n")
                && lines.stream().allMatch(Matcher::matches)) {
            return lines;
        }
        faults.add(
                new Fault(Place.of(note.toString()), "", "this note of what 'begin' was adding is damaged", byHand()));
        return List.of();
    }

    private String byHand() {
        return "take out by hand what it added, or add what is missing, then delete " + note;
    }

    /** Takes the note away: all is added, or taken back. */
    public void end() throws IOException {
        Files.delete(note);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
