package sopwell.prep.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.prep.calendar.KitchenTerms.Cost;
import sopwell.prep.calendar.KitchenTerms.Out;
import sopwell.prep.calendar.TermsCommand.BringBack;
import sopwell.prep.calendar.TermsCommand.CloseKitchen;
import sopwell.prep.calendar.TermsCommand.OpenKitchen;
import sopwell.prep.calendar.TermsCommand.SetCost;
import sopwell.prep.calendar.TermsCommand.SetCosts;
import sopwell.prep.calendar.TermsCommand.SetDay;
import sopwell.prep.calendar.TermsCommand.SetKitchen;
import sopwell.prep.calendar.TermsCommand.SetOpening;
import sopwell.prep.calendar.TermsCommand.SetReview;
import sopwell.prep.calendar.TermsCommand.TakeOut;
import sopwell.stock.larder.Measures;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Resource;

/** What may be set for the plan. For one command. */
final class TermsRules {
    private final OwnerTerms terms;
    private final RecipeBook book;
    private final LocalDate today;
    private final TermsReading read = new TermsReading();

    TermsRules(OwnerTerms terms, RecipeBook book, LocalDate today) {
        this.terms = terms;
        this.book = book;
        this.today = today;
    }

    /** What is set from now on, unless something typed is wrong: then see {@link #refusal}. */
    OwnerTerms after(TermsCommand command) {
        return switch (command.kind()) {
            case COSTS -> terms.with(costs((SetCosts) command));
            case DAY -> terms.with(day((SetDay) command));
            case OPENING -> terms.with(opening((SetOpening) command));
            case HOURS -> terms.with(hours((SetKitchen) command));
            case AWAY -> terms.with(away((CloseKitchen) command));
            case BACK -> terms.with(back((OpenKitchen) command));
            case OUT -> terms.with(out((TakeOut) command));
            case IN_ORDER -> terms.with(inOrder((BringBack) command));
            case REVIEW -> terms.with(review((SetReview) command));
            case COST -> terms.with(cost((SetCost) command));
        };
    }

    /** What is wrong with what was typed, the first thing of several. */
    Optional<Refusal> refusal() {
        return read.refusal();
    }

    private PrepTerms costs(SetCosts set) {
        PrepTerms old = terms.numbers();
        return new PrepTerms(
                read.cents("goodwill", set.goodwill()),
                read.whole("without", set.without(), 0, 100),
                read.whole("night", set.night(), 0, 1_000),
                old.guessPieces(),
                old.opens(),
                old.deliveredBy(),
                old.hands());
    }

    private PrepTerms day(SetDay set) {
        PrepTerms old = terms.numbers();
        boolean usual = set.hands().isBlank();
        return new PrepTerms(
                old.goodwillCents(),
                old.withoutPercent(),
                old.nightPerMille(),
                read.whole("guess", set.guessPieces(), 0, CalendarLimits.GUESS_PIECES_MAX),
                read.time("opens", set.opens()),
                read.time("delivered", set.deliveredBy()),
                usual ? 0 : read.whole("hands", set.hands(), 0, CalendarLimits.HANDS_MAX));
    }

    private KitchenTerms opening(SetOpening set) {
        return terms.kitchen()
                .openingOn(
                        set.date().isBlank()
                                ? Optional.empty()
                                : Optional.of(read.opening(set.date(), today)));
    }

    private KitchenTerms hours(SetKitchen set) {
        Map<DayOfWeek, OpenHours> hours = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            String from = typed(set.from(), day);
            String to = typed(set.to(), day);
            if (!from.isEmpty() || !to.isEmpty()) {
                hours.put(day, read.hours(day, from, to));
            }
        }
        return terms.kitchen().withHours(hours);
    }

    private static String typed(List<String> times, DayOfWeek day) {
        int place = day.getValue() - 1;
        return place < times.size() ? times.get(place).strip() : "";
    }

    private KitchenTerms away(CloseKitchen set) {
        TreeSet<LocalDate> dates = new TreeSet<>(terms.kitchen().away().tailSet(today));
        dates.add(read.date(set.date(), today));
        read.atMost(dates.size(), CalendarLimits.AWAY_DATES_MAX);
        return terms.kitchen().withAway(dates);
    }

    private KitchenTerms back(OpenKitchen set) {
        TreeSet<LocalDate> dates = new TreeSet<>(terms.kitchen().away());
        dates.remove(read.date(set.date(), today));
        return terms.kitchen().withAway(dates);
    }

    private KitchenTerms out(TakeOut set) {
        Optional<Resource> resource =
                book.resources().stream()
                        .filter(one -> one.id().equals(set.resource()) && !PrepTerms.isHands(one))
                        .findFirst();
        int places = resource.map(Resource::slots).orElse(0);
        if (resource.isEmpty()) {
            read.refuse(Reason.UNKNOWN_RESOURCE, set.resource());
        }
        boolean all = set.slots().isBlank();
        int slots = all ? 0 : read.whole("slots", set.slots(), 1, Math.max(1, places));
        LocalDateTime from = read.moment(set.from(), today);
        LocalDateTime until = read.moment(set.until(), today);
        if (!from.isBefore(until)) {
            read.refuse(Reason.OUT_SPAN, shown(from), shown(until));
            return terms.kitchen();
        }
        List<Out> others = new ArrayList<>();
        for (Out one : terms.kitchen().out()) {
            boolean same = one.resource().equals(set.resource()) && one.from().equals(from);
            if (!same && !one.until().isBefore(today.atStartOfDay())) {
                others.add(one);
            }
        }
        others.add(new Out(set.resource(), slots == places ? 0 : slots, from, until));
        read.atMost(others.size(), CalendarLimits.OUT_OF_USE_MAX);
        return terms.kitchen().withOut(others);
    }

    private static String shown(LocalDateTime at) {
        return at.toString().replace('T', ' ');
    }

    private KitchenTerms inOrder(BringBack set) {
        return terms.kitchen()
                .withOut(
                        terms.kitchen().out().stream()
                                .filter(
                                        one ->
                                                !one.resource().equals(set.resource())
                                                        || !one.from()
                                                                .toString()
                                                                .equals(set.from()))
                                .toList());
    }

    private KitchenTerms review(SetReview set) {
        known(set.ingredient());
        if (book.recipe(set.ingredient()).isEmpty()) {
            read.refuse(Reason.NO_RECIPE, set.ingredient());
        }
        int days =
                set.days().isBlank()
                        ? 1
                        : read.whole("review", set.days(), 1, CalendarLimits.REVIEW_DAYS_MAX);
        return terms.kitchen().reviewing(set.ingredient(), days);
    }

    private KitchenTerms cost(SetCost set) {
        if (!known(set.ingredient())) {
            return terms.kitchen();
        }
        String unit = Measures.id(book.ingredient(set.ingredient()).unit());
        OptionalInt shortage = cents("shortage", set.shortage());
        OptionalInt waste = cents("waste", set.waste());
        return terms.kitchen().costing(set.ingredient(), new Cost(unit, shortage, waste));
    }

    private OptionalInt cents(String field, String typed) {
        return typed.isBlank() ? OptionalInt.empty() : OptionalInt.of(read.cents(field, typed));
    }

    private boolean known(String ingredient) {
        boolean known = book.hasIngredient(ingredient);
        if (!known) {
            read.refuse(Reason.UNKNOWN_INGREDIENT, ingredient);
        }
        return known;
    }
}
