package sopwell.web.api;

import io.undertow.server.HttpHandler;
import io.undertow.server.RoutingHandler;
import io.undertow.util.Methods;
import java.util.List;
import java.util.function.Function;
import sopwell.kitchen.KitchenCommand;
import sopwell.web.api.ApiRoute.Handlers;

/** The routes of the program interface. Stateless. */
public final class ApiRoutes {
    /** Every route there is; the interface's description is held to this list. */
    static final List<ApiRoute> ALL =
            List.of(
                    post("/api/calls", h -> h.calls().question(h.readings()::read)),
                    post("/api/orders", h -> h.calls().write(h.orders()::place)),
                    get("/api/orders", h -> h.calls().read(h.orders()::list)),
                    get("/api/orders/{order}", h -> h.calls().read(h.orders()::get)),
                    post("/api/orders/{order}/changes", h -> h.calls().write(h.orders()::change)),
                    post("/api/orders/{order}/voids", h -> h.calls().write(h.orders()::voidOrder)),
                    post("/api/orders/{order}/called", h -> h.calls().write(h.pass()::call)),
                    post("/api/orders/{order}/bags", h -> h.calls().write(h.pass()::bags)),
                    post("/api/orders/{order}/handed", h -> h.calls().write(h.orders()::hand)),
                    post(
                            "/api/orders/{order}/brought-back",
                            h -> h.calls().write(h.orders()::bringBack)),
                    post("/api/orders/{order}/discounts", h -> h.calls().write(h.till()::discount)),
                    post("/api/orders/{order}/payments", h -> h.calls().write(h.till()::pay)),
                    post("/api/orders/{order}/refunds", h -> h.calls().write(h.till()::refund)),
                    get("/api/till", h -> h.calls().read(h.till()::now)),
                    post("/api/till/opened", h -> h.calls().write(h.till()::open)),
                    post("/api/till/paid-in", h -> h.calls().write(h.till()::payIn)),
                    post("/api/till/paid-out", h -> h.calls().write(h.till()::payOut)),
                    post("/api/till/closed", h -> h.calls().write(h.till()::close)),
                    post(
                            "/api/parts/{part}/started",
                            h -> h.calls().write(h.parts().move(KitchenCommand.Start::new))),
                    post(
                            "/api/parts/{part}/up",
                            h -> h.calls().write(h.parts().move(KitchenCommand.Up::new))),
                    post(
                            "/api/parts/{part}/brought-back",
                            h -> h.calls().write(h.parts().move(KitchenCommand.BringBack::new))),
                    post(
                            "/api/parts/{part}/seen",
                            h -> h.calls().write(h.parts().move(KitchenCommand.Seen::new))),
                    post("/api/parts/{part}/remakes", h -> h.calls().write(h.parts()::remake)),
                    post("/api/stations/{station}/hands", h -> h.calls().write(h.parts()::hands)),
                    post("/api/parts/{part}/queries", h -> h.calls().write(h.queries()::ask)),
                    post("/api/queries/{query}/answers", h -> h.calls().write(h.queries()::answer)),
                    post("/api/days/opened", h -> h.calls().write(h.orders()::openDay)),
                    post("/api/days/closed", h -> h.calls().write(h.orders()::closeDay)),
                    post("/api/days/reopened", h -> h.calls().write(h.orders()::reopenDay)),
                    get("/api/mix", h -> h.calls().read(h.periods()::mix)),
                    get("/api/waits", h -> h.calls().read(h.periods()::waits)),
                    get("/api/days/{date}/mix", h -> h.calls().read(h.days()::mix)),
                    get("/api/days/{date}/waits", h -> h.calls().read(h.days()::waits)),
                    get("/api/days/{date}/till", h -> h.calls().read(h.till()::report)),
                    get("/api/boards/{board}", h -> h.calls().read(h.stand()::board)),
                    get("/api/pans", h -> h.calls().read(h.pans()::list)),
                    post("/api/pans/{pan}/refills", h -> h.calls().write(h.pans()::refill)),
                    get("/api/prep/plan", h -> h.calls().read(h.prep()::plan)),
                    get("/api/prep/stock", h -> h.calls().read(h.larder()::list)),
                    post("/api/prep/counts", h -> h.calls().write(h.larder()::count)),
                    post("/api/prep/waste", h -> h.calls().write(h.larder()::waste)),
                    post("/api/prep/deliveries", h -> h.calls().write(h.larder()::deliver)),
                    post("/api/prep/slicer/cleaned", h -> h.calls().write(h.larder()::cleanSlicer)),
                    get("/api/prep/calendar", h -> h.calls().read(h.calendar()::get)),
                    post("/api/prep/calendar/hours", h -> h.calls().write(h.calendar()::hours)),
                    post("/api/prep/calendar/occasions", h -> h.calls().write(h.calendar()::add)),
                    post(
                            "/api/prep/calendar/occasions/removed",
                            h -> h.calls().write(h.calendar()::remove)),
                    post("/api/prep/guesses", h -> h.calls().write(h.calendar()::guess)),
                    get("/api/prep/batches", h -> h.calls().read(h.batches()::list)),
                    post("/api/prep/batches", h -> h.calls().write(h.batches()::start)),
                    post(
                            "/api/prep/batches/{batch}/moves",
                            h -> h.calls().write(h.batches()::move)),
                    post(
                            "/api/prep/batches/{batch}/temperatures",
                            h -> h.calls().write(h.batches()::measure)),
                    post(
                            "/api/prep/batches/{batch}/yield",
                            h -> h.calls().write(h.batches()::gave)),
                    post(
                            "/api/prep/batches/{batch}/discard",
                            h -> h.calls().write(h.batches()::discard)),
                    post(
                            "/api/prep/batches/{batch}/used-up",
                            h -> h.calls().write(h.batches()::useUp)),
                    get("/api/outs", h -> h.calls().read(h.outs()::list)),
                    post("/api/outs", h -> h.calls().write(h.outs()::mark)),
                    post("/api/outs/back", h -> h.calls().write(h.outs()::lift)),
                    get("/api/menu", h -> h.calls().read(h.stand()::menu)),
                    get("/api/recipes", h -> h.calls().read(h.recipes()::get)),
                    put("/api/recipes", h -> h.calls().write(h.recipes()::put)),
                    get("/api/openapi.json", h -> h.calls().read(h.stand()::description)),
                    get("/docs/problems", h -> h.calls().read(h.stand()::problems)),
                    get("/metrics", h -> h.calls().read(h.stand()::metrics)),
                    get("/healthz", h -> h.calls().read(h.stand()::health)));

    private ApiRoutes() {}

    /** Adds every route of the program interface. */
    public static void add(RoutingHandler routes, ApiContext context) {
        Handlers handlers = Handlers.of(context);
        ALL.forEach(r -> routes.add(r.method(), r.path(), r.handler().apply(handlers)));
    }

    private static ApiRoute get(String path, Function<Handlers, HttpHandler> handler) {
        return new ApiRoute(Methods.GET, path, handler);
    }

    private static ApiRoute put(String path, Function<Handlers, HttpHandler> handler) {
        return new ApiRoute(Methods.PUT, path, handler);
    }

    private static ApiRoute post(String path, Function<Handlers, HttpHandler> handler) {
        return new ApiRoute(Methods.POST, path, handler);
    }
}
