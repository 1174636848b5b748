package fitworthy.counter;

import fitworthy.counter.page.Policy;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers what is refused before any page is asked, such as a request that is none. */
final class BelowPages extends ErrorHandler {

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        fill(response.getHeaders());
        response.write(true, page(response.getStatus()), callback);
        return true;
    }

    @Override
    public ByteBuffer badMessageError(int status, String reason, HttpFields.Mutable fields) {
        fill(fields);
        return page(status);
    }

    private static void fill(HttpFields.Mutable fields) {
        Policy.OF_A_PAGE.forEach(fields::put);
        fields.put(HttpHeader.CONTENT_TYPE, "text/html; charset=utf-8");
    }

    private static ByteBuffer page(int status) {
        return ByteBuffer.wrap(Failed.page(status).getBytes(StandardCharsets.UTF_8));
    }
}
