package sopwell.prep.quantity;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sopwell.Check;

/**
 * Requirements of parts that are made of one another, netted level by level: what is on hand of a
 * part also saves everything that it is made of. Stateless.
 */
public final class Requirements {
    private Requirements() {}

    /**
     * A part and what one of it takes. Immutable.
     *
     * @param takes amounts by part
     */
    public record Part(String id, Netting.Start start, Map<String, Long> takes) {
        public Part {
            takes = Map.copyOf(takes);
        }
    }

    /**
     * All parts' requirements.
     *
     * @param downward whatever is made before everything that it takes
     * @param asked gross requirements from outside, by part; all with as many periods
     */
    public static Map<String, Netting> of(List<Part> downward, Map<String, List<Long>> asked) {
        int periods = asked.values().stream().mapToInt(List::size).max().orElse(0);
        Map<String, List<Long>> gross = new LinkedHashMap<>(asked);
        Map<String, Netting> found = new LinkedHashMap<>();
        for (Part part : downward) {
            List<Long> own = gross.getOrDefault(part.id(), Collections.nCopies(periods, 0L));
            Netting netting = Netting.of(own, part.start());
            found.put(part.id(), netting);
            for (Map.Entry<String, Long> take : part.takes().entrySet()) {
                Check.that(!found.containsKey(take.getKey()), "parts stand in their order");
                List<Long> more =
                        netting.releases().stream().map(made -> made * take.getValue()).toList();
                gross.merge(take.getKey(), more, Requirements::sum);
            }
        }
        return found;
    }

    private static List<Long> sum(List<Long> some, List<Long> others) {
        return IntStream.range(0, some.size())
                .mapToObj(t -> Math.addExact(some.get(t), others.get(t)))
                .toList();
    }
}
