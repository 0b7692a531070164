package sopwell.call;

import java.util.Arrays;
import sopwell.menu.Words;

/**
 * A text cut into words, numbers and separators, with their places. Local to one call.
 *
 * <p>White space, control characters and invisible format characters part words. A comma, a
 * semicolon or a line break parts lines. A slash parts words and keeps them from being read as one
 * phrase. Digits stand alone, so that "2beef" and "2x" are two words each. Accents and case are
 * gone from {@link #word}; a word of accents alone is no word.
 */
final class Tokens {
    /** What a character does. */
    private enum Sort {
        BLANK,
        PART,
        SLASH,
        LETTER
    }

    private final String text;
    private int[] starts = new int[16];
    private int[] ends = new int[16];
    private String[] words = new String[16];
    private boolean[] cut = new boolean[16];
    private int count;
    private boolean slash;

    private Tokens(String text) {
        this.text = text;
    }

    /** The words of a text; never fails. */
    static Tokens of(String text) {
        Tokens tokens = new Tokens(text);
        int at = 0;
        while (at < text.length()) {
            switch (sort(text, at)) {
                case BLANK -> at += width(text, at);
                case SLASH -> {
                    tokens.slash = true;
                    at++;
                }
                case PART -> {
                    tokens.add(at, at + 1, null);
                    at++;
                }
                case LETTER -> {
                    int end = wordEnd(text, at);
                    String word = normal(text, at, end);
                    if (!word.isEmpty()) {
                        tokens.add(at, end, word);
                    }
                    at = end;
                }
            }
        }
        return tokens;
    }

    int count() {
        return count;
    }

    /** Where a token starts, from 0. */
    int start(int token) {
        return starts[token];
    }

    /** Where a token ends, from 0, exclusive. */
    int end(int token) {
        return ends[token];
    }

    /** A token in the form in which words are compared, or null for a separator. */
    String word(int token) {
        return words[token];
    }

    /** Whether a token parts lines whatever stands around it. */
    boolean parts(int token) {
        return words[token] == null;
    }

    /** Whether a phrase that began earlier may not go on with this token. */
    boolean cut(int token) {
        return cut[token];
    }

    /** Whether two neighbours touch. */
    boolean touch(int token) {
        return ends[token] == starts[token + 1];
    }

    /** Whether a token is a number in digits. */
    boolean digits(int token) {
        return words[token] != null && isDigit(words[token].charAt(0));
    }

    /** The text of some tokens as typed. */
    String typed(int from, int to) {
        return text.substring(starts[from], ends[to - 1]);
    }

    private void add(int start, int end, String word) {
        if (count == starts.length) {
            int room = count * 2;
            starts = Arrays.copyOf(starts, room);
            ends = Arrays.copyOf(ends, room);
            words = Arrays.copyOf(words, room);
            cut = Arrays.copyOf(cut, room);
        }
        starts[count] = start;
        ends[count] = end;
        words[count] = word;
        cut[count] = slash || word == null;
        slash = false;
        count++;
    }

    private static int wordEnd(String text, int start) {
        char first = text.charAt(start);
        int at = start;
        if (isDigit(first)) {
            while (at < text.length() && isDigit(text.charAt(at))) {
                at++;
            }
            return at;
        }
        boolean times = first == 'x' || first == 'X' || first == '\u00d7';
        if (times && start + 1 < text.length() && isDigit(text.charAt(start + 1))) {
            return start + 1;
        }
        while (at < text.length() && sort(text, at) == Sort.LETTER) {
            at += width(text, at);
        }
        return at;
    }

    private static String normal(String text, int start, int end) {
        boolean upper = false;
        for (int at = start; at < end; at++) {
            char c = text.charAt(at);
            if (c >= 0x80) {
                return Words.normal(text.substring(start, end));
            }
            upper |= c >= 'A' && c <= 'Z';
        }
        String word = text.substring(start, end);
        return upper ? Words.normal(word) : word;
    }

    private static Sort sort(String text, int at) {
        char c = text.charAt(at);
        if (c < 0x80) {
            return switch (c) {
                case ',', ';', '\n', '\r', '\u000b', '\f' -> Sort.PART;
                case '/' -> Sort.SLASH;
                default -> c <= ' ' || c == 0x7f ? Sort.BLANK : Sort.LETTER;
            };
        }
        if (c == '\u0085' || c == '\u2028' || c == '\u2029') {
            return Sort.PART;
        }
        int point = text.codePointAt(at);
        boolean blank =
                Character.isWhitespace(point)
                        || Character.isSpaceChar(point)
                        || Character.isISOControl(point)
                        || Character.getType(point) == Character.FORMAT;
        return blank ? Sort.BLANK : Sort.LETTER;
    }

    private static int width(String text, int at) {
        return text.charAt(at) < 0x80 ? 1 : Character.charCount(text.codePointAt(at));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
