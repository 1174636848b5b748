package fitworthy.counter.told;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.OpenSheet;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.counter.page.Routes;
import fitworthy.counter.page.Sent;
import fitworthy.counter.search.Search;
import fitworthy.counter.search.Searches;
import fitworthy.counter.sheet.SheetPage.Changes;
import fitworthy.printout.ChangeWords;
import fitworthy.printout.EditWords;
import fitworthy.printout.words.LoadedVerdict;
import fitworthy.printout.words.Verdict;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What if: changes that help and the sheet's open choices, looked for when somebody asks, and told to be of another state
 * once the sheet changes. An offer is tried without a letter being written, and taken in one step that can be undone.
 */
public final class OffersPane implements Pane, Routes, Changes {

    /** In seconds. */
    private static final double SHORT = 10;

    private static final double LONG = 60;

    private final Desk desk;
    private final Searches searches;
    private final Map<String, Looked> last = new ConcurrentHashMap<>();

    /** A search that somebody asked for, and what it found, worded once. */
    private static final class Looked {
        private final Search search;
        private final Advice planned;
        private Offered offered;

        Looked(Search search, Advice planned) {
            this.search = search;
            this.planned = planned;
        }

        /** Empty while it goes on. */
        synchronized Optional<Offered> found() {
            if (offered == null) {
                offered =
                        search.found().map(found -> Offered.of(planned, found)).orElse(null);
            }
            return Optional.ofNullable(offered);
        }
    }

    /**
     * What is shown before a search and while it goes on.
     *
     * @param tried how many plans were looked at; -1 where no search goes on
     */
    public record Looking(String address, int tried) {}

    /**
     * What was found.
     *
     * @param left the key of the offer that somebody came back from; empty where nobody did
     * @param current whether the sheet still says what it was found for; else it can be read, but not tried
     * @param taken the offer that was taken just now; empty where none was
     */
    public record Shown(String address, Offered offered, String left, boolean current, String taken) {}

    /**
     * The advice as it would be.
     *
     * @param verdict of the changed plan, in sentences
     * @param changed what becomes of the findings and the axles
     * @param writable whether it can be taken
     */
    public record Tried(
            String address,
            Offered.Item item,
            List<String> verdict,
            String changed,
            List<EditWords.Left> left,
            boolean writable) {

        /** What is won and lost beside the verdict. */
        public List<String> lines() {
            return item.lines().stream()
                    .filter(line -> !line.startsWith(ChangeWords.THEN))
                    .toList();
        }
    }

    public OffersPane(Desk desk, Searches searches) {
        this.desk = desk;
        this.searches = searches;
    }

    @Override
    public String id() {
        return "offers";
    }

    /** What was found for another state of the sheet stays, told as such; what is still looked for is given up. */
    @Override
    public String html(Seen seen) {
        Optional<Looked> looked = Optional.ofNullable(last.get(seen.sheet().name()));
        boolean current = looked.filter(one -> one.search.isOf(seen.now())).isPresent();
        if (!current) {
            looked.ifPresent(one -> one.search.leave());
        }
        boolean taken = seen.before().isPresent() && !seen.asked("offer").isEmpty();
        return looked.flatMap(Looked::found)
                .map(offered -> shown(new Shown(
                        Addresses.of(seen.sheet()),
                        offered,
                        "",
                        current,
                        taken ? words(offered, seen.asked("offer")) : "")))
                .orElseGet(() -> looking(seen.sheet(), -1));
    }

    private static String words(Offered offered, String key) {
        return offered.item(key).map(Offered.Item::words).orElse("");
    }

    private static String shown(Shown shown) {
        return Pages.html("told/offers.jte", Map.of("shown", shown));
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/sheets/{sheet}/offers", this::show);
        routes.get("/sheets/{sheet}/try", this::attempt);
    }

    private static String looking(OpenSheet sheet, int tried) {
        return Pages.html("told/looking.jte", Map.of("looking", new Looking(Addresses.of(sheet), tried)));
    }

    /**
     * Begins a search where none is about this plan, and tells how far it is or what it found. {@code longer} begins
     * one that may take longer; {@code left} is the offer that somebody comes back from.
     */
    private void show(Context sent) {
        OpenSheet sheet = Sent.sheet(sent, desk);
        Answer now = sheet.now();
        if (now.advice().isEmpty()) {
            sent.html(looking(sheet, -1));
            return;
        }
        Search search = searches.of(now, sent.queryParam("longer") == null ? SHORT : LONG);
        Looked looked = last.compute(
                sheet.name(),
                (name, before) -> before != null && before.search == search
                        ? before
                        : new Looked(search, now.advice().get()));
        String left = Sent.query(sent, "left");
        sent.html(looked.found()
                .map(offered -> shown(new Shown(Addresses.of(sheet), offered, left, true, "")))
                .orElseGet(() -> looking(sheet, search.tried())));
    }

    private Optional<Offered.Item> item(OpenSheet sheet, Answer now, String key) {
        return Optional.ofNullable(last.get(sheet.name()))
                .filter(looked -> looked.search.isOf(now))
                .flatMap(Looked::found)
                .flatMap(offered -> offered.item(key));
    }

    /** The advice as it would be with {@code offer}; nothing is written. */
    private void attempt(Context sent) {
        OpenSheet sheet = Sent.sheet(sent, desk);
        Answer now = sheet.now();
        Optional<Offered.Item> item = item(sheet, now, Sent.query(sent, "offer"));
        sent.html(
                item.map(offer -> Pages.html("told/tried.jte", Map.of("tried", tried(Addresses.of(sheet), now, offer))))
                        .orElseGet(() -> looking(sheet, -1)));
    }

    private static Tried tried(String address, Answer now, Offered.Item offer) {
        Optional<Answer> written = OfferedText.of(now, offer.changes());
        Arrangement as = now.arrangement().orElseThrow();
        Arrangement then =
                written.flatMap(Answer::arrangement).orElseGet(() -> Arrangement.of(unwritten(now, offer.changes())));
        return new Tried(
                address,
                offer,
                List.of(LoadedVerdict.loaded(then.advice()), Verdict.of(then)),
                EditWords.of(as, then),
                EditWords.left(as, then),
                written.isPresent());
    }

    private static Advice unwritten(Answer now, List<fitworthy.search.Change> changes) {
        try {
            return Adviser.advise(
                    now.view().engine(),
                    OfferedText.sheet(now, changes),
                    now.advice().orElseThrow());
        } catch (FaultsException e) {
            throw new IllegalStateException("changes that made a sheet before make none now", e);
        }
    }

    /** The last part of the address that takes an offer. */
    @Override
    public String name() {
        return "take-offer";
    }

    @Override
    public Change change(Context sent) {
        OpenSheet sheet = Sent.sheet(sent, desk);
        String key = Sent.form(sent, "offer");
        return new Taken(item(sheet, sheet.now(), key));
    }

    private record Taken(Optional<Offered.Item> offer) implements Change {

        @Override
        public String label() {
            return offer.map(Offered.Item::words).orElse("an offer");
        }

        @Override
        public Answer in(Answer now) throws FaultsException {
            return offer.flatMap(item -> OfferedText.of(now, item.changes()))
                    .orElseThrow(() -> new FaultsException(List.of(new Fault(
                            now.place(),
                            "",
                            "this offer was for another state of the sheet, or cannot be written into it",
                            "look for changes again"))));
        }
    }
}
