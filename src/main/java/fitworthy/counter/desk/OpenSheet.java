package fitworthy.counter.desk;

import fitworthy.advice.Arrangement;
import fitworthy.advice.View;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** One sheet that is worked on, by however many pages at once. Each change is in its file before it is answered. */
public final class OpenSheet implements AutoCloseable {

    private static final String ELSEWHERE = "a change from elsewhere";
    /** Another hand that writes faster than this is not outrun. */
    private static final int MOST_TRIES = 20;

    private final Path path;
    private final SheetFile file;
    private final View view;
    private final History history = new History();
    private Journal journal;
    private SheetFile.Content content;
    private volatile Answer now;

    public OpenSheet(Path file, View view) {
        this.path = file;
        this.file = new SheetFile(file);
        this.view = view;
    }

    public String name() {
        return path.getFileName().toString();
    }

    /** What the file says now, whoever wrote it. */
    public synchronized Answer now() {
        content = file.read();
        if (content.text() == null) {
            return new Answer(view, Place.of(path.toString()), content.faults());
        }
        if (now == null) {
            now = new Answer(view, Place.of(path.toString()), content.text());
            journal = new Journal(path, now.version());
            journal.steps().forEach(history::add);
        } else if (!now.text().equals(content.text())) {
            keep(Step.between(Step.Kind.DONE, now.text(), content.text(), ELSEWHERE, ""));
            now = now.to(content.text());
        }
        return now;
    }

    /** What a text of it came to, where that is what was last looked at and was worked out already; waits for nobody. */
    public Optional<Arrangement> arranged(String text) {
        return Optional.ofNullable(now).filter(last -> last.text().equals(text)).flatMap(Answer::arranged);
    }

    /**
     * Makes a change and writes it. What others have changed since the page was shown stays; where they have changed
     * the same, nothing is written.
     *
     * @param base the version that the page shows
     */
    public synchronized Outcome change(String base, Change change) {
        for (int i = 0; i < MOST_TRIES; i++) {
            Answer before = now();
            if (content.text() == null) {
                return new Outcome.Refused(content.faults(), before);
            }
            boolean alone = before.version().equals(base);
            Optional<Answer> shown = alone ? Optional.empty() : shown(base, before);
            try {
                Change meant = shown.isPresent() ? change.meant(shown.get()) : change;
                Optional<Outcome> stopped = alone ? Optional.empty() : parted(shown, before, meant);
                if (stopped.isPresent()) {
                    return stopped.get();
                }
                Answer after = meant.in(before);
                FaultsException.refuse(FaultsBrought.by(before, after));
                if (after == before || written(Step.Kind.DONE, after, meant.label(before), meant.joins())) {
                    return new Outcome.Done(before, after);
                }
            } catch (FaultsException e) {
                return new Outcome.Refused(e.faults(), before);
            }
        }
        return refused("another program writes this sheet all the time", "try again once that is done");
    }

    /** Why a change to what a page shows is not made in what stands now; empty where it can be. */
    private static Optional<Outcome> parted(Optional<Answer> shown, Answer before, Change change)
            throws FaultsException {
        Answer mine = change.in(shown.orElse(before));
        if (shown.isPresent() && new Touched(shown.get().tree(), mine.tree()).isSameIn(before.tree())) {
            return Optional.empty();
        }
        return Optional.of(new Outcome.Parted(
                mine.text(),
                Lines.between(before.text(), onTop(before, change, mine).text()),
                before));
    }

    /** What stands now with the change, or where that cannot be made any more, what it made of what was shown. */
    private static Answer onTop(Answer before, Change change, Answer mine) {
        try {
            return change.in(before);
        } catch (FaultsException e) {
            return mine;
        }
    }

    /** What the change would make of the text that a page shows; of what stands now where that is not known any more. */
    public synchronized String made(String base, Change change) throws FaultsException {
        Answer standing = now();
        return change.in(shown(base, standing).orElse(standing)).text();
    }

    private Optional<Answer> shown(String base, Answer standing) {
        return history.text(base, standing.text()).map(standing::to);
    }

    /** What {@link #undo} would undo, in a few words. */
    public synchronized Optional<String> undoes() {
        return history.undoes();
    }

    public synchronized Optional<String> redoes() {
        return history.redoes();
    }

    /** Takes back the last step. @param base the version that the page shows */
    public synchronized Outcome undo(String base) {
        Answer before = now();
        return step(Step.Kind.UNDONE, base, before, history.undone(before.text()));
    }

    /** Does again what was undone last. @param base the version that the page shows */
    public synchronized Outcome redo(String base) {
        Answer before = now();
        return step(Step.Kind.REDONE, base, before, history.redone(before.text()));
    }

    private Outcome step(Step.Kind kind, String base, Answer before, Optional<String> text) {
        if (!before.version().equals(base)) {
            return refused("the sheet has been changed elsewhere since", "look at it, then do this once more");
        }
        if (text.isEmpty()) {
            return new Outcome.Done(before, before);
        }
        Answer after = before.to(text.get());
        return written(kind, after, "", "")
                ? new Outcome.Done(before, after)
                : refused("the sheet is being changed elsewhere", "look at it, then do this once more");
    }

    private Outcome refused(String problem, String mend) {
        Answer standing = now();
        return new Outcome.Refused(List.of(new Fault(standing.place(), "", problem, mend)), standing);
    }

    /** Writes a text in place of what was read last; false where another hand has written meanwhile. */
    private boolean written(Step.Kind kind, Answer after, String label, String joins) {
        Step step = Step.between(kind, now.text(), after.text(), label, joins);
        journal.add(step);
        try {
            if (!file.write(after.text(), content)) {
                journal.takeBack();
                return false;
            }
        } catch (IOException e) {
            journal.takeBack();
            throw new UncheckedIOException(e);
        }
        history.add(step);
        now = after;
        return true;
    }

    private void keep(Step step) {
        journal.add(step);
        history.add(step);
    }

    /** Lets another run keep the steps of this sheet. */
    @Override
    public synchronized void close() {
        if (journal != null) {
            journal.close();
        }
    }
}
