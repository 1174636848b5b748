package fitworthy.counter.plan;

import fitworthy.counter.desk.Desk;
import fitworthy.counter.desk.OpenSheet;
import fitworthy.counter.page.FieldPath;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Routes;
import fitworthy.counter.page.Sent;
import fitworthy.source.NodePath;
import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import java.util.function.BiFunction;

/** What the plan shows only once it is opened. */
public final class PlanRoutes implements Routes {

    private final Desk desk;

    public PlanRoutes(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/sheets/{sheet}/plan/fields", sent -> fields(sent, Form::body));
        routes.get("/sheets/{sheet}/plan/more", sent -> fields(sent, Form::rest));
        routes.get("/sheets/{sheet}/plan/finder", sent -> finder(sent, "plan/finder-body.jte"));
        routes.get("/sheets/{sheet}/plan/found", sent -> finder(sent, "plan/found.jte"));
    }

    private PlanSheet sheet(Context sent) {
        OpenSheet sheet = Sent.sheet(sent, desk);
        if (sheet.now().tree() == null) {
            throw new NotFoundResponse("the sheet cannot be read");
        }
        return new PlanSheet(sheet.now());
    }

    private void fields(Context sent, BiFunction<Form, NodePath, Group> shown) {
        Form form = new Form(sheet(sent), Form.opened(Sent.query(sent, "opened")));
        try {
            String path = Sent.query(sent, "path");
            Group group = shown.apply(form, path.isEmpty() ? NodePath.TOP : FieldPath.of(path));
            sent.html(Pages.html(
                    "plan/group.jte",
                    Map.of("group", group, "titled", true, "address", PlanSheet.address(sent.pathParam("sheet")))));
        } catch (IllegalArgumentException e) {
            throw new BadRequestResponse("no such field");
        }
    }

    private void finder(Context sent, String template) {
        sent.html(Pages.html(
                template,
                Map.of(
                        "finder", Finder.of(sheet(sent), Sent.query(sent, "filter")),
                        "address", PlanSheet.address(sent.pathParam("sheet")))));
    }
}
