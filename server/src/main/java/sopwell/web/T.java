package sopwell.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sopwell.call.CallRefusal;
import sopwell.counter.CallSentences;
import sopwell.counter.OutWords;
import sopwell.counter.Phrases;
import sopwell.menu.Lang;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Out;
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
    private final Phrases phrases;

    T(Lang lang, Map<String, String> values) {
        this.lang = lang;
        this.phrases = new Phrases(lang, values);
    }

    /** The same texts, for what runs on the server and in the page alike. */
    public Phrases phrases() {
        return phrases;
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
        return phrases.get(key);
    }

    /** Whether there is a text for a key; for keys made of other people's ids. */
    public boolean has(String key) {
        return phrases.has(key);
    }

    /** The text of a key with {@code {0}}, {@code {1}} … replaced by what is handed in. */
    public String of(String key, Object... args) {
        return phrases.of(key, args);
    }

    /** The text of a key for a number of things, which has a text of its own for one. */
    public String many(String key, long number, Object... args) {
        String one = key + ".one";
        return of(number == 1 && has(one) ? one : key, args);
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
        return phrases.money(cents);
    }

    /** A range of waits in whole minutes, such as {@code 6–9 min}. */
    public String quote(Quote quote) {
        return phrases.wait(quote.fromSeconds(), quote.toSeconds());
    }

    /** Seconds as minutes and seconds, such as {@code 4:05}. */
    public String minutes(double seconds) {
        long whole = Math.round(seconds);
        return String.format(
                Locale.ROOT, "%d:%02d", whole / SECONDS_MINUTE, whole % SECONDS_MINUTE);
    }

    /** So many minutes as they are spoken: {@code 6}, and {@code 1:30} when they are not whole. */
    public String span(int seconds) {
        return seconds % SECONDS_MINUTE == 0
                ? Integer.toString(seconds / SECONDS_MINUTE)
                : minutes(seconds);
    }

    /** A share of a whole in percent, or a dash of nothing. */
    public String percent(int part, int whole) {
        return whole == 0 ? "–" : percent((double) part / whole);
    }

    /** A share, 0 to 1, in whole percent. */
    public String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    /** A chance in percent that never says it is certain, or impossible, when it is not. */
    public String chance(double chance) {
        boolean isPlain = (chance > 0.005 && chance < 0.995) || chance <= 0 || chance >= 1;
        if (isPlain) {
            return percent(chance);
        }
        double shown = Math.min(99.9, Math.max(0.1, Math.round(chance * 1000) / 10.0));
        return String.format(Locale.ROOT, "%.1f %%", shown);
    }

    /** A date in words. */
    public String date(LocalDate date) {
        return date(date, "date.pattern");
    }

    /** A date by one of the patterns of the bundle, such as {@code date.brief}. */
    public String date(LocalDate date, String key) {
        return date.format(DateTimeFormatter.ofPattern(get(key), locale()));
    }

    /** A date in few letters, such as {@code Tue, Jan 13}. */
    public String day(LocalDate date) {
        return date.format(DateTimeFormatter.ofPattern(get("date.short-pattern"), locale()));
    }

    /** A time of day at the stand. */
    public String time(long atMs, ZoneId zone) {
        return DateTimeFormatter.ofPattern("H:mm", Locale.ROOT)
                .format(Instant.ofEpochMilli(atMs).atZone(zone));
    }

    /** Names in a row: "fryer", "fryer and grill", "fryer, grill and drinks". */
    public String list(List<String> names) {
        return phrases.list(names);
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
        return OutWords.name(out, menu, phrases);
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
        return CallSentences.of(refusal, menu, phrases);
    }

    Locale locale() {
        return switch (lang) {
            case EN -> Locale.US;
            case ES -> new Locale("es", "MX");
        };
    }
}
