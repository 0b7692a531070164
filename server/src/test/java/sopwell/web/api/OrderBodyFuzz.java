package sopwell.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import sopwell.call.CallParser;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.storage.MenuReader;
import sopwell.web.Fields;
import sopwell.web.Json;
import sopwell.web.T;
import sopwell.web.Texts;

/** Any bytes as the body of an order: lines that the menu allows, or a refusal with a sentence. */
public final class OrderBodyFuzz {
    private static final Menu MENU = menu();
    private static final CallParser PARSER = new CallParser(MENU);
    private static final T TEXT = Texts.load().in(Lang.EN);
    private static final ApiContext CONTEXT =
            new ApiContext(
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    menu -> PARSER,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null);

    private OrderBodyFuzz() {}

    /** One body. */
    public static void fuzzerTestOneInput(byte[] data) {
        try {
            JsonNode body = Json.object(data);
            List<?> asked = LinesReader.read(new Fields(body, ""), CONTEXT, MENU, TEXT);
            if (asked == null) {
                throw new AssertionError("neither lines nor a refusal");
            }
        } catch (Json.BadJson bad) {
            said(bad.problem(TEXT).detail());
        } catch (Refused refused) {
            said(refused.problem().detail());
        }
    }

    private static void said(String detail) {
        if (detail.isBlank()) {
            throw new AssertionError("no sentence: " + detail);
        }
    }

    private static Menu menu() {
        try (InputStream in = OrderBodyFuzz.class.getResourceAsStream("/demo/menu.json")) {
            return MenuReader.read(in.readAllBytes()).menu().orElseThrow();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
