package sopwell.storage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import sopwell.orders.Safety;

/** The field {@code safety} of a stand's settings. Stateless. */
final class SafetyFields {
    private static final int FAHRENHEIT_MIN = 100;
    private static final int FAHRENHEIT_MAX = 212;
    private static final int SECONDS_MAX = 3_600;
    private static final int HOURS_MAX = 24;
    private static final int YEARS_MIN = 14;
    private static final int YEARS_MAX = 99;

    private SafetyFields() {}

    /** What the file says, or the usual where it says nothing. */
    static Safety read(Fields fields) {
        if (!fields.has("safety")) {
            return Safety.USUAL;
        }
        Fields safety = fields.inner("safety");
        Safety read =
                new Safety(
                        safety.text("source"),
                        fahrenheit(safety, "reheatF"),
                        StandFile.within(safety, "reheatSeconds", 1, SECONDS_MAX),
                        StandFile.within(safety, "reheatHours", 1, HOURS_MAX),
                        fahrenheit(safety, "holdF"),
                        fahrenheit(safety, "holdRoastF"),
                        StandFile.within(safety, "slicerYears", YEARS_MIN, YEARS_MAX),
                        StandFile.within(safety, "slicerCleanHours", 1, HOURS_MAX),
                        FoodFields.read(safety));
        safety.close();
        return read;
    }

    static void write(ObjectNode node, Safety safety) {
        ObjectNode written = node.putObject("safety");
        written.put("source", safety.source());
        written.put("reheatF", safety.reheatF());
        written.put("reheatSeconds", safety.reheatSeconds());
        written.put("reheatHours", safety.reheatHours());
        written.put("holdF", safety.holdF());
        written.put("holdRoastF", safety.holdRoastF());
        written.put("slicerYears", safety.slicerYears());
        written.put("slicerCleanHours", safety.slicerCleanHours());
        FoodFields.write(written, safety.food());
    }

    private static int fahrenheit(Fields safety, String field) {
        return StandFile.within(safety, field, FAHRENHEIT_MIN, FAHRENHEIT_MAX);
    }
}
