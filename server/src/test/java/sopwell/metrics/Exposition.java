package sopwell.metrics;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A strict reading of the Prometheus text format 0.0.4, after "Exposition formats", Text-based
 * format (https://prometheus.io/docs/instrumenting/exposition_formats/): what is said there to be
 * so must be so, and what is not said there must not be. Not thread-safe.
 */
public final class Exposition {
    private static final String NAME = "[a-zA-Z_:][a-zA-Z0-9_:]*";
    private static final Pattern HELP =
            Pattern.compile("# HELP (" + NAME + ") ([^\\\\]|\\\\[\\\\n])*");
    private static final Pattern TYPE =
            Pattern.compile("# TYPE (" + NAME + ") (counter|gauge|histogram|summary|untyped)");
    private static final Pattern SAMPLE =
            Pattern.compile("(" + NAME + ")(?:\\{(.*)\\})? (\\S+)(?: (-?\\d+))?");
    private static final Pattern LABEL =
            Pattern.compile("([a-zA-Z_][a-zA-Z0-9_]*)=\"((?:[^\"\\\\]|\\\\[\\\\\"n])*)\"(,|$)");

    private final Map<String, Double> samples = new LinkedHashMap<>();
    private final Map<String, String> types = new LinkedHashMap<>();
    private final Map<String, String> helps = new TreeMap<>();
    private final Set<String> ended = new HashSet<>();
    private String family = "";

    /** Reads a text; what is not in the format is an {@link AssertionError}. */
    public Exposition(String text) {
        if (!text.endsWith("\n")) {
            throw new AssertionError("the last line has no end");
        }
        for (String line : text.substring(0, text.length() - 1).split("\n", -1)) {
            if (line.startsWith("# HELP ")) {
                help(line);
            } else if (line.startsWith("# TYPE ")) {
                type(line);
            } else if (!line.startsWith("#") && !line.isEmpty()) {
                sample(line);
            }
        }
        types.forEach(
                (name, type) -> {
                    if (type.equals("histogram")) {
                        histogram(name);
                    }
                });
    }

    /** Every figure's type by its name. */
    public Map<String, String> types() {
        return types;
    }

    /** Every value by the name and the labels, in the order of the label's names. */
    public Map<String, Double> samples() {
        return samples;
    }

    /** One value. */
    public double value(String sample) {
        Double value = samples.get(sample);
        if (value == null) {
            throw new AssertionError(sample + " is not among " + samples.keySet());
        }
        return value;
    }

    private void help(String line) {
        Matcher help = matched(HELP, line);
        begin(help.group(1));
        check(helps.put(family, line) == null, line, "there is one line of help a name");
        check(!types.containsKey(family), line, "help stands before the type");
    }

    private void type(String line) {
        Matcher type = matched(TYPE, line);
        begin(type.group(1));
        check(types.put(family, type.group(2)) == null, line, "there is one type a name");
    }

    /** All lines of a figure stand together. */
    private void begin(String name) {
        if (!name.equals(family)) {
            ended.add(family);
            check(!ended.contains(name), name, "its lines are one group");
            family = name;
        }
    }

    private void sample(String line) {
        Matcher sample = matched(SAMPLE, line);
        String name = sample.group(1);
        String type = types.get(family);
        check(type != null, line, "its type comes first");
        boolean isPart =
                type.equals("histogram")
                        ? name.matches(Pattern.quote(family) + "_(bucket|sum|count)")
                        : name.equals(family);
        check(isPart, line, "it is of the figure " + family + ", a " + type);
        Map<String, String> labels = labels(sample.group(2), line);
        String key = labels.isEmpty() ? name : name + labels;
        double value = number(sample.group(3));
        check(samples.put(key, value) == null, line, "each is there once");
        check(!type.equals("counter") || value >= 0, line, "a counter only grows");
    }

    private static Map<String, String> labels(String text, String line) {
        Map<String, String> labels = new TreeMap<>();
        int at = 0;
        while (text != null && at < text.length()) {
            Matcher label = LABEL.matcher(text);
            check(label.find(at) && label.start() == at, line, "a label at " + at);
            check(labels.put(label.group(1), label.group(2)) == null, line, "a label once");
            at = label.end();
        }
        return labels;
    }

    /** As Go's ParseFloat has it, with the three words that the format names. */
    private static double number(String text) {
        return switch (text) {
            case "+Inf" -> Double.POSITIVE_INFINITY;
            case "-Inf" -> Double.NEGATIVE_INFINITY;
            case "NaN" -> Double.NaN;
            default -> {
                check(text.matches("[-+]?[0-9.]+([eE][-+]?[0-9]+)?"), text, "a number");
                yield Double.parseDouble(text);
            }
        };
    }

    /** Buckets rise to +Inf, which holds as many as the count says, and there is a sum. */
    private void histogram(String name) {
        Map<String, List<Map.Entry<String, Double>>> series = new LinkedHashMap<>();
        samples.forEach(
                (key, value) -> {
                    if (key.startsWith(name + "_bucket{")) {
                        Matcher le = Pattern.compile("(?:, )?le=([^,}]+)").matcher(key);
                        check(le.find(), key, "a bucket has its end");
                        String rest = key.substring(name.length() + 7).replace(le.group(), "");
                        series.computeIfAbsent(rest, r -> new ArrayList<>())
                                .add(Map.entry(le.group(1), value));
                    }
                });
        check(!series.isEmpty(), name, "a histogram has buckets");
        series.forEach(
                (rest, buckets) -> {
                    String labels = rest.equals("{}") ? "" : rest.replace("{, ", "{");
                    double end = Double.NEGATIVE_INFINITY;
                    double count = 0;
                    for (Map.Entry<String, Double> bucket : buckets) {
                        check(number(bucket.getKey()) > end, name + rest, "ends rise");
                        check(bucket.getValue() >= count, name + rest, "counts rise");
                        end = number(bucket.getKey());
                        count = bucket.getValue();
                    }
                    check(end == Double.POSITIVE_INFINITY, name + rest, "the last is +Inf");
                    check(value(name + "_count" + labels) == count, name + rest, "count is +Inf's");
                    check(value(name + "_sum" + labels) >= 0, name + rest, "there is a sum");
                });
    }

    private static Matcher matched(Pattern pattern, String line) {
        Matcher matcher = pattern.matcher(line);
        check(matcher.matches(), line, "it has the form " + pattern);
        return matcher;
    }

    private static void check(boolean so, String where, String what) {
        if (!so) {
            throw new AssertionError(where + ": " + what);
        }
    }
}
