package sopwell;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sopwell.SourceTree.Source;

/** Rules that a file's text alone can break. */
final class TextRules {
    private TextRules() {}

    static final int COLUMNS_MAX = 100;
    static final int LINES_MAX = 400;

    /**
     * A call that main code must not make.
     *
     * @param call what to find, as a regular expression over code without literals
     * @param instead what to do instead
     * @param except names of files that may make it
     */
    private record Banned(Pattern call, String instead, Set<String> except) {
        static Banned everywhere(String call, String instead) {
            return new Banned(Pattern.compile(call), instead, Set.of());
        }

        static Banned outsideMain(String call, String instead) {
            return new Banned(Pattern.compile(call), instead, Set.of("Main.java"));
        }
    }

    private static final String CLOCK = "take the clock that Main hands in";
    private static final String NANOS = "take the LongSupplier of nanoseconds that Main hands in";
    private static final String DICE = "take a SplittableRandom made from a seed";
    private static final String LOCALE = "name the Locale (Locale.ROOT unless a guest reads it)";

    private static final List<Banned> BANNED =
            List.of(
                    Banned.outsideMain("\\bInstant\\.now\\b", CLOCK),
                    Banned.outsideMain("\\b(Local|Zoned|Offset)\\w*\\.now\\b", CLOCK),
                    Banned.outsideMain("\\bClock\\.(system|tick)\\w*", CLOCK),
                    Banned.outsideMain("\\bInstantSource\\.system\\b", CLOCK),
                    Banned.outsideMain("\\bSystem\\.currentTimeMillis\\b", CLOCK),
                    Banned.outsideMain("\\bSystem\\.nanoTime\\b", NANOS),
                    Banned.outsideMain("\\bZoneId\\.systemDefault\\b", "take the stand's zone"),
                    Banned.outsideMain("\\bnew Random\\(", DICE),
                    Banned.outsideMain("\\bMath\\.random\\b", DICE),
                    Banned.outsideMain("\\bThreadLocalRandom\\b", DICE),
                    Banned.outsideMain("\\bnew SplittableRandom\\(\\s*\\)", DICE),
                    Banned.outsideMain("\\bSystem\\.(out|err)\\b", "log it, or let Main print it"),
                    Banned.outsideMain("\\bSystem\\.exit\\b", "return an exit code to Main"),
                    Banned.everywhere("\\bThread\\.sleep\\b", "wait on a condition or a scheduler"),
                    Banned.everywhere("\\bprintStackTrace\\b", "log the fault with its cause"),
                    Banned.everywhere("\\bString\\.format\\((?!\\s*[lL]ocale\\b)", LOCALE),
                    Banned.everywhere("\\.formatted\\(", "use String.format and " + LOCALE),
                    Banned.everywhere("\\.to(Lower|Upper)Case\\(\\s*\\)", LOCALE));

    private static final Pattern FLOATING = Pattern.compile("\\b([dD]ouble|[fF]loat)\\b");
    private static final Set<String> EXACT = Set.of("money", "menu", "orders", "till");

    /** Split, so that this file does not hold them itself; in small letters, one is Spanish. */
    private static final Pattern WORDS =
            Pattern.compile(
                    "\\b(TO"
                            + "DO|FIX"
                            + "ME|(?i:bu"
                            + "mp\\w*|k"
                            + "ds\\w*|all"
                            + "-day|ex"
                            + "po))\\b");

    private static final Pattern STATUS = Pattern.compile("(?m)^Status: \\S");

    /** Lines that are too wide, in characters as a reader counts them. */
    static List<String> wideLines(Source source) {
        List<String> found = new ArrayList<>();
        int number = 0;
        for (String line : source.lines()) {
            number++;
            int columns = line.codePointCount(0, line.length());
            if (columns > COLUMNS_MAX) {
                found.add(source.path() + ":" + number + ": " + columns + " columns");
            }
        }
        return found;
    }

    /** A file that is too long to hold in one's head. */
    static List<String> longFile(Source source) {
        int lines = source.lines().size();
        return lines <= LINES_MAX ? List.of() : List.of(source.path() + ": " + lines + " lines");
    }

    /** Calls that have a better way, with that way named. */
    static List<String> bannedCalls(Source source) {
        return BANNED.stream()
                .filter(banned -> !banned.except().contains(source.name()))
                .flatMap(b -> hits(source, source.code(), b.call(), b.instead()).stream())
                .toList();
    }

    /** Floating point where sums must be exact. */
    static List<String> floatingMoney(Source source) {
        return EXACT.contains(source.slice())
                ? hits(source, source.code(), FLOATING, "use long cents, or whole small units")
                : List.of();
    }

    /** Words that we do not use: unfinished work, and the jargon of other people's screens. */
    static List<String> bannedWords(Source source) {
        return hits(source, source.text(), WORDS, "finish it, or use the glossary's word");
    }

    /** A decision record that does not say whether it holds. */
    static List<String> noStatus(Source source) {
        return STATUS.matcher(source.text()).find()
                ? List.of()
                : List.of(source.path() + ": needs a line such as \"Status: accepted\"");
    }

    /** Every place where a pattern stands in a text, with what to do instead. */
    static List<String> hits(Source source, String text, Pattern bad, String instead) {
        List<String> found = new ArrayList<>();
        Matcher matcher = bad.matcher(text);
        while (matcher.find()) {
            long line =
                    1 + text.substring(0, matcher.start()).chars().filter(c -> c == '\n').count();
            String what = matcher.group().strip();
            found.add(source.path() + ":" + line + ": " + what + " -> " + instead);
        }
        return found;
    }
}
