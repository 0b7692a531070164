package sopwell.storage;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sopwell.prep.HistoryEvent;
import sopwell.prep.HistoryEvent.PastDayKept;
import sopwell.prep.forecast.Occasion;
import sopwell.prep.forecast.Outlook;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.forecast.PastDay.Sold;

/** The written form of days out of an owner's old records, version 1. Stateless. */
final class HistoryBodies {
    private static final double MILLIONTHS = 1e6;

    private HistoryBodies() {}

    /**
     * Pieces made alike, over the day.
     *
     * @param bins the bin and the pieces of each, in turn
     */
    private record Alike(String item, String size, List<String> modifiers, List<Integer> bins) {
        boolean has(Sold sold) {
            return item.equals(sold.item())
                    && size.equals(sold.size())
                    && modifiers.equals(sold.modifiers());
        }
    }

    static void write(BodyWriter body, HistoryEvent event) throws IOException {
        switch (event.kind()) {
            case KEPT -> kept(body, (PastDayKept) event);
        }
    }

    static HistoryEvent read(BodyReader body, HistoryEvent.Kind kind) throws IOException {
        return switch (kind) {
            case KEPT -> kept(body);
        };
    }

    private static void kept(BodyWriter body, PastDayKept kept) throws IOException {
        PastDay day = kept.day();
        body.text("date", day.date().toString());
        body.flag("open", day.open());
        body.textIfAny("closedReason", kept.closedReason());
        body.numberIfAny("openMinute", day.hours().from());
        body.numberIfAny("closeMinute", day.hours().to());
        body.number("binMinutes", kept.binMinutes());
        body.objects("sold", alike(day.sold()), HistoryBodies::alike);
        body.objects("outs", day.outs(), HistoryBodies::out);
        body.objects("occasions", day.occasions(), HistoryBodies::occasion);
        body.texts("weather", day.weather());
        body.objects("outlooks", kept.outlooks(), HistoryBodies::outlook);
    }

    private static PastDayKept kept(BodyReader body) throws IOException {
        LocalDate date = LocalDate.parse(body.text("date"));
        boolean open = body.flag("open");
        String reason = body.textOr("closedReason");
        Hours hours =
                new Hours((int) body.numberOr("openMinute"), (int) body.numberOr("closeMinute"));
        int binMinutes = body.whole("binMinutes");
        List<Sold> sold = new ArrayList<>();
        for (Alike alike : body.objects("sold", HistoryBodies::alike)) {
            for (int i = 0; i + 1 < alike.bins().size(); i += 2) {
                sold.add(
                        new Sold(
                                alike.bins().get(i),
                                alike.item(),
                                alike.size(),
                                alike.modifiers(),
                                alike.bins().get(i + 1)));
            }
        }
        List<OutSpan> outs = body.objects("outs", HistoryBodies::out);
        List<Occasion> occasions = body.objects("occasions", HistoryBodies::occasion);
        List<String> weather = body.texts("weather");
        List<Outlook> outlooks = body.objects("outlooks", one -> outlook(one, date));
        PastDay day = new PastDay(date, open, hours, sold, outs, occasions, weather);
        return new PastDayKept(binMinutes, reason, day, outlooks);
    }

    private static List<Alike> alike(List<Sold> sold) {
        List<Alike> all = new ArrayList<>();
        for (Sold one : sold) {
            if (all.isEmpty() || !all.get(all.size() - 1).has(one)) {
                all.add(new Alike(one.item(), one.size(), one.modifiers(), new ArrayList<>()));
            }
            all.get(all.size() - 1).bins().addAll(List.of(one.bin(), one.pieces()));
        }
        return all;
    }

    private static void alike(BodyWriter body, Alike alike) throws IOException {
        body.text("item", alike.item());
        body.textIfAny("size", alike.size());
        body.texts("modifiers", alike.modifiers());
        body.wholes("bins", alike.bins());
    }

    private static Alike alike(BodyReader body) throws IOException {
        return new Alike(
                body.text("item"),
                body.textOr("size"),
                body.texts("modifiers"),
                body.wholes("bins"));
    }

    private static void out(BodyWriter body, OutSpan out) throws IOException {
        body.text("what", out.what());
        body.number("fromMinute", out.from());
        body.number("toMinute", out.to());
    }

    private static OutSpan out(BodyReader body) throws IOException {
        return new OutSpan(body.text("what"), body.whole("fromMinute"), body.whole("toMinute"));
    }

    private static void occasion(BodyWriter body, Occasion occasion) throws IOException {
        body.text("name", occasion.name());
        body.textIfAny("kind", occasion.kind());
        body.numberIfAny("guessMillionths", millionths(occasion.guess()));
    }

    private static Occasion occasion(BodyReader body) throws IOException {
        return new Occasion(
                body.text("name"),
                body.textOr("kind"),
                body.numberOr("guessMillionths") / MILLIONTHS);
    }

    private static void outlook(BodyWriter body, Outlook outlook) throws IOException {
        body.text("issued", outlook.issued().toString());
        body.text("kind", outlook.kind());
        body.number("millionths", millionths(outlook.probability()));
    }

    private static Outlook outlook(BodyReader body, LocalDate date) throws IOException {
        return new Outlook(
                LocalDate.parse(body.text("issued")),
                date,
                body.text("kind"),
                body.number("millionths") / MILLIONTHS);
    }

    private static long millionths(double value) {
        return Math.round(value * MILLIONTHS);
    }
}
