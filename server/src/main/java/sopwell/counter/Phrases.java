package sopwell.counter;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.Check;
import sopwell.menu.Lang;
import sopwell.menu.LocalText;
import sopwell.money.CardNumber;

/**
 * The texts of the screens in one language, by their keys. Immutable, thread-safe.
 *
 * <p>A key that is not there is a bug, and fails.
 */
public final class Phrases {
    private static final int SECONDS_MINUTE = 60;

    private final Lang lang;
    private final Map<String, String> texts;

    /** The texts of one language. */
    public Phrases(Lang lang, Map<String, String> texts) {
        this.lang = lang;
        this.texts = Map.copyOf(texts);
    }

    public Lang lang() {
        return lang;
    }

    /** Whether there is a text for a key. */
    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /** The text of a key. */
    public String get(String key) {
        String text = texts.get(key);
        Check.that(text != null, "the bundles know the text " + key);
        return text;
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

    /** Names in a row: "fryer", "fryer and grill", "fryer, grill and drinks". */
    public String list(List<String> names) {
        if (names.size() < 2) {
            return String.join("", names);
        }
        int last = names.size() - 1;
        return String.join(", ", names.subList(0, last)) + get("list.and") + names.get(last);
    }

    /** A text of the menu in this language. */
    public String local(LocalText text) {
        return text.in(lang);
    }

    /** An amount of cents as money; both languages are read in the same country. */
    public String money(long cents) {
        String digits = Long.toString(Math.abs(cents));
        String whole = digits.length() > 2 ? digits.substring(0, digits.length() - 2) : "0";
        StringBuilder out = new StringBuilder(cents < 0 ? "-$" : "$");
        for (int at = 0; at < whole.length(); at++) {
            boolean thousands = at > 0 && (whole.length() - at) % 3 == 0;
            out.append(thousands ? "," : "").append(whole.charAt(at));
        }
        String small = digits.length() > 1 ? digits : "0" + digits;
        return out.append('.').append(small.substring(small.length() - 2)).toString();
    }

    /** A range of waits in whole minutes, such as {@code 6–9 min}. */
    public String wait(int fromSeconds, int toSeconds) {
        int from = fromSeconds / SECONDS_MINUTE;
        int to = (toSeconds + SECONDS_MINUTE - 1) / SECONDS_MINUTE;
        return of("quote", Math.max(1, from), Math.max(2, to));
    }

    /** The texts whose keys begin in one of these ways, and no others. */
    public Phrases only(String... beginnings) {
        Map<String, String> some = new TreeMap<>();
        texts.forEach(
                (key, text) -> {
                    for (String beginning : beginnings) {
                        if (key.startsWith(beginning)) {
                            some.put(key, text);
                        }
                    }
                });
        return new Phrases(lang, some);
    }

    Map<String, String> texts() {
        return texts;
    }
}
