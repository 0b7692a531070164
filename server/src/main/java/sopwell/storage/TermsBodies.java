package sopwell.storage;

import java.io.IOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import sopwell.prep.calendar.KitchenTerms;
import sopwell.prep.calendar.KitchenTerms.Cost;
import sopwell.prep.calendar.KitchenTerms.Out;
import sopwell.prep.calendar.OpenHours;
import sopwell.prep.calendar.OwnerTerms;
import sopwell.prep.calendar.PrepTerms;

/**
 * The written form of what is set for the plan: a list of one, which a calendar of which nothing
 * was set leaves out. Stateless.
 */
final class TermsBodies {
    private TermsBodies() {}

    static void write(BodyWriter body, OwnerTerms terms) throws IOException {
        if (!terms.equals(OwnerTerms.USUAL)) {
            body.objects("terms", List.of(terms), TermsBodies::terms);
        }
    }

    static OwnerTerms read(BodyReader body) throws IOException {
        List<OwnerTerms> terms = body.objectsIfAny("terms", TermsBodies::terms);
        return terms.isEmpty() ? OwnerTerms.USUAL : terms.get(0);
    }

    private static void terms(BodyWriter body, OwnerTerms terms) throws IOException {
        PrepTerms numbers = terms.numbers();
        KitchenTerms kitchen = terms.kitchen();
        body.number("goodwillCents", numbers.goodwillCents());
        body.number("withoutPercent", numbers.withoutPercent());
        body.number("nightPerMille", numbers.nightPerMille());
        body.number("guessPieces", numbers.guessPieces());
        body.text("opens", numbers.opens().toString());
        body.text("deliveredBy", numbers.deliveredBy().toString());
        body.numberIfAny("hands", numbers.hands());
        body.textIfAny("opensOn", kitchen.opensOn().map(LocalDate::toString).orElse(""));
        body.objects("hours", List.copyOf(kitchen.hours().entrySet()), TermsBodies::hours);
        body.texts("away", kitchen.away().stream().map(LocalDate::toString).toList());
        body.objects("out", kitchen.out(), TermsBodies::out);
        body.objects(
                "reviews",
                List.copyOf(kitchen.reviewDays().entrySet()),
                (each, review) -> {
                    each.text("ingredient", review.getKey());
                    each.number("days", review.getValue());
                });
        body.objects("costs", List.copyOf(kitchen.costs().entrySet()), TermsBodies::cost);
    }

    private static OwnerTerms terms(BodyReader body) throws IOException {
        PrepTerms numbers =
                new PrepTerms(
                        body.whole("goodwillCents"),
                        body.whole("withoutPercent"),
                        body.whole("nightPerMille"),
                        body.whole("guessPieces"),
                        LocalTime.parse(body.text("opens")),
                        LocalTime.parse(body.text("deliveredBy")),
                        (int) body.numberOr("hands"));
        String opensOn = body.textOr("opensOn");
        Map<DayOfWeek, OpenHours> hours = new TreeMap<>();
        body.objects("hours", TermsBodies::hours)
                .forEach(each -> hours.put(each.getKey(), each.getValue()));
        TreeSet<LocalDate> away = new TreeSet<>();
        body.texts("away").forEach(date -> away.add(LocalDate.parse(date)));
        List<Out> out = body.objects("out", TermsBodies::out);
        Map<String, Integer> reviews = new TreeMap<>();
        body.objects("reviews", each -> Map.entry(each.text("ingredient"), each.whole("days")))
                .forEach(each -> reviews.put(each.getKey(), each.getValue()));
        Map<String, Cost> costs = new TreeMap<>();
        body.objects("costs", TermsBodies::cost)
                .forEach(each -> costs.put(each.getKey(), each.getValue()));
        KitchenTerms kitchen =
                new KitchenTerms(
                        opensOn.isEmpty()
                                ? Optional.empty()
                                : Optional.of(LocalDate.parse(opensOn)),
                        hours,
                        away,
                        out,
                        new TreeMap<>(reviews),
                        new TreeMap<>(costs));
        return new OwnerTerms(numbers, kitchen);
    }

    private static void hours(BodyWriter body, Map.Entry<DayOfWeek, OpenHours> hours)
            throws IOException {
        body.text("day", hours.getKey().name());
        body.numberIfAny("fromMinute", hours.getValue().fromMinute());
        body.number("toMinute", hours.getValue().toMinute());
    }

    private static Map.Entry<DayOfWeek, OpenHours> hours(BodyReader body) throws IOException {
        DayOfWeek day = DayOfWeek.valueOf(body.text("day"));
        int from = (int) body.numberOr("fromMinute");
        return Map.entry(day, new OpenHours(from, body.whole("toMinute")));
    }

    private static void out(BodyWriter body, Out out) throws IOException {
        body.text("resource", out.resource());
        body.numberIfAny("slots", out.slots());
        body.text("from", out.from().toString());
        body.text("until", out.until().toString());
    }

    private static Out out(BodyReader body) throws IOException {
        return new Out(
                body.text("resource"),
                (int) body.numberOr("slots"),
                LocalDateTime.parse(body.text("from")),
                LocalDateTime.parse(body.text("until")));
    }

    /** An amount that is set to nothing is written as well: it is not the same as not set. */
    private static void cost(BodyWriter body, Map.Entry<String, Cost> cost) throws IOException {
        body.text("ingredient", cost.getKey());
        body.text("unit", cost.getValue().unit());
        body.textIfAny("shortCents", written(cost.getValue().shortCents()));
        body.textIfAny("wasteCents", written(cost.getValue().wasteCents()));
    }

    private static Map.Entry<String, Cost> cost(BodyReader body) throws IOException {
        String ingredient = body.text("ingredient");
        Cost cost =
                new Cost(
                        body.text("unit"),
                        cents(body.textOr("shortCents")),
                        cents(body.textOr("wasteCents")));
        return Map.entry(ingredient, cost);
    }

    private static String written(OptionalInt cents) {
        return cents.isEmpty() ? "" : Integer.toString(cents.getAsInt());
    }

    private static OptionalInt cents(String written) {
        return written.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(written));
    }
}
