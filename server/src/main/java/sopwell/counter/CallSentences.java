package sopwell.counter;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sopwell.call.CallRefusal;
import sopwell.menu.Group;
import sopwell.menu.Menu;

/**
 * Makes sentences of calls that can't be read: ids become the names that people know. Stateless.
 */
public final class CallSentences {
    private CallSentences() {}

    /** What is wrong with a call, and what would be right. */
    public static String of(CallRefusal refusal, Menu menu, Phrases phrases) {
        List<String> args = new ArrayList<>(refusal.args());
        switch (refusal.why()) {
            case CLASH, TOO_MANY -> args.set(2, group(args.get(2), menu, phrases));
            case TOO_FEW -> args.set(1, group(args.get(1), menu, phrases));
            default -> {}
        }
        return phrases.of("call." + refusal.why().name(), args.toArray());
    }

    private static String group(String id, Menu menu, Phrases phrases) {
        for (Group group : menu.groups()) {
            if (group.id().equals(id)) {
                return phrases.local(group.name()).toLowerCase(Locale.ROOT);
            }
        }
        return id;
    }
}
