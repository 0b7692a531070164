package sopwell;

/** Every limit of Sopwell, with its unit last in its name. Nothing grows without one of these. */
public final class Limits {
    /** Deeds that one page of who did what lists. */
    public static final int AUDIT_DEEDS_MAX = 500;

    private Limits() {}

    /** Pieces left of something that is counted. */
    public static final int OUT_LEFT_MAX = 9_999;

    /** For how long something is out, in minutes: a day. */
    public static final int OUT_MINUTES_MAX = 1_440;

    /** How often the stand looks whether a day or an out is over, in seconds. */
    public static final long TICK_SECONDS = 10;

    /** How often it looks for past days that are not counted yet, in seconds. */
    public static final long BOOK_SECONDS = 30;

    /** How long the end waits for a piece of such work beside the stand, in seconds. */
    public static final long SPARE_CLOSE_SECONDS_MAX = 30;

    /** The rest between two such days, in milliseconds. */
    public static final long BOOK_PAUSE_MILLIS = 50;

    /** Things named as near to what is out. */
    public static final int NEAR_MAX = 3;

    /** Orders of the day that are listed at once; a search finds the others. */
    public static final int DAY_ORDERS_SHOWN_MAX = 100;

    /** Things that are out or counted at once. */
    public static final int OUTS_MAX = 200;

    /** A call line, in characters: the longest forty lines that a menu of usual words can say. */
    public static final int CALL_CHARS_MAX = 8_000;

    /** Lines on one order. */
    public static final int ORDER_LINES_MAX = 40;

    /** How many alike on one line. */
    public static final int LINE_QUANTITY_MAX = 99;

    /** Modifiers chosen or refused on one line. */
    public static final int LINE_MODIFIERS_MAX = 24;

    /** A guest's name, in characters. */
    public static final int NAME_CHARS_MAX = 40;

    /** A reason for a void or a change, in characters. */
    public static final int REASON_CHARS_MAX = 200;

    /** A question from a station, or the answer to it, in characters: one line on a board. */
    public static final int QUERY_CHARS_MAX = 80;

    /** Open queries that the counter is shown; the others wait their turn. */
    public static final int COUNTER_QUERIES_MAX = 40;

    /** Versions of one order that are remembered, to say what was changed meanwhile. */
    public static final int ORDER_VERSIONS_MAX = 20;

    /** The highest order number a stand may set as its last before starting over at 1. */
    public static final int ORDER_NUMBER_MAX = 9_999_999;

    /** The last order number unless the stand sets another. */
    public static final int ORDER_NUMBER_DEFAULT_MAX = 999;

    /** An idempotency key, in characters. */
    public static final int KEY_CHARS_MAX = 80;

    /** A price of one item or modifier, in cents. */
    public static final long PRICE_CENTS_MAX = 100_000_000L;

    /** An amount paid, handed over, given back, or put into a till, in cents. */
    public static final long AMOUNT_CENTS_MAX = 1_000_000_000L;

    /** How many of one note or coin a till may hold. */
    public static final long CASH_PIECES_MAX = 100_000;

    /** Different notes, and different coins, that a stand may have. */
    public static final int CASH_UNITS_MAX = 20;

    /** The menu file, in bytes. */
    public static final int MENU_BYTES_MAX = 1_048_576;

    /** Items, groups, steps or stations on a menu, each. */
    public static final int MENU_ENTRIES_MAX = 500;

    /** A word or phrase that can be said in a call, in characters. */
    public static final int WORD_CHARS_MAX = 60;

    /** An id of a station, step, group, option or item, in characters. */
    public static final int ID_CHARS_MAX = 40;

    /**
     * Commands that may wait for the desk; one more is told to come again. So few that even a slow
     * box is done with them within a second, and those who wait are answered in time.
     */
    public static final int DESK_QUEUE_COMMANDS_MAX = 64;

    /** Commands that the desk takes into one transaction. */
    public static final int DESK_BATCH_COMMANDS_MAX = 64;

    /** Events that are written in one transaction when whole days are made at once. */
    public static final int BULK_BATCH_EVENTS = 4_096;

    /** Different selections that are remembered to be sold, so as not to look again. */
    public static final int SELECTIONS_REMEMBERED_MAX = 10_000;

    /** Parts that a station can bring back one after another. */
    public static final int BRING_BACK_PARTS_MAX = 50;

    /** Orders that the pass can bring back after they were handed. */
    public static final int LAST_HANDED_ORDERS_MAX = 5;

    /** Bags that one order may be in. */
    public static final int BAGS_MAX = 20;

    /** How long a number stands out on the guests' screen after it came up or was called. */
    public static final int READY_FRESH_SECONDS = 60;

    /** What a pan may hold, in its unit. */
    public static final int PAN_AMOUNT_MAX = 1_000_000;

    /** What a modifier may make of what an item takes from a pan, in percent. */
    public static final int PAN_PERCENT_MAX = 1_000;

    /** How long the next batch of a pan may take to reheat. */
    public static final int PAN_REHEAT_MINUTES_MAX = 240;

    /** Loads to begin that a station's board shows; what comes after is counted. */
    public static final int LOADS_AHEAD_MAX = 2;

    /** An amount of an ingredient in whatever unit it is entered in. */
    public static final int STOCK_AMOUNT_MAX = 999_999;

    /** Batches that are on at once. */
    public static final int BATCHES_MAX = 100;

    /** Lots of a recipe that one batch makes. */
    public static final int BATCH_LOTS_MAX = 200;

    /** Temperatures measured in one step of a batch. */
    public static final int BATCH_READINGS_MAX = 200;

    /** Batches that were made and are kept with a label; the oldest goes when there are more. */
    public static final int LABELS_MAX = 300;

    /** The coldest and the hottest that anybody measures in food, in degrees Fahrenheit. */
    public static final int FOOD_LEAST_FAHRENHEIT = -40;

    public static final int FOOD_MOST_FAHRENHEIT = 600;

    /** Rows sent to one screen; what is below is counted, not sent. */
    public static final int BOARD_ROWS_MAX = 40;

    /** Rows at the top of a board that new ones don't push down: what the largest screen shows. */
    public static final int BOARD_SETTLED_ROWS = 12;

    /** Digits on a keypad that name a row: 1 to 9. */
    public static final int BOARD_DIGITS_MAX = 9;

    /** Hands at one station. */
    public static final int STATION_HANDS_MAX = 20;

    /** Pieces that one hand or machine of a station makes in one go. */
    public static final int STATION_LOAD_PIECES_MAX = 100;

    /** For how long an item may be said to be good once it is up, in seconds: four hours. */
    public static final int ITEM_KEEPS_SECONDS_MAX = 14_400;

    /** The service time a menu may state for one build step, in seconds. */
    public static final int STEP_SECONDS_MAX = 3_600;

    /** An amount in a recipe, in grams, millilitres or pieces: a hundred tonnes. */
    public static final long RECIPE_BASE_UNITS_MAX = 100_000_000L;

    /** For how many days something may be used: two years. */
    public static final int SHELF_LIFE_DAYS_MAX = 730;

    /** The last place on a count's walk. */
    public static final int WALK_ORDER_MAX = 9_999;

    /** How long before a delivery something must be ordered, in days. */
    public static final int LEAD_DAYS_MAX = 365;

    /** A lead time above this is worth a look, in days. */
    public static final int LEAD_DAYS_USUAL_MAX = 14;

    /** Lots in a pan or in a run. */
    public static final int LOTS_MAX = 1_000;

    /** Slots of an oven, a chill room or another resource. */
    public static final int RESOURCE_SLOTS_MAX = 1_000;

    /** How long one step of prep may take, in minutes: seven days. */
    public static final int PREP_STEP_MINUTES_MAX = 10_080;

    /** How long prep may wait between two steps, in minutes: ninety days. */
    public static final int PREP_WAIT_MINUTES_MAX = 129_600;

    /** What a modifier may make of what an item takes, in percent. */
    public static final int USE_PERCENT_MAX = 1_000;

    /** Screens connected at once. */
    public static final int SCREENS_MAX = 6_000;

    /** What a screen may say in one message, in bytes. */
    public static final int SOCKET_TEXT_BYTES_MAX = 8_192;

    /** How long a frame may take to leave, in milliseconds; a slower screen is cut off. */
    public static final long SOCKET_SEND_MILLIS_MAX = 5_000;

    /**
     * What the system may hold of what a connection has not taken yet, in bytes. Left to itself it
     * would hold megabytes, and a slow screen would show what was true minutes ago.
     */
    public static final int SEND_BUFFER_BYTES = 65_536;

    /** A sign of life goes to every screen this often, in milliseconds. */
    public static final long BEAT_MILLIS = 2_000;

    /** Every screen is asked whether it is there this often, in milliseconds. */
    public static final long PING_MILLIS = 3_000;

    /**
     * A screen not heard from for so long is taken off the list when it is asked next, in
     * milliseconds: two questions without an answer, so that it is off ten seconds after it went.
     */
    public static final long PONG_MILLIS_MAX = 7_000;

    /** How long a server that stops waits for its screens to hear that it does, in milliseconds. */
    public static final long GOODBYE_MILLIS_MAX = 500;

    /** How often it looks whether they have, in milliseconds. */
    public static final long GOODBYE_LOOK_MILLIS = 10;

    /**
     * Frames that a screen may send at once, whatever they are; then it is not read for a while.
     */
    public static final int SOCKET_FRAMES_BURST_MAX = 100;

    /** Frames that a screen may send each second after that. */
    public static final int SOCKET_FRAMES_PER_SECOND_MAX = 20;

    /**
     * Connections that one address has at once, unless the stand is told another number. A browser
     * needs six and one for its board; behind one router there may be several.
     */
    public static final int CONNECTIONS_PER_ADDRESS_MAX = 64;

    /** Connections of all addresses together; most are screens. */
    public static final int CONNECTIONS_MAX = 8_000;

    /** Connections that the system keeps until they are looked at. */
    public static final int BACKLOG_CONNECTIONS = 1_000;

    /** Threads for pages, for each core. */
    public static final int WORKERS_PER_CORE = 8;

    /** How long the body of a request may take to arrive after its head, in milliseconds. */
    public static final int BODY_MILLIS_MAX = 5_000;

    /** What of an answer that has begun must be taken each {@link #BODY_MILLIS_MAX}, in bytes. */
    public static final long ANSWER_TAKEN_BYTES_MIN = 4_096;

    /** The body of a request, in bytes. */
    public static final long BODY_BYTES_MAX = 65_536;

    /**
     * How much of a body that is too large is taken in and thrown away, in bytes, so that its
     * sender reads the refusal rather than a broken connection.
     */
    public static final long BODY_DRAINED_BYTES_MAX = 1_048_576;

    /** All headers of a request, in bytes. */
    public static final int HEADER_BYTES_MAX = 16_384;

    /** Headers of a request. */
    public static final int HEADERS_MAX = 50;

    /** Query parameters of a request. */
    public static final int PARAMETERS_MAX = 100;

    /** Cookies of a request. */
    public static final int COOKIES_MAX = 10;

    /** How long a request's head may take to arrive, in milliseconds. */
    public static final int HEAD_MILLIS_MAX = 5_000;

    /** How long a connection may stay without a request, in milliseconds. */
    public static final int NO_REQUEST_MILLIS_MAX = 15_000;

    /** How often the stand looks whether its certificate must be renewed, in seconds: an hour. */
    public static final long CERTIFICATE_SECONDS = 3_600;

    /** How long a browser remembers to come by https alone, in seconds: thirty days. */
    public static final long STRICT_TRANSPORT_SECONDS = 2_592_000;

    /** How long a request may wait for the desk, in milliseconds. */
    public static final long ANSWER_MILLIS_MAX = 5_000;

    /** Tries to sign in or to pair that one address has at once. */
    public static final int SIGN_IN_BURST_MAX = 10;

    /** How long it takes until an address that has used them has one more, in milliseconds. */
    public static final long SIGN_IN_EACH_MILLIS = 3_000;

    /** Addresses whose tries are remembered, for each kind of try. */
    public static final int RATE_ADDRESSES_MAX = 1_024;

    /** How deep JSON may nest. */
    public static final int JSON_DEPTH_MAX = 20;

    /** A text in JSON, in characters: twice a call, so that a call too long hears why. */
    public static final int JSON_TEXT_CHARS_MAX = 16_000;

    /** A number in JSON, in characters. */
    public static final int JSON_NUMBER_CHARS_MAX = 20;

    /** A field's name in JSON, in characters. */
    public static final int JSON_FIELD_CHARS_MAX = 64;

    /** Brackets, fields and values in JSON: a few times the largest book of recipes. */
    public static final int JSON_TOKENS_MAX = 16_384;

    /** How long ago a call may have been taken that is placed only now, in milliseconds: a day. */
    public static final long TAKEN_AGO_MILLIS_MAX = 86_400_000;

    /** A call taken so shortly before it is placed was taken now, in milliseconds. */
    public static final long TAKEN_NOW_MILLIS_MAX = 10_000;

    /** How far a counter's clock may be ahead of the stand's, in milliseconds. */
    public static final long CLOCK_AHEAD_MILLIS_MAX = 300_000;

    /** Earlier menus that are asked what something was called. */
    public static final int MENUS_NAMED_MAX = 20;

    /** Tallies of past days that are kept at hand, of each kind, while memory lasts: five years. */
    public static final int TALLIES_AT_HAND_MAX = 1_830;

    /** Days that one file may be downloaded of: a year and a day. */
    public static final int EXPORT_DAYS_MAX = 366;

    /** Days that a mix may be asked over: ten years. */
    public static final int MIX_DAYS_MAX = 3_660;

    /** Calendar days, the day itself among them, over which a day's page shows a share's run. */
    public static final int MIX_RUN_DAYS = 42;

    /** Days of a mix that are listed one by one. */
    public static final int MIX_DAYS_SHOWN_MAX = 62;

    /** How many of a day's slowest orders are told step by step. */
    public static final int SLOWEST_ORDERS_MAX = 10;

    /** Open orders in one answer. */
    public static final int LISTED_ORDERS_MAX = 1_000;

    /** Questions about past days that may wait; one more is told to come again. */
    public static final int PAST_QUEUE_MAX = 32;

    /** Boards of past days that are kept drawn, of one day each: a few megabytes at most. */
    public static final int PAST_BOARDS_MAX = 10;

    /** Past days whose curve is kept. */
    public static final int PAST_DAYS_MAX = 20;

    /** Questions for a plan of prep that may wait; one more is told to come again. */
    public static final int PREP_QUEUE_MAX = 16;

    /** How far back a plan of prep learns from: two years and the weeks of a holiday. */
    public static final int PREP_HISTORY_DAYS_MAX = 780;

    /** How many days of a plan are shown at once. */
    public static final int PREP_DAYS_SHOWN_MAX = 14;

    /** Tasks of one day's plan that are kept. */
    public static final int PLAN_TASKS_KEPT_MAX = 300;

    /** Past days of prep that are shown or reckoned with at once: eight weeks. */
    public static final int PREP_PAST_DAYS_MAX = 56;

    /** How often the box's clock is looked at, in seconds. */
    public static final long CLOCK_LOOK_SECONDS = 1;

    /** A difference between the box's clock and the stand's that is a step, in milliseconds. */
    public static final long CLOCK_STEP_MILLIS = 2_000;

    /** Backups of a kind, dailies or weeklies, that a stand may keep. */
    public static final int BACKUPS_MAX = 400;

    /** How long after its day was opened a plan of prep is kept, in seconds. */
    public static final long PLAN_KEPT_AFTER_SECONDS = 60;
}
