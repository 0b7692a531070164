package sopwell.storage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sopwell.menu.MenuFault;

/**
 * The short forms of a menu file: the model has them behind the words, so a fault in one of them
 * must be led back to where it stands in the file. Not thread-safe: for one reading.
 */
final class ShortForms {
    private static final Pattern WORD = Pattern.compile("(/[a-z0-9/]+)/words/([0-9]+)");

    private final Map<String, Integer> wordCounts = new HashMap<>();

    /** The words of an entry, its short forms behind them. */
    List<String> words(Fields fields) {
        int before = fields.faults().found().size();
        List<String> words = new ArrayList<>(fields.texts("words"));
        boolean readable = fields.faults().found().size() == before;
        if (readable && words.isEmpty()) {
            fields.faults()
                    .add(fields.at("words"), "There is no word for it.", "Give at least one word.");
        }
        wordCounts.put(fields.at("words"), words.size());
        words.addAll(fields.textsOr("short"));
        return words;
    }

    /** The same faults, with places as they are in the file. */
    List<MenuFault> inPlace(List<MenuFault> faults) {
        return faults.stream()
                .map(f -> new MenuFault(inPlace(f.place()), inPlace(f.wrong()), f.right()))
                .toList();
    }

    private String inPlace(String sentence) {
        Matcher matcher = WORD.matcher(sentence);
        return matcher.replaceAll(
                match -> {
                    int index = Integer.parseInt(match.group(2));
                    String entry = match.group(1);
                    int words = wordCounts.getOrDefault(entry + "/words", Integer.MAX_VALUE);
                    return index < words ? match.group() : entry + "/short/" + (index - words);
                });
    }
}
