package sopwell.stock.larder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the last batches of one recipe gave against what it says. Immutable.
 *
 * @param makes the ingredient
 * @param perMille what each gave in thousandths of what the recipe says, oldest first
 */
public record Yields(String makes, List<Integer> perMille) {
    private static final int KEPT = 12;
    private static final int ENOUGH = 5;
    private static final int WITHIN_PER_MILLE = 50;
    private static final int WHOLE = 1_000;

    public Yields {
        perMille = List.copyOf(perMille);
    }

    Yields with(int another) {
        List<Integer> more = new ArrayList<>(perMille);
        more.add(another);
        return new Yields(makes, more.subList(Math.max(0, more.size() - KEPT), more.size()));
    }

    /**
     * What batches really give, when that is not what the recipe says: the median of the last 12,
     * if there are 5 or more of them and it is more than 5 % away. One batch that went wrong moves
     * a median little.
     */
    public Optional<Integer> departing() {
        if (perMille.size() < ENOUGH) {
            return Optional.empty();
        }
        int median = median();
        return Math.abs(median - WHOLE) > WITHIN_PER_MILLE ? Optional.of(median) : Optional.empty();
    }

    private int median() {
        List<Integer> sorted = perMille.stream().sorted().toList();
        int middle = sorted.size() / 2;
        return sorted.size() % 2 == 1
                ? sorted.get(middle)
                : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    }
}
