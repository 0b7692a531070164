package sopwell.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sopwell.call.CallRefusal.Why;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;

/** Live words are exactly those that may follow. */
class LiveLaws {
    /** A call that is only not finished yet. */
    private static final Set<Why> UNFINISHED =
            Set.of(Why.EMPTY, Why.NO_ITEM, Why.NO_WHAT, Why.SIZE_MISSING, Why.TOO_FEW);

    private static final Menu DEMO = DemoMenu.read();
    private static final CallParser PARSER = new CallParser(DEMO);

    @Test
    void aLiveWordIsNeverWrongAtItsPlace() {
        Seeds.each(
                2000,
                seed -> {
                    String text = new RandomCalls(DEMO, seed).line();
                    Reading reading = PARSER.read(text);
                    if (!isUnfinished(reading, text)) {
                        return false;
                    }
                    for (String word : words(reading.live())) {
                        String longer = text + " " + word;
                        Reading after = PARSER.read(longer);
                        int column = text.length() + 2;
                        boolean wrongThere =
                                after.refusal().isPresent()
                                        && after.refusal().get().column() >= column
                                        && !UNFINISHED.contains(after.refusal().get().why());
                        assertFalse(wrongThere, () -> longer + ": " + after.refusal());
                        boolean unfinished =
                                after.refusal().isEmpty()
                                        || UNFINISHED.contains(after.refusal().get().why());
                        boolean clashedBefore = reading.live().item().isEmpty();
                        assertTrue(
                                unfinished || clashedBefore, () -> longer + ": " + after.refusal());
                    }
                    return true;
                });
    }

    @Test
    void aModifierThatIsNotLiveIsRefusedOrChangesNothing() {
        Seeds.each(
                2000,
                seed -> {
                    String text = new RandomCalls(DEMO, seed).line();
                    Reading reading = PARSER.read(text);
                    if (!reading.refusal().isEmpty()) {
                        return false;
                    }
                    LiveWords live = reading.live();
                    Item item = DEMO.item(live.item());
                    for (Group group : DEMO.groupsOf(item)) {
                        for (Option option : group.options()) {
                            if (!live.options().contains(option.id())) {
                                assertRefusedOrSame(reading, text + " / " + option.words().get(0));
                            }
                        }
                        for (Bundle bundle : group.bundles()) {
                            if (!live.bundles().contains(bundle.id())) {
                                assertRefusedOrSame(reading, text + " / " + bundle.words().get(0));
                            }
                        }
                    }
                    return true;
                });
    }

    @Test
    void anItemIsNotLiveOnceTheLineHasOne() {
        Seeds.each(
                500,
                seed -> {
                    String text = new RandomCalls(DEMO, seed).line();
                    LiveWords live = PARSER.read(text).live();
                    assertEquals(
                            live.items().isEmpty(),
                            !live.item().isEmpty() || nobodyTakes(text),
                            text);
                    return true;
                });
    }

    private static boolean nobodyTakes(String text) {
        LiveWords live = PARSER.read(text).live();
        boolean endsWithNo = !live.options().isEmpty();
        return endsWithNo || DEMO.items().stream().noneMatch(item -> takes(item, text));
    }

    private static boolean takes(Item item, String text) {
        Optional<CallRefusal> refusal = PARSER.read(item.words().get(0) + " / " + text).refusal();
        return refusal.isEmpty() || refusal.get().why() != Why.NOT_FOR_ITEM;
    }

    private static boolean isUnfinished(Reading reading, String text) {
        if (reading.refusal().isEmpty()) {
            return true;
        }
        CallRefusal refusal = reading.refusal().get();
        boolean openNo = refusal.column() + refusal.length() - 1 == text.stripTrailing().length();
        return UNFINISHED.contains(refusal.why()) && (refusal.why() != Why.NO_WHAT || openNo);
    }

    private static void assertRefusedOrSame(Reading before, String longer) {
        Reading after = PARSER.read(longer);
        boolean same = after.counted().equals(before.counted());
        assertTrue(after.refusal().isPresent() || same, longer);
    }

    private static List<String> words(LiveWords live) {
        List<String> words = new ArrayList<>();
        live.items().forEach(id -> words.addAll(DEMO.item(id).words()));
        live.sizes().forEach(id -> words.addAll(DEMO.item(live.item()).size(id).get().words()));
        live.options().forEach(id -> words.addAll(DEMO.option(id).words()));
        for (Group group : DEMO.groups()) {
            group.bundles().stream()
                    .filter(bundle -> live.bundles().contains(bundle.id()))
                    .forEach(bundle -> words.addAll(bundle.words()));
        }
        return words;
    }
}
