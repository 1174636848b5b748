package fitworthy.counter.desk;

import fitworthy.advice.View;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** What one works on: a folder of sheets, and how they are looked at. */
public final class Desk {

    private final SheetFolder folder;
    private final View view;
    private final Map<String, OpenSheet> open = new ConcurrentHashMap<>();

    public Desk(SheetFolder folder, View view) {
        this.folder = folder;
        this.view = view;
    }

    public SheetFolder folder() {
        return folder;
    }

    public View view() {
        return view;
    }

    /** The sheet of this name, the same for all that ask; empty where there is none. */
    public Optional<OpenSheet> sheet(String name) {
        return folder.find(name).map(file -> open.computeIfAbsent(name, none -> new OpenSheet(file, view)));
    }
}
