package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of calls.table: {@code call => what comes of it}. In the call, {@code \n}, {@code \t}
 * and {@code \}{@code u0020} stand for characters, and {@code {beef, *41}} for 41 times "beef, ".
 */
record TableCase(int line, String text, String expected) {
    private static final String ARROW = " => ";
    private static final Pattern TIMES = Pattern.compile("\\{([^{}]*)\\*(\\d+)}");
    private static final Pattern CODE = Pattern.compile("\\\\u([0-9a-f]{4})");

    /** The cases of a table; empty lines and those that begin with # are left out. */
    static List<TableCase> all(List<String> lines) {
        List<TableCase> cases = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                int arrow = line.indexOf(ARROW);
                if (arrow < 0) {
                    throw new IllegalArgumentException("no => in line " + (i + 1));
                }
                String text = unescaped(line.substring(0, arrow).strip());
                String expected = line.substring(arrow + ARROW.length()).strip();
                cases.add(new TableCase(i + 1, text, expected));
            }
        }
        return cases;
    }

    /** What a reading comes to, as the table writes it. */
    static String outcome(Reading reading, CallPrinter printer) {
        if (reading.refusal().isEmpty()) {
            return printer.print(reading.counted());
        }
        CallRefusal refusal = reading.refusal().get();
        StringBuilder out = new StringBuilder();
        out.append(refusal.why()).append(" @").append(refusal.column());
        out.append('+').append(refusal.length());
        if (refusal.otherColumn() > 0) {
            out.append(" & @").append(refusal.otherColumn());
            out.append('+').append(refusal.otherLength());
        }
        if (!refusal.suggestions().isEmpty()) {
            out.append(" (").append(String.join(" | ", refusal.suggestions())).append(')');
        }
        return out.toString();
    }

    static String unescaped(String written) {
        String text = TIMES.matcher(written).replaceAll(TableCase::times);
        text = text.replace("\\n", "\n").replace("\\t", "\t").replace("\\r", "\r");
        return CODE.matcher(text)
                .replaceAll(
                        code ->
                                Matcher.quoteReplacement(
                                        "" + (char) Integer.parseInt(code.group(1), 16)));
    }

    private static String times(java.util.regex.MatchResult match) {
        String repeated = match.group(1).repeat(Integer.parseInt(match.group(2)));
        return Matcher.quoteReplacement(repeated);
    }
}
