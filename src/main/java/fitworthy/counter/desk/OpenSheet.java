package fitworthy.counter.desk;

import fitworthy.advice.View;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Place;
import fitworthy.source.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** One sheet that is worked on, by however many pages at once. Each change is in its file before it is answered. */
public final class OpenSheet {

    private final Path file;
    private final View view;
    private final Deque<String> undo = new ArrayDeque<>();
    private final Deque<String> redo = new ArrayDeque<>();
    private Answer now;

    public OpenSheet(Path file, View view) {
        this.file = file;
        this.view = view;
    }

    public String name() {
        return file.getFileName().toString();
    }

    /** What the file says now, whoever wrote it. */
    public synchronized Answer now() {
        List<Fault> faults = new ArrayList<>();
        String text = InputFile.text(file, faults);
        if (text == null) {
            text = "";
        }
        if (now == null || !now.text().equals(text)) {
            now = new Answer(view, Place.of(file.toString()), text);
        }
        return now;
    }

    /**
     * Makes a change and writes it.
     *
     * @param base the version that the page shows
     */
    public synchronized Outcome change(String base, Change change) {
        Answer before = now();
        if (!before.version().equals(base)) {
            return new Outcome.Parted("", before);
        }
        try {
            String text = change.in(before);
            undo.push(before.text());
            redo.clear();
            return new Outcome.Done(before, write(text));
        } catch (FaultsException e) {
            return new Outcome.Refused(e.faults(), before);
        }
    }

    public synchronized boolean canUndo() {
        return !undo.isEmpty();
    }

    public synchronized boolean canRedo() {
        return !redo.isEmpty();
    }

    public synchronized Outcome undo() {
        return step(undo, redo);
    }

    public synchronized Outcome redo() {
        return step(redo, undo);
    }

    private Outcome step(Deque<String> from, Deque<String> to) {
        Answer before = now();
        if (from.isEmpty()) {
            return new Outcome.Done(before, before);
        }
        to.push(before.text());
        return new Outcome.Done(before, write(from.pop()));
    }

    private Answer write(String text) {
        try {
            WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return now();
    }
}
