package sopwell.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sopwell.Check;
import sopwell.call.CallRefusal;
import sopwell.menu.Item;
import sopwell.menu.Lang;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Out;
import sopwell.money.CardNumber;
import sopwell.orders.Quote;
import sopwell.orders.Refusal;

/**
 * The texts of the screens in one language. Immutable, thread-safe.
 *
 * <p>A key that the bundle does not have is a bug, and fails.
 */
public final class T {
    private static final int SECONDS_MINUTE = 60;

    private final Lang lang;
    private final Map<String, String> values;

    T(Lang lang, Map<String, String> values) {
        this.lang = lang;
        this.values = Map.copyOf(values);
    }

    /** The language. */
    public Lang lang() {
        return lang;
    }

    /** The language as HTML names it. */
    public String code() {
        return code(lang);
    }

    static String code(Lang lang) {
        return switch (lang) {
            case EN -> "en";
            case ES -> "es";
        };
    }

    /** The text of a key. */
    public String get(String key) {
        String value = values.get(key);
        Check.that(value != null, "the bundles know the text " + key);
        return value;
    }

    /** Whether there is a text for a key; for keys made of other people's ids. */
    public boolean has(String key) {
        return values.containsKey(key);
    }

    /** The text of a key with {@code {0}}, {@code {1}} … replaced by what is handed in. */
    public String of(String key, Object... args) {
        String text = get(key);
        StringBuilder out = new StringBuilder(text.length() + 16);
        int at = 0;
        while (at < text.length()) {
            int open = text.indexOf('{', at);
            int close = open < 0 ? -1 : text.indexOf('}', open);
            if (close < 0) {
                return out.append(text, at, text.length()).toString();
            }
            int place = Integer.parseInt(text.substring(open + 1, close));
            out.append(text, at, open).append(place < args.length ? shown(args[place]) : "");
            at = close + 1;
        }
        return out.toString();
    }

    /** What somebody typed may come back to them in a sentence, but never a card's number. */
    private static Object shown(Object arg) {
        return arg instanceof String text ? CardNumber.hidden(text) : arg;
    }

    /** The text of one of several keys that begin alike, such as a theme's name. */
    public String under(String group, String name, Object... args) {
        return of(group + "." + name, args);
    }

    /** A text of the menu in this language. */
    public String local(LocalText text) {
        return text.in(lang);
    }

    /** An amount of cents as money; both languages are read in the same country. */
    public String money(long cents) {
        String sign = cents < 0 ? "-" : "";
        long whole = Math.abs(cents);
        return sign + String.format(Locale.ROOT, "$%,d.%02d", whole / 100, whole % 100);
    }

    /** A range of waits in whole minutes, such as {@code 6–9 min}. */
    public String quote(Quote quote) {
        int from = quote.fromSeconds() / SECONDS_MINUTE;
        int to = (quote.toSeconds() + SECONDS_MINUTE - 1) / SECONDS_MINUTE;
        return of("quote", Math.max(1, from), Math.max(2, to));
    }

    /** Seconds as minutes and seconds, such as {@code 4:05}. */
    public String minutes(double seconds) {
        long whole = Math.round(seconds);
        return String.format(
                Locale.ROOT, "%d:%02d", whole / SECONDS_MINUTE, whole % SECONDS_MINUTE);
    }

    /** A share of a whole in percent, or a dash of nothing. */
    public String percent(int part, int whole) {
        return whole == 0 ? "–" : Math.round(100.0 * part / whole) + " %";
    }

    /** A date in words. */
    public String date(LocalDate date) {
        return date.format(DateTimeFormatter.ofPattern(get("date.pattern"), locale()));
    }

    /** A time of day at the stand. */
    public String time(long atMs, ZoneId zone) {
        return DateTimeFormatter.ofPattern("H:mm", Locale.ROOT)
                .format(Instant.ofEpochMilli(atMs).atZone(zone));
    }

    /** Names in a row: "fryer", "fryer and grill", "fryer, grill and drinks". */
    public String list(List<String> names) {
        if (names.size() < 2) {
            return String.join("", names);
        }
        int last = names.size() - 1;
        return String.join(", ", names.subList(0, last)) + get("list.and") + names.get(last);
    }

    /** Why an order is void: one of the counter's own reasons, or what somebody wrote. */
    public String reason(String kept) {
        String key = "reason." + kept;
        return has(key) ? get(key) : kept;
    }

    /** Names to choose from: "dry", "dry or wet", "dry, wet or dipped". */
    public String either(List<String> names) {
        if (names.size() < 2) {
            return String.join("", names);
        }
        int last = names.size() - 1;
        return String.join(", ", names.subList(0, last)) + get("list.or") + names.get(last);
    }

    /** What a menu calls something that is out; it must be on that menu. */
    public String name(Out out, Menu menu) {
        return switch (out.kind()) {
            case ITEM -> local(menu.item(out.item()).name());
            case OPTION -> local(menu.option(out.id()).name());
            case SIZE -> {
                Item item = menu.item(out.item());
                String size = local(item.size(out.id()).orElseThrow().name());
                yield under("out", "size", size, local(item.name()));
            }
        };
    }

    /** What is wrong with a command, and what would be right; with the menu's own names. */
    public String sentence(Refusal refusal, Menu menu) {
        return new Sentences(this, menu).of(refusal);
    }

    /** What is wrong with a command, for when there is no menu to name things by. */
    public String sentence(Refusal refusal) {
        return sentence(refusal, null);
    }

    /** What is wrong with a call, and what would be right. */
    public String sentence(CallRefusal refusal, Menu menu) {
        return new Sentences(this, menu).of(refusal);
    }

    Locale locale() {
        return switch (lang) {
            case EN -> Locale.US;
            case ES -> new Locale("es", "MX");
        };
    }
}
