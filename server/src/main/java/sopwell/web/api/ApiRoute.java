package sopwell.web.api;

import io.undertow.server.HttpHandler;
import io.undertow.util.HttpString;
import java.util.function.Function;

/**
 * One route of the program interface. Immutable.
 *
 * @param path with parameters in braces
 * @param handler picks what answers
 */
record ApiRoute(HttpString method, String path, Function<Handlers, HttpHandler> handler) {
    /** Everything that answers. */
    record Handlers(
            Calls calls,
            CallApi readings,
            OrderApi orders,
            PartApi parts,
            PassApi pass,
            PanApi pans,
            LarderApi larder,
            BatchApi batches,
            CalendarApi calendar,
            QueryApi queries,
            DayApi days,
            PeriodApi periods,
            TillApi till,
            OutApi outs,
            RecipeApi recipes,
            PrepApi prep,
            StandApi stand) {
        static Handlers of(ApiContext context) {
            DayApi days = new DayApi(context);
            return new Handlers(
                    new Calls(context.texts()),
                    new CallApi(context),
                    new OrderApi(context),
                    new PartApi(context),
                    new PassApi(context),
                    new PanApi(context),
                    new LarderApi(context),
                    new BatchApi(context),
                    new CalendarApi(context),
                    new QueryApi(context),
                    days,
                    new PeriodApi(context),
                    new TillApi(context, days),
                    new OutApi(context),
                    new RecipeApi(context),
                    new PrepApi(context),
                    new StandApi(context));
        }
    }
}
