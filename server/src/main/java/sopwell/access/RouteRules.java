package sopwell.access;

import static java.util.Map.entry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sopwell.Check;

/**
 * The right that each route asks for. A route whose parameter decides has a row of its own for each
 * value that differs. Stateless.
 */
final class RouteRules {
    private static final List<Map.Entry<Right, List<String>>> ROWS =
            List.of(
                    entry(
                            Right.OPEN,
                            List.of(
                                    "GET /static/*",
                                    "GET /sw.js",
                                    "GET /away",
                                    "GET /trust",
                                    "GET /trust/sopwell-stand.crt",
                                    "GET /healthz",
                                    "GET /docs/problems",
                                    "GET /api/openapi.json",
                                    "GET /sign-in",
                                    "POST /sign-in",
                                    "POST /sign-out",
                                    "GET /pair",
                                    "POST /pair")),
                    entry(Right.ENTER, List.of("GET /", "GET /screens", "POST /screens")),
                    entry(
                            Right.LOOK_READY,
                            List.of("GET /ready", "GET /ws/boards/ready", "GET /api/boards/ready")),
                    entry(
                            Right.LOOK_BOARDS,
                            List.of(
                                    "GET /boards/{station}",
                                    "GET /pass",
                                    "GET /ws/boards/{board}",
                                    "GET /api/boards/{board}",
                                    "GET /api/orders",
                                    "GET /api/orders/{order}",
                                    "GET /api/outs",
                                    "GET /api/pans",
                                    "GET /api/menu",
                                    "GET /outs")),
                    entry(
                            Right.WORK_LINE,
                            List.of(
                                    "POST /boards/{station}/parts/{part}/started",
                                    "POST /boards/{station}/parts/{part}/up",
                                    "POST /boards/{station}/parts/{part}/seen",
                                    "POST /boards/{station}/parts/{part}/have",
                                    "POST /boards/{station}/parts/{part}/brought-back",
                                    "POST /boards/{station}/brought-back-last",
                                    "GET /boards/{station}/parts/{part}/question",
                                    "POST /boards/{station}/parts/{part}/queries",
                                    "GET /boards/{station}/parts/{part}/remake",
                                    "GET /boards/{station}/remake-last",
                                    "POST /boards/{station}/parts/{part}/remakes",
                                    "POST /boards/{station}/loads/started",
                                    "POST /boards/{station}/loads/up",
                                    "POST /boards/{station}/pans/{pan}/refilled",
                                    "GET /pass/orders/{order}/remake",
                                    "POST /pass/orders/{order}/handed",
                                    "POST /pass/orders/{order}/brought-back",
                                    "POST /pass/orders/{order}/called",
                                    "POST /pass/orders/{order}/bags",
                                    "POST /orders/{order}/papers",
                                    "POST /outs",
                                    "POST /api/orders/{order}/called",
                                    "POST /api/orders/{order}/bags",
                                    "POST /api/orders/{order}/handed",
                                    "POST /api/orders/{order}/brought-back",
                                    "POST /api/parts/{part}/started",
                                    "POST /api/parts/{part}/up",
                                    "POST /api/parts/{part}/brought-back",
                                    "POST /api/parts/{part}/seen",
                                    "POST /api/parts/{part}/remakes",
                                    "POST /api/parts/{part}/queries",
                                    "POST /api/stations/{station}/hands",
                                    "POST /api/pans/{pan}/refills",
                                    "POST /api/outs",
                                    "POST /api/outs/back")),
                    entry(
                            Right.LOOK_PREP,
                            List.of(
                                    "GET /prep",
                                    "GET /prep/sheet",
                                    "GET /prep/past",
                                    "GET /prep/stock",
                                    "GET /prep/batches",
                                    "GET /prep/clocks",
                                    "GET /prep/batches/{batch}",
                                    "GET /prep/calendar",
                                    "GET /prep/terms",
                                    "GET /api/prep/plan",
                                    "GET /api/prep/stock",
                                    "GET /api/prep/batches",
                                    "GET /api/prep/calendar")),
                    entry(
                            Right.PREP,
                            List.of(
                                    "GET /prep/counts",
                                    "POST /prep/counts",
                                    "POST /prep/batches",
                                    "POST /prep/batches/{batch}",
                                    "POST /prep/slicer/cleaned",
                                    "POST /prep/clocks",
                                    "POST /prep/clocks/{clock}",
                                    "POST /api/prep/counts",
                                    "POST /api/prep/waste",
                                    "POST /api/prep/deliveries",
                                    "POST /api/prep/slicer/cleaned",
                                    "POST /api/prep/batches",
                                    "POST /api/prep/batches/{batch}/moves",
                                    "POST /api/prep/batches/{batch}/temperatures",
                                    "POST /api/prep/batches/{batch}/yield",
                                    "POST /api/prep/batches/{batch}/discard",
                                    "POST /api/prep/batches/{batch}/used-up",
                                    "GET /recipes",
                                    "GET /recipes/new",
                                    "GET /recipes/kitchen",
                                    "GET /recipes/{ingredient}",
                                    "GET /recipes/{ingredient}/all",
                                    "GET /api/recipes")),
                    entry(
                            Right.TAKE_ORDERS,
                            List.of(
                                    "GET /counter",
                                    "GET /counter/away",
                                    "GET /counter/kits/{language}",
                                    "POST /counter/reading",
                                    "POST /counter/orders",
                                    "GET /counter/orders/{order}/edit",
                                    "POST /counter/orders/{order}/changes",
                                    "POST /counter/answers",
                                    "POST /counter/again",
                                    "GET /orders",
                                    "GET /ws/boards/counter",
                                    "GET /api/boards/counter",
                                    "POST /api/calls",
                                    "POST /api/orders",
                                    "POST /api/orders/{order}/changes",
                                    "POST /api/queries/{query}/answers")),
                    entry(
                            Right.TAKE_MONEY,
                            List.of(
                                    "GET /counter/orders/{order}/pay",
                                    "GET /counter/orders/{order}/money",
                                    "POST /counter/orders/{order}/payments",
                                    "POST /counter/orders/{order}/discounts",
                                    "GET /till",
                                    "POST /till/opened",
                                    "POST /till/chosen",
                                    "POST /till/paid-in",
                                    "POST /till/closed",
                                    "GET /api/till",
                                    "POST /api/orders/{order}/payments",
                                    "POST /api/orders/{order}/discounts",
                                    "POST /api/till/opened",
                                    "POST /api/till/paid-in",
                                    "POST /api/till/closed")),
                    entry(
                            Right.VOID,
                            List.of(
                                    "POST /counter/orders/{order}/voids",
                                    "POST /api/orders/{order}/voids")),
                    entry(
                            Right.MONEY_OUT,
                            List.of("POST /till/paid-out", "POST /api/till/paid-out")),
                    entry(
                            Right.REFUND,
                            List.of(
                                    "POST /counter/orders/{order}/refunds",
                                    "POST /api/orders/{order}/refunds")),
                    entry(
                            Right.SEE_FIGURES,
                            List.of(
                                    "GET /mix",
                                    "GET /mix/{date}",
                                    "GET /waits",
                                    "GET /waits/{date}",
                                    "GET /waits/{date}/slowest",
                                    "GET /playback",
                                    "GET /playback/{date}",
                                    "GET /playback/{date}/boards/{station}",
                                    "GET /what-if",
                                    "GET /what-if/{date}",
                                    "GET /api/mix",
                                    "GET /api/waits",
                                    "GET /api/days/{date}/mix",
                                    "GET /api/days/{date}/waits")),
                    entry(Right.WATCH, List.of("GET /metrics")),
                    entry(
                            Right.SEE_MONEY,
                            List.of(
                                    "GET /audit",
                                    "GET /audit/{date}",
                                    "GET /till/{date}",
                                    "GET /api/days/{date}/till")),
                    entry(
                            Right.CLOSE_DAY,
                            List.of(
                                    "GET /close",
                                    "POST /close/closed",
                                    "POST /api/days/opened",
                                    "POST /api/days/closed")),
                    entry(
                            Right.REOPEN_DAY,
                            List.of("POST /close/reopened", "POST /api/days/reopened")),
                    entry(
                            Right.CHANGE_PRICES,
                            List.of(
                                    "POST /recipes/new",
                                    "POST /recipes/kitchen",
                                    "POST /recipes/{ingredient}",
                                    "POST /recipes/{ingredient}/all",
                                    "POST /recipes/{ingredient}/retired",
                                    "PUT /api/recipes")),
                    entry(
                            Right.SETTINGS,
                            List.of(
                                    "GET /settings/backup",
                                    "POST /settings/backup",
                                    "GET /settings/names",
                                    "POST /settings/names",
                                    "POST /prep/calendar",
                                    "POST /prep/terms",
                                    "POST /api/prep/calendar/hours",
                                    "POST /api/prep/calendar/occasions",
                                    "POST /api/prep/calendar/occasions/removed",
                                    "POST /api/prep/guesses")),
                    entry(
                            Right.ACCESS,
                            List.of(
                                    "GET /settings/access",
                                    "POST /settings/access/people",
                                    "POST /settings/access/people/{person}/name",
                                    "POST /settings/access/people/{person}/role",
                                    "POST /settings/access/people/{person}/pin",
                                    "POST /settings/access/people/{person}/password",
                                    "POST /settings/access/people/{person}/unlocked",
                                    "POST /settings/access/people/{person}/left",
                                    "POST /settings/access/people/{person}/erased",
                                    "POST /settings/access/devices",
                                    "POST /settings/access/devices/{device}/revoked",
                                    "POST /settings/access/tokens",
                                    "POST /settings/access/tokens/{token}/revoked")));

    /** The right of each route, which is written as {@code METHOD template}. */
    static final Map<String, Right> TABLE = table();

    private RouteRules() {}

    private static Map<String, Right> table() {
        Map<String, Right> table = new HashMap<>();
        for (Map.Entry<Right, List<String>> row : ROWS) {
            for (String route : row.getValue()) {
                Right before = table.put(route, row.getKey());
                Check.that(before == null, "a route has one rule");
            }
        }
        return Map.copyOf(table);
    }
}
