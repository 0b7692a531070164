package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Deque;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import sopwell.Limits;
import sopwell.prep.MadePlan;
import sopwell.prep.forecast.DayForecast;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.prep.plan.PrepPlan;
import sopwell.prep.plan.PrepPlan.Order;
import sopwell.prep.plan.PrepPlan.StepTime;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.prep.plan.PrepPlan.Warning;
import sopwell.web.PrepPlans.Made;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;
import sopwell.web.T;

/** The plan of prep, for programs. Thread-safe. */
final class PrepApi {
    private static final int DAYS = 5;
    private static final double[] RANGE = {0.05, 0.5, 0.95};
    private static final int PLACES = 3;

    private final ApiContext context;

    PrepApi(ApiContext context) {
        this.context = context;
    }

    /** The dates that are asked for. */
    private record Dates(LocalDate from, int days) {
        boolean has(LocalDate date) {
            return !date.isBefore(from) && date.isBefore(from.plusDays(days));
        }
    }

    CompletableFuture<Reply> plan(HttpServerExchange exchange, T text) throws Refused {
        LocalDate today = LocalDate.ofInstant(context.clock().instant(), context.settings().zone());
        Dates dates = dates(exchange, text, today);
        return context.plans()
                .now()
                .thenApply(made -> Reply.json(200, json -> plan(json, made, dates)));
    }

    private static Dates dates(HttpServerExchange exchange, T text, LocalDate today)
            throws Refused {
        LocalDate last = today.plusDays(Limits.PREP_DAYS_SHOWN_MAX - 1L);
        try {
            LocalDate from = LocalDate.parse(one(exchange, "from", today.toString()));
            int days = Integer.parseInt(one(exchange, "days", Integer.toString(DAYS)));
            boolean isRight =
                    !from.isBefore(today)
                            && !from.isAfter(last)
                            && days >= 1
                            && days <= Limits.PREP_DAYS_SHOWN_MAX;
            if (isRight) {
                return new Dates(from, days);
            }
        } catch (DateTimeParseException | NumberFormatException wrong) {
            throw new Refused(wrong(text, today, last));
        }
        throw new Refused(wrong(text, today, last));
    }

    private static Problem wrong(T text, LocalDate today, LocalDate last) {
        return Problem.of(
                ProblemKind.PLAN_DATES_WRONG, text, today, last, Limits.PREP_DAYS_SHOWN_MAX);
    }

    private static String one(HttpServerExchange exchange, String name, String otherwise) {
        Deque<String> given = exchange.getQueryParameters().get(name);
        return given == null ? otherwise : given.getFirst();
    }

    private static void plan(JsonGenerator json, Made made, Dates dates) throws IOException {
        MadePlan plan = made.plan();
        json.writeStartObject();
        json.writeNumberField("seq", made.seq());
        OrderJson.time(json, "asOf", plan.asOf().toEpochMilli());
        json.writeStringField("from", dates.from().toString());
        json.writeNumberField("days", dates.days());
        ground(json, plan);
        json.writeArrayFieldStart("open");
        for (OpenDay day : plan.days()) {
            if (dates.has(day.date())) {
                open(json, day, plan);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("tasks");
        for (Task task : plan.plan().tasks()) {
            if (dates.has(LocalDate.ofInstant(task.start(), plan.zone()))) {
                task(json, task);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("orders");
        for (Order order : plan.plan().orders()) {
            if (dates.has(LocalDate.ofInstant(order.orderBy(), plan.zone()))) {
                order(json, order);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("warnings");
        for (Warning warning : plan.plan().warnings()) {
            warning(json, warning);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void ground(JsonGenerator json, MadePlan plan) throws IOException {
        MadePlan.Basis basis = plan.basis();
        json.writeObjectFieldStart("basis");
        json.writeStringField("ground", ProblemKind.code(basis.ground()));
        json.writeNumberField("learnedDays", basis.learned());
        if (basis.first().isPresent() && basis.last().isPresent()) {
            json.writeStringField("first", basis.first().get().toString());
            json.writeStringField("last", basis.last().get().toString());
        }
        json.writeNumberField("guessPieces", basis.guessPieces());
        OrderJson.texts(json, "uncounted", plan.uncounted().stream().sorted().toList());
        json.writeEndObject();
    }

    private static void open(JsonGenerator json, OpenDay day, MadePlan plan) throws IOException {
        json.writeStartObject();
        json.writeStringField("date", day.date().toString());
        OrderJson.time(json, "readyBy", day.readyBy().toEpochMilli());
        if (plan.forecast(day.date()).isPresent()) {
            DayForecast forecast = plan.forecast(day.date()).get();
            int[] range = forecast.total().quantiles(RANGE);
            json.writeNumberField("piecesLow", range[0]);
            json.writeNumberField("piecesMedian", range[1]);
            json.writeNumberField("piecesHigh", range[2]);
            number(json, "level", forecast.why().level());
            number(json, "weekday", forecast.why().weekday());
        }
        json.writeEndObject();
    }

    private static void task(JsonGenerator json, Task task) throws IOException {
        json.writeStartObject();
        json.writeStringField("makes", task.makes());
        json.writeNumberField("lots", task.lots());
        number(json, "gives", task.gives().doubleValue());
        json.writeArrayFieldStart("takes");
        for (Map.Entry<String, BigDecimal> one : new java.util.TreeMap<>(task.takes()).entrySet()) {
            json.writeStartObject();
            json.writeStringField("ingredient", one.getKey());
            number(json, "amount", one.getValue().doubleValue());
            json.writeEndObject();
        }
        json.writeEndArray();
        OrderJson.time(json, "start", task.start().toEpochMilli());
        OrderJson.time(json, "ready", task.ready().toEpochMilli());
        if (task.lastDay().isPresent()) {
            json.writeStringField("lastDay", task.lastDay().get().toString());
        }
        json.writeArrayFieldStart("steps");
        for (StepTime step : task.steps()) {
            json.writeStartObject();
            json.writeStringField("step", step.step());
            if (step.resource().isPresent()) {
                json.writeStringField("resource", step.resource().get());
            }
            OrderJson.time(json, "from", step.from().toEpochMilli());
            OrderJson.time(json, "until", step.until().toEpochMilli());
            json.writeEndObject();
        }
        json.writeEndArray();
        why(json, task.why());
        json.writeEndObject();
    }

    private static void order(JsonGenerator json, Order order) throws IOException {
        json.writeStartObject();
        json.writeStringField("ingredient", order.ingredient());
        json.writeStringField("supplier", order.supplier());
        json.writeNumberField("packs", order.packs());
        json.writeNumberField("cents", order.cents());
        OrderJson.time(json, "orderBy", order.orderBy().toEpochMilli());
        json.writeStringField("delivered", order.delivered().toString());
        why(json, order.why());
        json.writeEndObject();
    }

    private static void why(JsonGenerator json, PrepPlan.Why why) throws IOException {
        json.writeObjectFieldStart("why");
        OrderJson.time(json, "by", why.by().toEpochMilli());
        json.writeStringField("firstDay", why.firstDay().toString());
        json.writeStringField("lastDay", why.lastDay().toString());
        number(json, "mean", why.mean());
        number(json, "low", why.low());
        number(json, "high", why.high());
        number(json, "fractile", why.fractile());
        number(json, "suffices", why.suffices());
        number(json, "onHand", why.onHand());
        json.writeNumberField("lots", why.lots());
        json.writeNumberField("costCents", Math.round(why.cost()));
        json.writeNumberField("otherLots", why.otherLots());
        json.writeNumberField("otherCostCents", Math.round(why.otherCost()));
        json.writeEndObject();
    }

    private static void warning(JsonGenerator json, Warning warning) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", ProblemKind.code(warning.kind()));
        json.writeStringField("ingredient", warning.ingredient());
        if (warning.by().isPresent()) {
            OrderJson.time(json, "by", warning.by().get().toEpochMilli());
        }
        json.writeNumberField("asked", warning.asked());
        json.writeNumberField("possible", warning.possible());
        if (warning.hindrance().isPresent()) {
            json.writeStringField("hindrance", ProblemKind.code(warning.hindrance().get()));
        }
        if (warning.readyAt().isPresent()) {
            OrderJson.time(json, "readyAt", warning.readyAt().get().toEpochMilli());
        }
        json.writeEndObject();
    }

    private static void number(JsonGenerator json, String field, double number) throws IOException {
        BigDecimal brief =
                BigDecimal.valueOf(number)
                        .setScale(PLACES, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros();
        json.writeNumberField(field, brief.setScale(Math.max(0, brief.scale())));
    }
}
