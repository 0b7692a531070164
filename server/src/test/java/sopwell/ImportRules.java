package sopwell;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sopwell.SourceTree.Source;

/** Which package may know which: imports run one way. */
final class ImportRules {
    private ImportRules() {}

    /** Slices that hold the rules of the trade, in no order. */
    private static final Set<String> SLICES =
            Set.of(
                    "money", "menu", "call", "log", "audit", "orders", "till", "kitchen", "stock",
                    "mix", "prep", "whatif");

    /** Packages that compute and do nothing else. */
    private static final Set<String> PURE = with(SLICES, "boards", "counter", "access");

    /** The table: a package, and the packages of ours that it may mention. */
    static final Map<String, Set<String>> ALLOWED =
            Map.ofEntries(
                    entry("access", Set.of()),
                    entry("money", Set.of()),
                    entry("log", Set.of()),
                    entry("audit", Set.of("log")),
                    entry("menu", Set.of("money", "log")),
                    entry("call", Set.of("menu")),
                    entry("orders", Set.of("menu", "money", "log", "audit")),
                    entry("till", Set.of("orders", "menu", "money", "log")),
                    entry("kitchen", Set.of("orders", "menu", "log")),
                    entry("stock", Set.of("orders", "menu", "log", "money")),
                    entry("mix", Set.of("orders", "kitchen", "menu", "log")),
                    entry("prep", Set.of("mix", "stock", "orders", "menu", "money", "log")),
                    entry("whatif", Set.of("mix", "kitchen", "orders", "menu", "log")),
                    entry("records", SLICES),
                    entry("boards", SLICES),
                    entry("counter", Set.of("call", "menu", "money", "orders")),
                    entry("page", Set.of("counter", "menu", "money", "orders")),
                    entry("desk", with(PURE, "journal")),
                    entry("storage", with(SLICES, "access", "journal")),
                    entry("backup", with(SLICES, "desk", "storage", "journal")),
                    entry("web", with(PURE, "desk", "records", "backup", "journal")),
                    entry("tls", Set.of("journal")),
                    entry("metrics", Set.of()),
                    entry("journal", Set.of()),
                    entry("demo", with(PURE, "desk")));

    /** Root classes that every package may use; the others are the composition root's own. */
    private static final Set<String> SHARED = Set.of("Check", "Limits");

    private static final Pattern MENTION = Pattern.compile("\\bsopwell\\.(\\w+)");
    private static final Pattern IMPORT =
            Pattern.compile("(?m)^\\s*import\\s+(?:static\\s+)?([\\w.]+)");

    /**
     * What a pure slice may import: the parts of java.base that reach nothing outside, and a
     * library that only computes.
     */
    private static final Pattern PURE_IMPORT =
            Pattern.compile(
                    "sopwell\\..*|java\\.nio\\.charset\\..*"
                            + "|org\\.apache\\.commons\\.(numbers|statistics)\\..*"
                            + "|java\\.(lang|math|text|time|util|security)\\..*");

    private static final Pattern IMPURE =
            Pattern.compile(
                    "\\bjava\\.(io|nio(?!\\.charset)|net|sql|util\\.(logging|prefs|zip|jar))\\b"
                            + "|\\b(javax|jakarta)\\.|\\b(com|io|gg)\\.\\w+\\."
                            + "|\\borg\\.(?!apache\\.commons\\.(numbers|statistics)\\.)\\w+\\.");

    /** Mentions that the table does not allow. A template counts as part of web. */
    static List<String> arrows(Source source) {
        String own = source.path().endsWith(".jte") ? "web" : first(source.slice());
        boolean root = own.isEmpty();
        if (root && !SHARED.contains(source.name().replace(".java", ""))) {
            return List.of();
        }
        Set<String> allowed = root ? Set.of() : ALLOWED.get(own);
        if (allowed == null) {
            return List.of(source.path() + ": package " + own + " is not in the import table");
        }
        return targets(source).stream()
                .filter(to -> !SHARED.contains(to) && !to.equals(own) && !allowed.contains(to))
                .map(to -> source.path() + ": " + own + " must not know sopwell." + to)
                .toList();
    }

    /** Imports and mentions that do not belong in a slice that only computes. */
    static List<String> impure(Source source) {
        if (!PURE.contains(first(source.slice()))) {
            return List.of();
        }
        Set<String> bad = new TreeSet<>();
        String code = source.code();
        imports(code).stream().filter(n -> !PURE_IMPORT.matcher(n).matches()).forEach(bad::add);
        Matcher mentioned = IMPURE.matcher(code);
        while (mentioned.find()) {
            bad.add(mentioned.group());
        }
        return bad.stream()
                .map(name -> source.path() + ": a pure slice must not use " + name)
                .toList();
    }

    /** Packages that know each other, the root left out: it knows all. */
    static List<String> cycles(List<Source> sources) {
        Map<String, Set<String>> arrows = new TreeMap<>();
        for (Source source : sources) {
            String from = source.slice();
            Set<String> to = arrows.computeIfAbsent(from, key -> new TreeSet<>());
            for (String name : imports(source.code())) {
                String target = packageOf(name);
                if (!target.isEmpty() && !from.isEmpty() && !target.equals(from)) {
                    to.add(target);
                }
            }
        }
        return new Walk(arrows).cycles();
    }

    /** A walk over the arrows, depth first; an arrow to a package on the path closes a cycle. */
    private static final class Walk {
        private final Map<String, Set<String>> arrows;
        private final List<String> path = new ArrayList<>();
        private final Set<String> done = new HashSet<>();
        private final List<String> found = new ArrayList<>();

        Walk(Map<String, Set<String>> arrows) {
            this.arrows = arrows;
        }

        List<String> cycles() {
            arrows.keySet().forEach(this::visit);
            return found;
        }

        private void visit(String node) {
            int seen = path.indexOf(node);
            if (seen >= 0) {
                found.add("cycle: " + path.subList(seen, path.size()) + ", back to " + node);
            } else if (!done.contains(node)) {
                path.add(node);
                arrows.getOrDefault(node, Set.of()).forEach(this::visit);
                path.remove(path.size() - 1);
                done.add(node);
            }
        }
    }

    private static List<String> imports(String code) {
        return IMPORT.matcher(code).results().map(hit -> hit.group(1)).toList();
    }

    /** The package of an imported name of ours, without {@code sopwell.}; empty for others. */
    private static String packageOf(String name) {
        List<String> parts = new ArrayList<>();
        if (name.startsWith("sopwell.")) {
            for (String part : List.of(name.split("\\."))) {
                if (Character.isUpperCase(part.charAt(0))) {
                    break;
                }
                parts.add(part);
            }
            parts.remove(0);
        }
        return String.join(".", parts);
    }

    /** First segments of ours that a file mentions; its own package line does not count. */
    private static Set<String> targets(Source source) {
        boolean template = source.path().endsWith(".jte");
        String code = template ? source.text() : source.code();
        Matcher mention = MENTION.matcher(code.replaceFirst("(?m)^package .*$", ""));
        Set<String> found = new TreeSet<>();
        while (mention.find()) {
            found.add(mention.group(1));
        }
        return found;
    }

    private static String first(String slice) {
        return slice.contains(".") ? slice.substring(0, slice.indexOf('.')) : slice;
    }

    private static Set<String> with(Set<String> some, String... more) {
        Set<String> all = new HashSet<>(some);
        all.addAll(List.of(more));
        return Set.copyOf(all);
    }
}
