package sopwell.menu;

import java.time.DayOfWeek;
import java.util.List;

/**
 * Something that is sold. Immutable.
 *
 * @param words what it is called by, plurals included; the first is how Sopwell writes it
 * @param sizes none, or those to choose from
 * @param defaultSize the size meant when none is said, or empty when one must be said
 * @param priceCents the price of one piece when there are no sizes
 * @param groups the modifier groups that apply
 * @param steps the build steps, in assembly order
 * @param days the weekdays on which it is sold; none means every day
 * @param taxed whether sales tax is due on it
 * @param keepsSeconds for how long it is good once it is up, in seconds, 1 to 14,400; 0 when that
 *     does not matter
 */
public record Item(
        String id,
        LocalText name,
        List<String> words,
        List<Size> sizes,
        String defaultSize,
        long priceCents,
        List<String> groups,
        List<String> steps,
        List<String> allergens,
        List<DayOfWeek> days,
        boolean taxed,
        int keepsSeconds) {
    public Item {
        words = List.copyOf(words);
        sizes = List.copyOf(sizes);
        groups = List.copyOf(groups);
        steps = List.copyOf(steps);
        allergens = List.copyOf(allergens);
        days = List.copyOf(days);
    }

    /** Whether it must be made late rather than early, because it soon is no longer good. */
    public boolean isShortLived() {
        return keepsSeconds > 0;
    }

    /** The size with this id, if the item has it. */
    public java.util.Optional<Size> size(String sizeId) {
        return sizes.stream().filter(size -> size.id().equals(sizeId)).findFirst();
    }
}
