package fitworthy.counter.desk;

import fitworthy.advice.Arrangement;
import fitworthy.advice.View;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** What one works on: a folder of sheets, and how they are looked at. */
public final class Desk {

    private final SheetFolder folder;
    private final View view;
    private final Path rules;
    private final Map<String, OpenSheet> open = new ConcurrentHashMap<>();

    /** @param rules the folder of the rule book */
    public Desk(SheetFolder folder, View view, Path rules) {
        this.folder = folder;
        this.view = view;
        this.rules = rules;
    }

    public SheetFolder folder() {
        return folder;
    }

    public View view() {
        return view;
    }

    /** The folder of the rule book. */
    public Path rules() {
        return rules;
    }

    /** What a text of a sheet came to, where that was worked out on its page already. */
    public Optional<Arrangement> arranged(String name, String text) {
        return Optional.ofNullable(open.get(name)).flatMap(sheet -> sheet.arranged(text));
    }

    /** The sheet of this name, the same for all that ask; empty where there is none. */
    public Optional<OpenSheet> sheet(String name) {
        return folder.find(name).map(file -> open.computeIfAbsent(name, none -> new OpenSheet(file, view)));
    }
}
