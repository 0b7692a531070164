package sopwell.menu;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import sopwell.menu.Vocabulary.Said;

/**
 * The ways in which a phrase can be read as several others, for one item. Immutable.
 *
 * <p>Only readings that the item could be made by count: two options of a group that allows one, or
 * two sizes, are no reading of anything.
 */
final class Readings {
    /** Enough to find a clash; a phrase with more readings than this has one for certain. */
    private static final int READINGS_MAX = 64;

    private final Map<String, Set<Set<String>>> meanings = new HashMap<>();
    private final Set<String> no;
    private final Map<String, Group> groupOfOption = new HashMap<>();

    Readings(MenuParts parts, List<Said> own, List<Said> speech) {
        for (Group group : parts.groups()) {
            group.options().forEach(option -> groupOfOption.put(option.id(), group));
        }
        own.forEach(said -> add(said.normal(), said.marks()));
        no = with(speech, "no");
        with(speech, "skip").forEach(word -> add(word, Set.of()));
        for (Said said : speech) {
            if (said.place().startsWith("/speech/numbers/")) {
                add(said.normal(), said.marks());
            }
        }
    }

    /** What a phrase means when it is read as two or more shorter ones, in every possible way. */
    List<Set<String>> ofParts(String phrase) {
        String[] words = phrase.split(" ", -1);
        if (words.length < 2) {
            return List.of();
        }
        // from[i] holds the readings of the words from i on; the whole phrase itself is left out.
        List<Set<Set<String>>> from = new ArrayList<>();
        for (int i = 0; i <= words.length; i++) {
            from.add(new HashSet<>());
        }
        from.get(words.length).add(Set.of());
        for (int i = words.length - 1; i >= 0; i--) {
            for (int end = words.length; end > i; end--) {
                if (from.get(end).isEmpty()) {
                    continue; // What would follow can't be read, so this needs no look.
                }
                boolean whole = i == 0 && end == words.length;
                for (Set<String> head : whole ? refusals(words) : heads(words, i, end)) {
                    join(head, from.get(end), from.get(i));
                }
            }
        }
        return from.get(0).stream().filter(this::isPossible).toList();
    }

    private static void join(Set<String> head, Set<Set<String>> tails, Set<Set<String>> into) {
        for (Set<String> tail : tails) {
            if (into.size() < READINGS_MAX) {
                Set<String> both = new HashSet<>(head);
                both.addAll(tail);
                into.add(both);
            }
        }
    }

    private Set<Set<String>> refusals(String[] words) {
        return refused(words, 0, words.length);
    }

    private Set<Set<String>> heads(String[] words, int start, int end) {
        Set<Set<String>> heads = new HashSet<>(refused(words, start, end));
        heads.addAll(meanings.getOrDefault(joined(words, start, end), Set.of()));
        return heads;
    }

    /** "No" and an option after it. */
    private Set<Set<String>> refused(String[] words, int start, int end) {
        Set<Set<String>> refused = new HashSet<>();
        for (int cut = start + 1; cut < end; cut++) {
            if (no.contains(joined(words, start, cut))) {
                for (Set<String> marks : meanings.getOrDefault(joined(words, cut, end), Set.of())) {
                    if (marks.size() == 1 && marks.iterator().next().startsWith("+")) {
                        refused.add(Set.of("-" + marks.iterator().next().substring(1)));
                    }
                }
            }
        }
        return refused;
    }

    private boolean isPossible(Set<String> marks) {
        Map<String, Integer> chosen = new HashMap<>();
        int sizes = 0;
        for (String mark : marks) {
            if (mark.startsWith("size:")) {
                sizes++;
            } else if (mark.startsWith("+")) {
                Group group = groupOfOption.get(mark.substring(1));
                if (group == null || marks.contains("-" + mark.substring(1))) {
                    return false;
                }
                boolean none = marks.contains("none:" + group.id());
                if (none || chosen.merge(group.id(), 1, Integer::sum) > group.chooseMax()) {
                    return false;
                }
            }
        }
        return sizes < 2;
    }

    private void add(String normal, Set<String> marks) {
        meanings.computeIfAbsent(normal, n -> new HashSet<>()).add(marks);
    }

    private static Set<String> with(List<Said> speech, String mark) {
        return speech.stream()
                .filter(said -> said.marks().contains(mark))
                .map(Said::normal)
                .collect(Collectors.toSet());
    }

    private static String joined(String[] words, int start, int end) {
        return String.join(" ", List.of(words).subList(start, end));
    }
}
