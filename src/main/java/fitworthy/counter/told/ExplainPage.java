package fitworthy.counter.told;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.MissingFigure;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Desk;
import fitworthy.counter.edit.Labels;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Routes;
import fitworthy.counter.page.Sent;
import fitworthy.printout.CheckTables;
import fitworthy.printout.explain.Explained;
import fitworthy.printout.explain.RoomPrintout;
import fitworthy.shelf.Taken;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Why a check came out as it did, how a margin or what is left of room was worked out, and which checks ended without a
 * finding. Each is a part of a page, of the sheet as its file says it now.
 */
public final class ExplainPage implements Routes {

    /** A figure that is missing, with where it is to be given. */
    public record Lacking(MissingFigure figure, List<FieldLink> fields) {}

    private final Desk desk;

    public ExplainPage(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/sheets/{sheet}/explain", this::explain);
        routes.get("/sheets/{sheet}/checks", this::checks);
    }

    /**
     * {@code rule} is a rule's id, or a figure of room; {@code subject}, which may be given several times, and
     * {@code loading} narrow it. {@code limit} stands for the rule and subject of a margin, by the margin's name.
     */
    private void explain(Context sent) {
        Answer now = Sent.sheet(sent, desk).now();
        String loading = Sent.query(sent, "loading");
        Explained explained = now.arrangement()
                .flatMap(arrangement -> sent.queryParam("limit") == null
                        ? rule(now, arrangement, sent.queryParam("rule"), sent.queryParams("subject"), loading)
                        : limit(now, arrangement, sent.queryParam("limit"), loading))
                .orElseThrow(() -> new NotFoundResponse("nothing of this name is explained"));
        sent.html(Pages.html("told/explained.jte", Map.of("explained", explained)));
    }

    private static Optional<Explained> rule(
            Answer now, Arrangement arrangement, String rule, List<String> subjects, String loading) {
        Advice advice = arrangement.advice();
        if (rule == null) {
            return Optional.empty();
        }
        if (RoomPrintout.names(rule)) {
            return Optional.of(Explained.room(advice, rule, Labels::field));
        }
        return advice.book().rules().containsKey(rule)
                ? Optional.of(Explained.of(
                        arrangement, Taken.in(now.read().orElseThrow().tree()), rule, subjects, loading, Labels::field))
                : Optional.empty();
    }

    private static Optional<Explained> limit(Answer now, Arrangement arrangement, String limit, String loading) {
        Advice advice = arrangement.advice();
        return Stream.<List<? extends Assessed>>of(advice.findings(), advice.met(), advice.held())
                .flatMap(List::stream)
                .map(Assessed::judged)
                .filter(judged -> judged.card().againstLimit()
                        && limit.equals(judged.subject() + ": "
                                + judged.measure().kind().limitMeaning()))
                .findFirst()
                .flatMap(judged -> rule(now, arrangement, judged.id(), List.of(judged.subject()), loading));
    }

    /** {@code which} is {@code open}, {@code held} or {@code met}. */
    private void checks(Context sent) {
        Answer now = Sent.sheet(sent, desk).now();
        Arrangement arrangement = now.arrangement().orElseThrow(() -> new NotFoundResponse("the sheet has a fault"));
        String which = Sent.query(sent, "which");
        sent.html(
                switch (which) {
                    case "open" -> open(now, arrangement);
                    case "held" -> Pages.html("told/blocks.jte", Map.of("blocks", CheckTables.held(arrangement)));
                    case "met" -> Pages.html("told/blocks.jte", Map.of("blocks", CheckTables.met(arrangement)));
                    default -> throw new NotFoundResponse("no such checks");
                });
    }

    private static String open(Answer now, Arrangement arrangement) {
        List<Lacking> lacking = arrangement.figuresToBring().stream()
                .map(figure -> new Lacking(
                        figure,
                        figure.fields().stream()
                                .map(field -> FieldLink.of(now, field.path()))
                                .toList()))
                .toList();
        return Pages.html("told/open.jte", Map.of("lacking", lacking, "gaps", arrangement.gapsOfTheBook()));
    }
}
