package sopwell.counter;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import sopwell.Check;

/**
 * A plain written form that needs no parser: one value a line, in a fixed order; a list is its
 * length and then its entries. A line break or backslash in a text is written as {@code \n}, {@code
 * \r} or {@code \\}. Both directions stand here side by side. Local to one writing or reading.
 */
final class Lines {
    private Lines() {}

    /** Writes values. */
    static final class Out {
        private final StringBuilder text = new StringBuilder(16_384);

        Out text(String value) {
            for (int at = 0; at < value.length(); at++) {
                char c = value.charAt(at);
                switch (c) {
                    case '\n' -> text.append("\\n");
                    case '\r' -> text.append("\\r");
                    case '\\' -> text.append("\\\\");
                    default -> text.append(c);
                }
            }
            text.append('\n');
            return this;
        }

        Out number(long value) {
            return text(Long.toString(value));
        }

        Out flag(boolean value) {
            return number(value ? 1 : 0);
        }

        Out texts(List<String> values) {
            return list(values, (out, value) -> out.text(value));
        }

        <E> Out list(List<E> values, BiConsumer<Out, E> each) {
            number(values.size());
            values.forEach(value -> each.accept(this, value));
            return this;
        }

        String written() {
            return text.toString();
        }
    }

    /** Reads values in the order in which they were written. */
    static final class In {
        private final String text;
        private int at;

        In(String text) {
            this.text = text;
        }

        String text() {
            int end = text.indexOf('\n', at);
            Check.that(end >= 0, "a written kit has every line that it needs");
            String line = text.substring(at, end);
            at = end + 1;
            return line.indexOf('\\') < 0 ? line : plain(line);
        }

        long number() {
            return Long.parseLong(text());
        }

        int whole() {
            return Integer.parseInt(text());
        }

        boolean flag() {
            return number() == 1;
        }

        List<String> texts() {
            return list(In::text);
        }

        <E> List<E> list(Function<In, E> each) {
            int size = whole();
            List<E> values = new ArrayList<>();
            for (int n = 0; n < size; n++) {
                values.add(each.apply(this));
            }
            return values;
        }

        void end() {
            Check.that(at == text.length(), "a written kit ends where it should");
        }

        private static String plain(String line) {
            StringBuilder out = new StringBuilder(line.length());
            for (int at = 0; at < line.length(); at++) {
                char c = line.charAt(at);
                if (c != '\\') {
                    out.append(c);
                } else {
                    at++;
                    char meant = line.charAt(at);
                    out.append(meant == 'n' ? '\n' : meant == 'r' ? '\r' : meant);
                }
            }
            return out.toString();
        }
    }
}
