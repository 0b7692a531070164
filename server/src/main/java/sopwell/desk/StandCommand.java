package sopwell.desk;

import sopwell.Check;
import sopwell.audit.AuditEvent;
import sopwell.audit.Who;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PassCommand;
import sopwell.kitchen.QueryCommand;
import sopwell.kitchen.StationCommand;
import sopwell.menu.Menu;
import sopwell.orders.OrderCommand;
import sopwell.orders.OutCommand;
import sopwell.orders.PaperCommand;
import sopwell.prep.calendar.CalendarCommand;
import sopwell.prep.past.KeepPlan;
import sopwell.stock.PanCommand;
import sopwell.stock.larder.LarderCommand;
import sopwell.stock.recipes.RecipeBook;
import sopwell.till.TillCommand;

/** Everything that can be asked of the desk. */
public sealed interface StandCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        ORDER,
        KITCHEN,
        PASS,
        PAN,
        LARDER,
        QUERY,
        STATION,
        OUT,
        TILL,
        PAPER,
        MENU,
        RECIPES,
        CALENDAR,
        ACCESS,
        BY,
        PLAN,
        NAMES
    }

    /** This command's kind. */
    Kind kind();

    /** Something about an order or the day. */
    record ForOrders(OrderCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.ORDER;
        }
    }

    /** Something at a station. */
    record ForKitchen(KitchenCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.KITCHEN;
        }
    }

    /** Something at the pass. */
    record ForPass(PassCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.PASS;
        }
    }

    /** Something about a pan. */
    record ForPans(PanCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.PAN;
        }
    }

    /** Something about what is kept or made. */
    record ForLarder(LarderCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.LARDER;
        }
    }

    /** Something that a station and the counter ask of each other. */
    record ForQueries(QueryCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.QUERY;
        }
    }

    /** Something about a station as a whole. */
    record ForStations(StationCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.STATION;
        }
    }

    /** Something about what is out. */
    record ForOuts(OutCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.OUT;
        }
    }

    /** Something is to be printed. */
    record ForPaper(PaperCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.PAPER;
        }
    }

    /** Something about money. */
    record ForTill(TillCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.TILL;
        }
    }

    /** Something about coming days. */
    record ForCalendar(CalendarCommand command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.CALENDAR;
        }
    }

    /** Something about who may do what was changed, and is to be noted. */
    record ForAccess(AuditEvent.AccessChanged changed) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.ACCESS;
        }
    }

    /** Names that the log has prepared to lose are to go. */
    record ForNames(AuditEvent.NamesErased erased) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.NAMES;
        }
    }

    /**
     * Somebody asks for something; who it was is noted beside what must be answered for.
     *
     * @param command what is asked, by nobody else
     */
    record By(Who who, StandCommand command) implements StandCommand {
        public By {
            Check.that(command.kind() != Kind.BY, "a command is asked for by one alone");
        }

        @Override
        public Kind kind() {
            return Kind.BY;
        }
    }

    /** A day's plan of prep is to be kept. */
    record ForPlan(KeepPlan command) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.PLAN;
        }
    }

    /** A checked menu is to take effect; the one in force already asks for nothing. */
    record AdoptMenu(Menu menu) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.MENU;
        }
    }

    /**
     * A checked book of recipes is to take effect; the one in force already asks for nothing.
     *
     * @param expected the revision that it was made from, which must still be in force
     */
    record AdoptRecipes(RecipeBook book, String expected) implements StandCommand {
        @Override
        public Kind kind() {
            return Kind.RECIPES;
        }
    }
}
