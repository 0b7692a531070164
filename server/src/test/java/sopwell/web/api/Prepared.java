package sopwell.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;
import sopwell.web.api.OpenApi.Operation;

/** Brings a stand to where an operation of the description can be done. */
final class Prepared {
    private final StandServer stand;

    Prepared(StandServer stand) {
        this.stand = stand;
    }

    /** The operation's path with ids of things that are ready for it. */
    String path(Operation operation) {
        String path = operation.path();
        if (path.equals("/api/days/closed")) {
            closeAll();
        }
        if (path.equals("/api/days/reopened")) {
            closeAll();
            done("/api/days/closed", "");
        }
        if (path.startsWith("/api/till/")) {
            till(path);
        }
        if (path.equals("/api/outs/back")) {
            done("/api/outs", "{\"out\": \"option:provolone\"}");
        }
        if (path.equals("/api/prep/calendar/occasions/removed")) {
            String festival = "{\"date\": \"tomorrow\", \"name\": \"river festival\"}";
            done("/api/prep/calendar/occasions", festival);
        }
        if (path.contains("{order}")) {
            path = path.replace("{order}", order(path));
        }
        if (path.contains("{part}")) {
            path = path.replace("{part}", part(path));
        }
        if (path.contains("{query}")) {
            path = path.replace("{query}", query());
        }
        if (path.contains("{batch}")) {
            path = path.replace("{batch}", batch(path));
        }
        if (path.contains("{date}")) {
            order("");
        }
        return path.replace("{date}", "today")
                .replace("{board}", "line")
                .replace("{pan}", "beef")
                .replace("{station}", "line");
    }

    private String order(String path) {
        String id = stand.place("2 beef dipped hot, fries").path("order").textValue();
        if (path.endsWith("/handed")
                || path.endsWith("/called")
                || path.endsWith("/brought-back")) {
            allUp(id);
        }
        if (path.endsWith("/refunds")) {
            done("/api/orders/" + id + "/payments", "{\"means\": \"cash\"}");
        }
        if (path.endsWith("/brought-back")) {
            done("/api/orders/" + id + "/handed", "");
        }
        return id;
    }

    /** Ana's till is open, unless it is to be opened. */
    private void till(String path) {
        closeTills();
        if (!path.endsWith("/opened")) {
            done("/api/till/opened", "{\"cashier\": \"Ana\", \"floatCents\": 10000}");
        }
    }

    private void closeTills() {
        for (JsonNode till : stand.get("/api/till").json().path("open")) {
            String cashier = till.path("cashier").textValue();
            done("/api/till/closed", "{\"cashier\": \"" + cashier + "\", \"counts\": []}");
        }
    }

    private String part(String path) {
        String order = order("");
        String part = order + ".1.line";
        if (path.endsWith("/brought-back") || path.endsWith("/remakes")) {
            done("/api/parts/" + part + "/up", "");
        }
        if (path.endsWith("/seen")) {
            done("/api/parts/" + part + "/started", "");
            done("/api/orders/" + order + "/changes", "{\"version\": 1, \"call\": \"beef dry\"}");
        }
        return part;
    }

    private String query() {
        String part = order("") + ".1.line";
        Got got =
                stand.post(
                        "/api/parts/" + part + "/queries", "{\"options\": [\"dry\", \"dipped\"]}");
        return got.json().path("query").textValue();
    }

    /** A batch that is on, or made when it is to be used up. */
    private String batch(String path) {
        Got got = stand.post("/api/prep/batches", "{\"makes\": \"beef-sliced\"}");
        String id = got.json().path("batch").textValue();
        if (path.endsWith("/used-up")) {
            done("/api/prep/batches/" + id + "/yield", "{\"amount\": \"3\", \"unit\": \"kg\"}");
        }
        return id;
    }

    private void closeAll() {
        closeTills();
        for (JsonNode order : stand.get("/api/orders?open=true").json().path("orders")) {
            String id = order.path("order").textValue();
            done("/api/orders/" + id + "/voids", "{\"reason\": \"the day ends\"}");
        }
        done("/api/days/opened", "");
    }

    private void allUp(String order) {
        for (JsonNode part : stand.get("/api/orders/" + order).json().path("parts")) {
            done("/api/parts/" + part.path("part").textValue() + "/up", "");
        }
    }

    private void done(String path, String body) {
        Got got = stand.post(path, body);
        if (got.status() != 200) {
            throw new AssertionError(path + ": " + got.text());
        }
    }
}
