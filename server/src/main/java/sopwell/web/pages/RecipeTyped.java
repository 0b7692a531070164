package sopwell.web.pages;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import sopwell.Limits;
import sopwell.menu.LocalText;
import sopwell.orders.Texts;
import sopwell.stock.recipes.AmountText;
import sopwell.stock.recipes.RecipeFault;
import sopwell.stock.recipes.RecipeFault.Kind;
import sopwell.stock.recipes.Unit;

/**
 * Reads what was typed about recipes, and remembers what is wrong and by which field each place of
 * the book can be mended. Not thread-safe: for one request.
 */
final class RecipeTyped {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final Map<String, String> typed;
    private final Map<String, RecipeFault> faults = new LinkedHashMap<>();
    private final Map<String, String> fieldAt = new LinkedHashMap<>();

    /** Reads nothing yet, but what the log could not be read with again is wrong already. */
    RecipeTyped(Map<String, String> typed) {
        this.typed = typed;
        typed.forEach(
                (field, text) -> {
                    if (text.length() > Limits.WORD_CHARS_MAX || !Texts.isClear(text)) {
                        wrong(field, Kind.NO_TEXT, Integer.toString(Limits.WORD_CHARS_MAX));
                    }
                });
    }

    /** What could not be read, by field. */
    Map<String, RecipeFault> faults() {
        return faults;
    }

    /** What stands in a field, without spaces around it; empty when it was not sent. */
    String text(String field) {
        return typed.getOrDefault(field, "").strip();
    }

    boolean isOn(String field) {
        return !text(field).isEmpty();
    }

    /** Says by which field a place of the book can be mended. */
    void at(String place, String field) {
        fieldAt.put(place, field);
    }

    /** Puts what a check found to the fields; the name is empty for what belongs to none. */
    void place(List<RecipeFault> found) {
        for (RecipeFault fault : found) {
            faults.putIfAbsent(fieldAt.getOrDefault(fault.place(), ""), fault);
        }
    }

    void wrong(String field, Kind kind, String... args) {
        faults.putIfAbsent(field, new RecipeFault("", kind, List.of(args)));
    }

    /** A name in both languages, both of which are needed. */
    LocalText name(String field) {
        return new LocalText(needed(field + ".en"), needed(field + ".es"));
    }

    private String needed(String field) {
        String text = text(field);
        if (text.isEmpty()) {
            wrong(field, Kind.NO_NAME);
        }
        return text;
    }

    Optional<BigDecimal> amount(String field, String place, Unit unit) {
        at(place, field);
        if (!typed.containsKey(field)) {
            return Optional.empty();
        }
        AmountText.Read read = AmountText.read(typed.get(field), Optional.of(unit.dimension()));
        read.fault().ifPresent(fault -> faults.put(field, fault.at(place)));
        return read.amount();
    }

    int whole(String field, String place, int otherwise) {
        at(place, field);
        return number(field, typed.getOrDefault(field, Integer.toString(otherwise)), otherwise);
    }

    /** The same of a field that may be left blank. */
    int wholeOrBlank(String field, String place, int blank) {
        at(place, field);
        return text(field).isEmpty() ? blank : number(field, text(field), blank);
    }

    int number(String field, String typedNumber, int otherwise) {
        String text = typedNumber.strip();
        if (text.matches("[0-9]{1,9}")) {
            return Integer.parseInt(text);
        }
        wrong(field, Kind.NO_WHOLE_NUMBER, text);
        return otherwise;
    }

    /** A time span in minutes of a field that may be left blank. */
    int minutes(String field, String place) {
        at(place, field);
        if (text(field).isEmpty()) {
            return 0;
        }
        OptionalInt minutes = StepTime.minutes(text(field));
        if (minutes.isEmpty()) {
            wrong(field, Kind.NO_DURATION, text(field));
        }
        return minutes.orElse(1);
    }

    BigDecimal share(String field, String place, BigDecimal otherwise) {
        at(place, field);
        String text = typed.getOrDefault(field, otherwise.toPlainString()).strip();
        if (text.matches("[0-9]{0,3}\\.?[0-9]{1,6}")) {
            return new BigDecimal(text);
        }
        if (text.matches("[0-9]{1,3}(\\.[0-9]{1,4})? ?%")) {
            return new BigDecimal(text.replace("%", "").strip()).divide(HUNDRED);
        }
        wrong(field, Kind.NO_SHARE, text);
        return otherwise;
    }

    LocalTime time(String field, LocalTime otherwise) {
        String text = typed.getOrDefault(field, otherwise.toString()).strip();
        try {
            return LocalTime.parse(text);
        } catch (DateTimeParseException wrong) {
            wrong(field, Kind.NO_TIME, text);
            return otherwise;
        }
    }

    long price(String place, long otherwise) {
        at(place + "/packCents", "price");
        if (!typed.containsKey("price")) {
            return otherwise;
        }
        OptionalLong cents = Amounts.cents(text("price"));
        if (cents.isEmpty()) {
            wrong("price", Kind.NO_PRICE, text("price"));
        }
        return cents.orElse(otherwise);
    }
}
