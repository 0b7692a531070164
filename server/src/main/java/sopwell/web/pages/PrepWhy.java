package sopwell.web.pages;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sopwell.prep.forecast.DayForecast;
import sopwell.prep.plan.PrepPlan;
import sopwell.prep.quantity.Stakes;
import sopwell.stock.recipes.Ingredient;
import sopwell.web.T;

/** Why a plan has a quantity: the arithmetic in sentences, down to the forecast. Stateless. */
record PrepWhy(PrepView view) {
    private static final double[] RANGE = {0.05, 0.5, 0.95};

    /**
     * The sentences of one quantity.
     *
     * @param lot what one lot or pack is called
     */
    List<String> of(String ingredient, PrepPlan.Why why, String lot) {
        T t = view.t();
        List<String> said = new ArrayList<>();
        said.add(
                t.of(
                        "prep.why.asked",
                        range(why),
                        view.amount(ingredient, why.mean()),
                        view.amount(ingredient, why.low()),
                        view.amount(ingredient, why.high())));
        said.add(stakes(ingredient, why));
        said.add(t.of("prep.why.on-hand", view.amount(ingredient, why.onHand())));
        said.add(
                t.of(
                        "prep.why.lots",
                        why.lots(),
                        lot,
                        t.money(Math.round(why.cost())),
                        why.otherLots(),
                        t.money(Math.round(why.otherCost()))));
        for (LocalDate d = why.firstDay(); !d.isAfter(why.lastDay()); d = d.plusDays(1)) {
            view.forecast(d).map(this::forecast).ifPresent(said::add);
        }
        return said;
    }

    private String range(PrepPlan.Why why) {
        T t = view.t();
        return why.firstDay().equals(why.lastDay())
                ? t.day(why.firstDay())
                : t.of("prep.range", t.day(why.firstDay()), t.day(why.lastDay()));
    }

    private String stakes(String id, PrepPlan.Why why) {
        T t = view.t();
        Optional<Stakes> stakes = Optional.ofNullable(view.plan().stakes().get(id));
        if (stakes.isEmpty()) {
            return t.get("prep.why.recipes");
        }
        Ingredient one = view.plan().book().ingredient(id);
        return t.of(
                "prep.why.stakes",
                cents(stakes.get().shortage(), one),
                cents(stakes.get().waste(), one),
                view.unit(one),
                t.chance(why.fractile()),
                view.amount(id, why.suffices()));
    }

    /** What one of the unit costs that people here count in. */
    private String cents(BigDecimal base, Ingredient one) {
        return view.t().money(Math.round(base.multiply(one.unit().inBase()).doubleValue()));
    }

    private String forecast(DayForecast day) {
        T t = view.t();
        int[] range = day.total().quantiles(RANGE);
        StringBuilder factors = new StringBuilder();
        day.why()
                .effects()
                .forEach(
                        one ->
                                factors.append(
                                        t.of(
                                                "prep.why.effect",
                                                OccasionWords.name(t, one.name()),
                                                factor(one.factor()),
                                                t.percent(one.chance()))));
        return t.many(
                "prep.why.forecast",
                day.why().days(),
                t.day(day.date()),
                range[1],
                range[0],
                range[2],
                Math.round(day.why().level()),
                factor(day.why().weekday()),
                factors,
                day.why().days());
    }

    private static String factor(double factor) {
        return String.format(Locale.ROOT, "%.2f", factor);
    }
}
