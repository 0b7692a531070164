package sopwell.web.pages;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sopwell.menu.Caution;
import sopwell.menu.Menu;
import sopwell.orders.Safety;
import sopwell.web.T;

/**
 * What can hurt at a station, in one language: a line, and more for whoever opens it. Immutable.
 *
 * @param cautions the station's own, then those of its pans
 */
public record CautionView(T t, Safety safety, List<Caution> cautions) {
    public CautionView {
        cautions = List.copyOf(cautions);
    }

    /** The cautions of a station by the menu in force. */
    static CautionView of(T t, Safety safety, Menu menu, String station) {
        Set<Caution> cautions = new LinkedHashSet<>(menu.station(station).cautions());
        menu.pans().stream()
                .filter(pan -> pan.station().equals(station))
                .forEach(pan -> cautions.addAll(pan.cautions()));
        return new CautionView(t, safety, List.copyOf(cautions));
    }

    /** One caution in a line. */
    public String line(Caution caution) {
        return text("caution." + caution.name());
    }

    /** What there is to know about it. */
    public String more(Caution caution) {
        return text("caution." + caution.name() + ".more");
    }

    private String text(String key) {
        return t.of(
                key,
                degrees(safety.reheatF()),
                safety.reheatSeconds(),
                safety.reheatHours(),
                degrees(safety.holdF()),
                degrees(safety.holdRoastF()),
                safety.slicerYears(),
                safety.slicerCleanHours(),
                safety.source(),
                safety.food().dating().oilDays(),
                safety.food().dating().oilSource(),
                degrees(safety.food().coldF()));
    }

    private static String degrees(int fahrenheit) {
        return fahrenheit + " °F (" + Math.round((fahrenheit - 32) * 5 / 9.0) + " °C)";
    }
}
