package sopwell.web.pages;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sopwell.audit.AuditEvent;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.desk.AuditTrail;
import sopwell.desk.AuditTrail.Deed;
import sopwell.log.Event;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderEvent.OrderDiscounted;
import sopwell.orders.OrderEvent.OrderVoided;
import sopwell.till.TillEvent.OrderRefunded;
import sopwell.till.TillEvent.PaidOut;
import sopwell.web.T;

/** Who did what on a date, in words. Immutable. */
public final class AuditView {
    /** What deeds are told apart by, all of them first. */
    static final List<String> KINDS = List.of("all", "money", "orders", "day", "menu", "access");

    private final T t;
    private final WhoWords words;
    private final ZoneId zone;
    private final List<Line> lines;
    private final boolean more;

    /**
     * One thing that was done, in words.
     *
     * @param order the order's number, or empty
     * @param amount in words, or empty
     * @param reason why, or empty
     */
    public record Line(
            String time,
            String who,
            String where,
            String what,
            String order,
            String amount,
            String reason) {}

    AuditView(T t, WhoWords words, ZoneId zone, AuditTrail.Day day, String kind) {
        this.t = t;
        this.words = words;
        this.zone = zone;
        this.more = day.more();
        List<Line> found = new ArrayList<>();
        for (Deed deed : day.deeds()) {
            for (Event event : deed.events()) {
                if (kind.equals(KINDS.get(0)) || kind.equals(kind(event))) {
                    found.add(line(deed, event));
                }
            }
        }
        this.lines = List.copyOf(found);
    }

    /** Newest first. */
    public List<Line> lines() {
        return lines;
    }

    /** Whether there were more than are shown. */
    public boolean hasMore() {
        return more;
    }

    /** A date in words, with its first letter as the language has it. */
    public String date(LocalDate date) {
        return t.date(date);
    }

    private static String kind(Event event) {
        if (event instanceof OrderRefunded || event instanceof PaidOut) {
            return "money";
        }
        if (event instanceof OrderVoided || event instanceof OrderDiscounted) {
            return "orders";
        }
        if (event instanceof OrderEvent) {
            return "day";
        }
        return event instanceof AccessChanged || event instanceof NamesErased ? "access" : "menu";
    }

    private Line line(Deed deed, Event event) {
        boolean ofOrder = event instanceof OrderRefunded || kind(event).equals("orders");
        return new Line(
                t.time(deed.atMs(), zone),
                isBySopwell(deed, event) ? t.get("audit.who.sopwell") : words.who(deed.who(), t),
                words.where(deed.who(), t),
                what(event),
                ofOrder
                        ? deed.order().map(order -> Integer.toString(order.number())).orElse("")
                        : "",
                amount(deed, event),
                reason(event));
    }

    /** Nobody who is not signed in erases a name; other things they may do, such as pair. */
    private static boolean isBySopwell(Deed deed, Event event) {
        boolean forgot =
                event instanceof AccessChanged changed
                        && changed.change() == AuditEvent.Change.PERSON_ERASED;
        return (forgot || event instanceof NamesErased) && deed.who().equals(AuditTrail.BY_ITSELF);
    }

    private String what(Event event) {
        if (event instanceof AccessChanged changed) {
            String name = changed.change().name().toLowerCase(Locale.ROOT).replace('_', '-');
            return t.under("audit.access", name, about(changed));
        }
        if (event instanceof NamesErased erased) {
            String of = erased.of().name().toLowerCase(Locale.ROOT);
            return t.under("audit.erased", of, t.date(erased.date()), erased.names());
        }
        if (event instanceof PaidOut out) {
            return t.of("audit.paid-out", out.cashier());
        }
        if (event instanceof OrderDiscounted off) {
            return t.get(off.totals().discountCents() == 0 ? "audit.full" : "audit.discounted");
        }
        if (event instanceof OrderRefunded) {
            return t.get("audit.refunded");
        }
        if (event instanceof OrderVoided) {
            return t.get("audit.voided");
        }
        return event instanceof OrderEvent.DayClosed
                ? t.get("audit.day-closed")
                : t.get(
                        event instanceof OrderEvent.DayReopened
                                ? "audit.day-reopened"
                                : adopted(event));
    }

    private static String adopted(Event event) {
        return "audit." + event.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    private String about(AccessChanged changed) {
        if (!changed.person().isEmpty()) {
            return words.person(changed.person(), t);
        }
        return changed.device().isEmpty()
                ? words.token(changed.token(), t)
                : words.device(changed.device(), t);
    }

    private String amount(Deed deed, Event event) {
        if (event instanceof OrderRefunded refunded) {
            return t.money(refunded.cents());
        }
        if (event instanceof PaidOut out) {
            return t.money(out.cents());
        }
        if (event instanceof OrderDiscounted off) {
            return t.money(off.totals().discountCents());
        }
        return event instanceof OrderVoided
                ? deed.order().map(order -> t.money(order.totals().totalCents())).orElse("")
                : "";
    }

    private String reason(Event event) {
        if (event instanceof OrderRefunded refunded) {
            return t.reason(refunded.reason());
        }
        if (event instanceof PaidOut out) {
            return out.reason();
        }
        if (event instanceof OrderVoided voided) {
            return t.reason(voided.reason());
        }
        if (event instanceof OrderDiscounted off) {
            return t.reason(off.discount().reason());
        }
        return event instanceof OrderEvent.DayReopened again ? t.reason(again.reason()) : "";
    }
}
