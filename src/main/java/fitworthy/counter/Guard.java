package fitworthy.counter;

import fitworthy.counter.page.Policy;
import fitworthy.counter.page.Routes;
import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.MethodNotAllowedResponse;
import io.javalin.http.UnsupportedMediaTypeResponse;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Looks at each request before anything else does, and refuses what no page of the counter asks. */
final class Guard implements Routes {

    private static final Pattern FORM =
            Pattern.compile("application/x-www-form-urlencoded(; ?charset=utf-8)?", Pattern.CASE_INSENSITIVE);
    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);
    private static final int MOST_FIELDS = 200;
    private static final int LONGEST_NAME = 100;

    private final Names names;

    Guard(Names names) {
        this.names = names;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.before(sent -> {
            Policy.OF_A_PAGE.forEach(sent::header);
            lookAtName(sent);
            if (sent.method() == HandlerType.POST) {
                lookAtOrigin(sent);
                lookAtForm(sent);
            } else if (!READING.contains(sent.method())) {
                throw new MethodNotAllowedResponse();
            }
            lookAtFields(sent.queryParamMap());
        });
    }

    private void lookAtName(Context sent) {
        if (!names.hold(sent.header("Host"), sent.req().getLocalPort())) {
            throw new ForbiddenResponse("The address in your browser is not that of the counter.");
        }
    }

    /** What changes something has to come from a page of this server, which browsers tell. */
    private void lookAtOrigin(Context sent) {
        String site = sent.header("Sec-Fetch-Site");
        if (!names.holdOrigin(sent.header("Origin"), sent.req().getLocalPort())
                || (site != null && !site.equals("same-origin"))) {
            throw new ForbiddenResponse("This was not sent by a page of the counter.");
        }
    }

    private static void lookAtForm(Context sent) {
        String type = sent.contentType();
        if (type == null ? sent.bodyAsBytes().length > 0 : !FORM.matcher(type).matches()) {
            throw new UnsupportedMediaTypeResponse();
        }
        lookAtFields(sent.formParamMap());
    }

    private static void lookAtFields(Map<String, List<String>> fields) {
        int count = fields.values().stream().mapToInt(List::size).sum();
        if (count > MOST_FIELDS || fields.keySet().stream().anyMatch(name -> name.length() > LONGEST_NAME)) {
            throw new BadRequestResponse(
                    "It has more fields, or longer names of fields, than any form of the counter.");
        }
    }
}
