package sopwell.prep.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.prep.plan.PrepPlan.Kind;
import sopwell.prep.plan.PrepPlan.Order;
import sopwell.prep.plan.PrepPlan.Warning;
import sopwell.prep.plan.Sizing.Decision;
import sopwell.prep.quantity.PathCost.Lot;
import sopwell.prep.quantity.PathCost.Window;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.Supply;

/** What to order for which delivery: each lasts until the next can come. For one plan. */
final class Buying {
    private static final int MINUTES = 60;

    private final PlanAsk ask;
    private final Sizing sizing;
    private final List<Order> orders;
    private final List<Warning> warnings;

    Buying(PlanAsk ask, Sizing sizing, List<Order> orders, List<Warning> warnings) {
        this.ask = ask;
        this.sizing = sizing;
        this.orders = orders;
        this.warnings = warnings;
    }

    /** A delivery that can still be ordered, and the first date on which it helps. */
    private record Delivery(LocalDate date, Instant orderBy, int helps) {}

    /** What recipes take earlier on a date than this must have been there the date before. */
    long minutesBefore() {
        return ask.terms().deliveredBy().toSecondOfDay() / MINUTES;
    }

    void buy(Ingredient bought, Supply supply) {
        Need need = sizing.need(bought.id());
        if (!need.isAny()) {
            return;
        }
        Shelf shelf = sizing.stock(bought.id());
        List<Delivery> deliveries = deliveries(need, supply);
        int start = deliveries.isEmpty() ? need.dates() : deliveries.get(0).helps();
        if (need.missing(shelf.lots(), Math.min(start, need.dates())) > 1e-9) {
            boolean never = deliveries.isEmpty();
            warn(never ? Kind.NO_DELIVERY : Kind.SHORT_BEFORE_DELIVERY, bought, 0);
        }
        for (int i = 0; i < deliveries.size(); i++) {
            boolean more = i + 1 < deliveries.size();
            int until = more ? deliveries.get(i + 1).helps() : need.dates();
            order(bought, shelf, deliveries.get(i), until - 1);
        }
    }

    private void order(Ingredient bought, Shelf shelf, Delivery delivery, int last) {
        Supply supply = bought.supply().orElseThrow();
        Need need = sizing.need(bought.id());
        boolean keeps = bought.shelfLifeDays() == 0;
        int keepsTo =
                keeps ? sizing.dates() : sizing.index(delivery.date()) + bought.shelfLifeDays() - 1;
        int from = delivery.helps();
        int to = Math.min(last, Math.max(from, keepsTo));
        if (need.mean(from, to) <= 0 && to == last) {
            return;
        }
        double pack = supply.packInBase().doubleValue();
        Decision decision = sizing.decide(bought.id(), shelf, new Window(from, to, keepsTo), pack);
        if (to < last && need.mean(to + 1, last) > 0) {
            warn(Kind.EXPIRES_TOO_EARLY, bought, to + 1);
        }
        if (decision.lots() > 0) {
            shelf.add(new Lot(decision.lots() * pack, from, keepsTo));
            orders.add(
                    new Order(
                            bought.id(),
                            supply.supplier(),
                            decision.lots(),
                            Math.multiplyExact(decision.lots(), supply.packCents()),
                            delivery.orderBy(),
                            delivery.date(),
                            decision.why().orElseThrow()));
        }
    }

    private List<Delivery> deliveries(Need need, Supply supply) {
        List<Delivery> found = new ArrayList<>();
        for (int at = 0; at < need.dates(); at++) {
            LocalDate date = sizing.date(at);
            Instant orderBy =
                    Calendar.at(date.minusDays(supply.leadDays()), supply.orderBy(), ask.zone());
            if (!supply.deliveryDays().contains(date.getDayOfWeek())
                    || orderBy.isBefore(ask.now())) {
                continue;
            }
            long there = Calendar.minute(Calendar.at(date, ask.terms().deliveredBy(), ask.zone()));
            int helps = there > need.by(at) ? at + 1 : at;
            if (helps < need.dates()) {
                found.add(new Delivery(date, orderBy, helps));
            }
        }
        return found;
    }

    private void warn(Kind kind, Ingredient bought, int from) {
        Need need = sizing.need(bought.id());
        int date = from;
        while (date < need.dates() && !need.isOn(date)) {
            date++;
        }
        Optional<Instant> by =
                date < need.dates()
                        ? Optional.of(Calendar.instant(need.by(date)))
                        : Optional.empty();
        warnings.add(Warning.of(kind, bought.id(), by));
    }
}
