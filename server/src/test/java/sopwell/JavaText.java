package sopwell;

/** Reads Java source as text: enough to tell code from comments and literals. */
final class JavaText {
    private final String text;
    private final StringBuilder out;
    private int at;

    private JavaText(String text) {
        this.text = text;
        this.out = new StringBuilder(text.length());
    }

    /** The same source with comments and the insides of literals turned to spaces. */
    static String blanked(String text) {
        JavaText reader = new JavaText(text);
        while (reader.at < text.length()) {
            reader.step();
        }
        return reader.out.toString();
    }

    private void step() {
        if (ahead("//")) {
            comment("\n", 0);
        } else if (ahead("/*")) {
            comment("*/", 2);
        } else if (ahead("\"\"\"")) {
            literal("\"\"\"");
        } else if (ahead("\"")) {
            literal("\"");
        } else if (ahead("'")) {
            literal("'");
        } else {
            keep(1);
        }
    }

    private boolean ahead(String mark) {
        return text.startsWith(mark, at);
    }

    private void literal(String quote) {
        keep(quote.length());
        while (at < text.length() && !ahead(quote)) {
            blank(ahead("\\") ? 2 : 1);
        }
        keep(quote.length());
    }

    private void comment(String end, int endLength) {
        blank(2);
        while (at < text.length() && !ahead(end)) {
            blank(1);
        }
        blank(endLength);
    }

    private void keep(int count) {
        int to = Math.min(text.length(), at + count);
        out.append(text, at, to);
        at = to;
    }

    private void blank(int count) {
        for (int i = 0; i < count && at < text.length(); i++) {
            out.append(text.charAt(at) == '\n' ? '\n' : ' ');
            at++;
        }
    }
}
