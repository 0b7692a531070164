package sopwell.menu;

import java.util.List;
import java.util.Map;
import sopwell.Limits;
import sopwell.menu.Vocabulary.Said;

/** The checks of single words, and of the small words of a call. Stateless. */
final class MenuCheckSpeech {
    private MenuCheckSpeech() {}

    static void faults(MenuParts parts, Faults faults) {
        needed("/speech/and", parts.speech().and(), faults);
        needed("/speech/no", parts.speech().no(), faults);
        for (Map.Entry<String, Integer> number : parts.speech().numbers().entrySet()) {
            String place = "/speech/numbers/" + number.getKey();
            MenuCheck.number(place, number.getValue(), 1, Limits.LINE_QUANTITY_MAX, faults);
        }
        for (int i = 0; i < parts.items().size(); i++) {
            Item item = parts.items().get(i);
            String place = "/items/" + i;
            needed(place + "/words", item.words(), faults);
            for (int s = 0; s < item.sizes().size(); s++) {
                needed(place + "/sizes/" + s + "/words", item.sizes().get(s).words(), faults);
            }
        }
        for (int g = 0; g < parts.groups().size(); g++) {
            Group group = parts.groups().get(g);
            String place = "/groups/" + g;
            for (int o = 0; o < group.options().size(); o++) {
                needed(place + "/options/" + o + "/words", group.options().get(o).words(), faults);
            }
            for (int b = 0; b < group.bundles().size(); b++) {
                needed(place + "/bundles/" + b + "/words", group.bundles().get(b).words(), faults);
            }
        }
        for (Said said : new Vocabulary(parts).all()) {
            spelling(said, faults);
        }
    }

    private static void needed(String place, List<String> words, Faults faults) {
        if (words.isEmpty()) {
            faults.add(place, "There is no word for it.", "Give at least one word.");
        }
    }

    private static void spelling(Said said, Faults faults) {
        String normal = said.normal();
        if (normal.length() > Limits.WORD_CHARS_MAX) {
            faults.add(
                    said.place(),
                    "\"" + said.written() + "\" is too long.",
                    "A word has at most " + Limits.WORD_CHARS_MAX + " characters.");
        } else if (normal.codePoints().noneMatch(Character::isLetter)) {
            faults.add(
                    said.place(),
                    "\"" + said.written() + "\" has no letter.",
                    "A word is made of letters.");
        } else if (!normal.codePoints().allMatch(MenuCheckSpeech::canBeSaid)) {
            faults.add(
                    said.place(),
                    "\"" + said.written() + "\" has a character that no word can have.",
                    "Words have letters, single spaces, hyphens and apostrophes: digits count"
                            + " and commas part.");
        }
    }

    private static boolean canBeSaid(int point) {
        return Character.isLetter(point) || point == ' ' || point == '-' || point == '\'';
    }
}
