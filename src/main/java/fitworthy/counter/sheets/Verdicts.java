package fitworthy.counter.sheets;

import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.View;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.LastUsed;
import fitworthy.source.Digests;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What sheets come to, each worked out once for the same text beside the same shelf. By any thread. */
final class Verdicts {

    /** More than a folder holds; those asked for longest ago go first. */
    private static final int MOST = 2000;

    private final Desk desk;
    private final LastUsed<CameTo> known = new LastUsed<>(MOST);

    Verdicts(Desk desk) {
        this.desk = desk;
    }

    /** Empty where it would first have to be worked out: neither here nor on the page of the sheet it was. */
    Optional<CameTo> known(Listed sheet) {
        return sheet.unreadable().isEmpty()
                ? known.find(key(sheet))
                        .or(() -> desk.arranged(sheet.file(), sheet.text()).map(CameTo::of))
                : Optional.of(CameTo.of(sheet.unreadable()));
    }

    CameTo of(Listed sheet) {
        return known(sheet).orElseGet(() -> {
            CameTo came = worked(sheet);
            known.put(key(sheet), came);
            return came;
        });
    }

    private String key(Listed sheet) {
        View view = desk.view();
        return Digests.of(
                sheet.text(),
                sheet.file(),
                view.key(),
                view.shelves().of(place(sheet)).content());
    }

    private String place(Listed sheet) {
        return desk.folder().path().resolve(sheet.file()).toString();
    }

    private CameTo worked(Listed sheet) {
        View view = desk.view();
        List<Fault> faults = new ArrayList<>();
        try {
            View.Read read = view.read(NodeReader.read(Place.of(place(sheet)), sheet.text(), faults), faults);
            return CameTo.of(Arrangement.of(Adviser.counted(view.engine(), read.sheet())));
        } catch (FaultsException e) {
            return CameTo.of(e.faults());
        }
    }
}
