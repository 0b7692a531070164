package sopwell.web.pages;

import java.util.Map;

/**
 * What was typed into a form of the batches and not taken, to be shown again. Immutable.
 *
 * @param batch the batch whose form it was; empty for the form that starts one
 */
public record BatchTyped(String batch, Map<String, String> fields) {
    /** Nothing was typed, or what was typed was taken. */
    static final BatchTyped NOTHING = new BatchTyped("", Map.of());

    public BatchTyped {
        fields = Map.copyOf(fields);
    }

    /** What stands in a field of a batch's form. */
    public String in(String ofBatch, String field) {
        return ofBatch.equals(batch) ? fields.getOrDefault(field, "") : "";
    }

    /** What stands in a field of the form that starts a batch. */
    public String start(String field, String otherwise) {
        return batch.isEmpty() ? fields.getOrDefault(field, otherwise) : otherwise;
    }

    /** Whether a unit was chosen in a batch's form. */
    public boolean isUnit(String ofBatch, String unit) {
        return in(ofBatch, "unit").equals(unit);
    }
}
