package sopwell.web.pages;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import sopwell.mix.Period;
import sopwell.web.AskedPeriod;
import sopwell.web.DayFigures;
import sopwell.web.Reply;

/** The pages of a day's figures, of a part of the day, and of many days. Thread-safe. */
final class FigurePages {
    private final PageContext context;
    private final String name;

    /**
     * Pages of one kind.
     *
     * @param name what their address begins with, and where their templates are
     */
    FigurePages(PageContext context, String name) {
        this.context = context;
        this.name = name;
    }

    /** What the template needs to show a day or a part of it, by name. */
    @FunctionalInterface
    interface OfDay {
        Map<String, Object> show(Ask ask, DayFigures figures, Period part)
                throws PageHandling.Interrupted;
    }

    /** What the template needs to show many days, or a part of each. */
    @FunctionalInterface
    interface OfDays {
        Map<String, Object> show(Ask ask, AskedPeriod asked) throws PageHandling.Interrupted;
    }

    Reply day(Ask ask, OfDay pages) throws PageHandling.Interrupted {
        AskedDay<DayFigures> day =
                AskedDay.of(ask, context, DayFigures::of, context.tallies()::figures);
        AskedPeriod part = AskedPeriod.of(day.date(), ask::in, ask.screen().t());
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("data", day.found().orElse(null));
        params.put("sentence", day.sentence().isEmpty() ? part.sentence() : day.sentence());
        if (day.found().isPresent() && part.period().isPresent()) {
            params.putAll(pages.show(ask, day.found().get(), part.period().get()));
        }
        if (!ask.partial()) {
            params.put("date", day.date());
            params.put("part", part.period().map(AskedPeriod::query).orElse(""));
            params.put("live", AskedDay.isToday(ask));
        }
        String template = name + (ask.partial() ? "/body" : "/page");
        int status = part.period().isEmpty() ? 422 : day.status();
        return PageHandling.html(status, context.pages().render(template, params));
    }

    Reply days(Ask ask, OfDays pages) throws PageHandling.Interrupted {
        if (ask.in("from").isBlank() && ask.in("to").isBlank()) {
            return PageHandling.redirect("/" + name + "/today");
        }
        LocalDate today = context.clock().instant().atZone(context.settings().zone()).toLocalDate();
        AskedPeriod asked = AskedPeriod.of(ask::in, ask.screen().t(), today);
        if (asked.isOneDay()) {
            Period one = asked.period().orElseThrow();
            return PageHandling.redirect("/" + name + "/" + one.from() + AskedPeriod.query(one));
        }
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("asked", ask.named());
        params.put("sentence", asked.sentence());
        if (asked.period().isPresent()) {
            params.putAll(pages.show(ask, asked));
        }
        return PageHandling.html(
                asked.period().isEmpty() ? 422 : 200,
                context.pages().render(name + "/days", params));
    }
}
