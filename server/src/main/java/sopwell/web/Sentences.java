package sopwell.web;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import sopwell.counter.OutWords;
import sopwell.menu.Menu;
import sopwell.orders.Refusal;

/** Makes sentences of refusals: ids become the names that people know. Immutable. */
final class Sentences {
    private final T t;
    private final Menu menu;

    /**
     * @param menu names items and stations; null when there is none, then ids stand
     */
    Sentences(T t, Menu menu) {
        this.t = t;
        this.menu = menu;
    }

    String of(Refusal refusal) {
        List<String> args = refusal.args();
        String key = "refusal." + refusal.reason().name();
        return switch (refusal.reason()) {
            case MENU_CHANGED -> t.of(key, args.stream().map(this::item).toArray());
            case NOT_TODAY -> t.of(key, item(arg(args, 0)), days(arg(args, 1)));
            case TEXT_TOO_LONG -> t.of(key, field(arg(args, 0)), arg(args, 1));
            case TEXT_UNCLEAR, CARD_NUMBER -> t.of(key, field(arg(args, 0)));
            case OUT, TOO_FEW_LEFT -> OutWords.sentence(refusal, menu, t.phrases());
            case NOT_ON_MENU, NOT_OUT -> t.of(key, OutWords.named(arg(args, 0), menu, t.phrases()));
            case QUESTION_WRONG, ANSWER_WRONG -> t.of(key, options(arg(args, 0)));
            case NOT_WHOLE, WAITS_FOR -> notWhole(key, args);
            case DISCOUNT_TOO_LARGE, TILL_SHORT -> t.of(key, arg(args, 0), money(args, 1));
            case AMOUNT_WRONG, NOT_IN_CASH, UNKNOWN_UNIT -> t.of(key, money(args, 0));
            case TOLD_PRICE, MORE_THAN_DUE, TENDERED_SHORT -> twoAmounts(key, args);
            case MORE_THAN_PAID -> moreThanPaid(key, args);
            case UNKNOWN_ORDER, DAY_CLOSED, NO_DAY_OPEN, ORDERS_OPEN -> plain(key, args);
            case DAY_OPEN, NOT_NEWEST_DAY, DAY_CUT -> plain(key, args);
            case UNKNOWN_PAPER, UNKNOWN_PART, UNKNOWN_STATION, HANDS_RANGE -> plain(key, args);
            case TOLD_TIME, STALE_VERSION, LEFT_RANGE, MINUTES_RANGE -> plain(key, args);
            case TOO_MANY_OUT, NO_LINES, TOO_MANY_LINES, QUANTITY -> plain(key, args);
            case REASON_MISSING, NUMBERS_USED_UP, ORDER_VOID, ORDER_HANDED -> plain(key, args);
            case NO_ROOM, READING_ONLY, PAID_VOID -> plain(key, args);
            case ORDER_NOT_HANDED, NUMBER_TAKEN, NOTHING_CHANGED, CHANGE_UNSEEN -> plain(key, args);
            case NOTHING_TO_SEE,
                    NOTHING_AWAITED,
                    NOT_BEGUN,
                    REMAKE_PIECES,
                    PART_CANCELLED,
                    ALREADY_STARTED,
                    ALREADY_UP ->
                    plain(key, args);
            case NOT_UP, NOTHING_TO_BRING_BACK, UNKNOWN_QUERY, QUERY_OPEN -> plain(key, args);
            case QUERY_ANSWERED, QUERY_LAPSED, NOTHING_DUE, CASHIER_MISSING -> plain(key, args);
            case TILL_OPEN, TILL_NOT_OPEN, NO_TILL_OPEN, WHICH_TILL, TILLS_OPEN -> plain(key, args);
            case UNKNOWN_INGREDIENT, UNKNOWN_MEASURE, STOCK_AMOUNT, NO_RECIPE -> plain(key, args);
            case LOTS_RANGE, TOO_MANY_BATCHES, UNKNOWN_BATCH, BATCH_MADE -> plain(key, args);
            case BATCH_NOT_MADE, TEMPERATURE_RANGE -> plain(key, args);
            case WRONG_STEP -> plain(arg(args, 1).isEmpty() ? key + ".last" : key, args);
            case TOO_MANY_READINGS -> plain(key, args);
            case COUNT_WRONG, BAGS_RANGE, UNKNOWN_PAN, LEVEL_RANGE -> plain(key, args);
            case RECIPES_CHANGED, INGREDIENT_KEPT -> plain(key, args);
            case CALENDAR_DATE, CALENDAR_HOURS, OCCASION_NAME, OCCASION_PERCENT -> plain(key, args);
            case OCCASIONS_MANY, UNKNOWN_OCCASION, GUESS_RANGE, TERMS_MANY -> plain(key, args);
            case UNKNOWN_RESOURCE, OUT_MOMENT, OUT_SPAN -> plain(key, args);
            case CLOCK_NAME, TOO_MANY_CLOCKS, UNKNOWN_CLOCK -> plain(key, args);
            case TERMS_NUMBER, TERMS_MONEY, TERMS_TIME -> t.of(key, setting(args));
            case KITCHEN_HOURS -> t.of(key, day(arg(args, 0)), arg(args, 1), arg(args, 2));
        };
    }

    private String plain(String key, List<String> args) {
        return t.of(key, args.toArray());
    }

    /** The first argument names a setting. */
    private Object[] setting(List<String> args) {
        Object[] all = args.toArray();
        all[0] = field(arg(args, 0));
        return all;
    }

    private String twoAmounts(String key, List<String> args) {
        return t.of(key, money(args, 0), money(args, 1));
    }

    private String moreThanPaid(String key, List<String> args) {
        return t.of(key, arg(args, 0), t.get("means." + arg(args, 2)), money(args, 1));
    }

    private String options(String ids) {
        List<String> names =
                Arrays.stream(ids.split(", ", -1))
                        .map(
                                id ->
                                        menu != null && menu.hasOption(id)
                                                ? t.local(menu.option(id).name())
                                                : id)
                        .toList();
        return t.list(names);
    }

    private String notWhole(String key, List<String> args) {
        List<String> stations =
                args.subList(Math.min(1, args.size()), args.size()).stream()
                        .map(this::station)
                        .toList();
        return t.of(key, arg(args, 0), t.list(stations));
    }

    private static String arg(List<String> args, int place) {
        return place < args.size() ? args.get(place) : "";
    }

    private String money(List<String> args, int place) {
        return t.money(Long.parseLong(arg(args, place)));
    }

    private String item(String id) {
        return menu != null && menu.hasItem(id) ? t.local(menu.item(id).name()) : id;
    }

    private String station(String id) {
        return menu != null && menu.hasStation(id) ? t.local(menu.station(id).name()) : id;
    }

    private String field(String id) {
        return t.has("field." + id) ? t.get("field." + id) : id;
    }

    private String days(String written) {
        List<String> names =
                Arrays.stream(written.split(","))
                        .filter(day -> !day.isBlank())
                        .map(this::day)
                        .toList();
        return t.list(names);
    }

    private String day(String written) {
        return Arrays.stream(DayOfWeek.values())
                .filter(day -> day.name().equalsIgnoreCase(written.strip()))
                .map(day -> day.getDisplayName(TextStyle.FULL, t.locale()))
                .findFirst()
                .orElse(written);
    }
}
