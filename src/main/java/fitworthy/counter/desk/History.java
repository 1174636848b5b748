package fitworthy.counter.desk;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** How the text of a sheet became what it is, and which texts one can go back and forth to. */
final class History {

    /** A text to go to. @param label what is undone or done again on the way there */
    private record Mark(String version, String label, String joins) {}

    private final List<Step> steps = new ArrayList<>();
    private final Deque<Mark> undo = new ArrayDeque<>();
    private final Deque<Mark> redo = new ArrayDeque<>();

    void add(Step step) {
        steps.add(step);
        switch (step.kind()) {
            case DONE -> {
                boolean joined = !step.joins().isEmpty()
                        && redo.isEmpty()
                        && !undo.isEmpty()
                        && undo.peek().joins().equals(step.joins());
                if (!joined) {
                    undo.push(new Mark(step.was(), step.label(), step.joins()));
                }
                redo.clear();
            }
            case UNDONE -> move(undo, redo, step);
            case REDONE -> move(redo, undo, step);
        }
    }

    private static void move(Deque<Mark> from, Deque<Mark> to, Step step) {
        Mark mark = from.poll();
        if (mark != null) {
            to.push(new Mark(step.was(), mark.label(), ""));
        }
    }

    /** What is undone next; empty where nothing can be. */
    Optional<String> undoes() {
        return Optional.ofNullable(undo.peek()).map(Mark::label);
    }

    Optional<String> redoes() {
        return Optional.ofNullable(redo.peek()).map(Mark::label);
    }

    /** The text that undoing leads to. @param now the text as the last step left it */
    Optional<String> undone(String now) {
        return Optional.ofNullable(undo.peek()).flatMap(mark -> text(mark.version(), now));
    }

    Optional<String> redone(String now) {
        return Optional.ofNullable(redo.peek()).flatMap(mark -> text(mark.version(), now));
    }

    /** A text that there was. @param now the text as the last step left it */
    Optional<String> text(String version, String now) {
        String text = now;
        for (int i = steps.size() - 1; i >= 0; i--) {
            Step step = steps.get(i);
            if (step.is().equals(version)) {
                return Optional.of(text);
            }
            if (!step.splice().fits(text)) {
                return Optional.empty();
            }
            text = step.splice().undone(text);
            if (step.was().equals(version)) {
                return Optional.of(text);
            }
        }
        return Optional.empty();
    }
}
