package sopwell.access;

/** Every limit of access, with its unit in its name; the others are in {@link sopwell.Limits}. */
public final class AccessLimits {
    private AccessLimits() {}

    /** The least digits of a PIN. */
    public static final int PIN_DIGITS_MIN = 4;

    /** The most digits of a PIN. */
    public static final int PIN_DIGITS_MAX = 8;

    /** The least characters of a password. */
    public static final int PASSWORD_CHARS_MIN = 8;

    /** The most characters of a password. */
    public static final int PASSWORD_CHARS_MAX = 128;

    /** Wrong PINs or passwords of somebody at one place before there is a wait. */
    public static final int SECRET_TRIES_MAX = 5;

    /** Wrong PINs or passwords of somebody at one place before somebody else must unlock. */
    public static final int SECRET_TRIES_HARD_MAX = 20;

    /** The first wait after too many tries, in milliseconds; each further one is twice as long. */
    public static final long SECRET_WAIT_MILLIS_MIN = 30_000;

    /** The longest wait after too many tries, in milliseconds. */
    public static final long SECRET_WAIT_MILLIS_MAX = 900_000;

    /** Secrets that wait to be checked; one more is told to come again. */
    public static final int SECRETS_WAITING_MAX = 64;

    /** How long a password counts as just typed, in milliseconds. */
    public static final long PASSWORD_FRESH_MILLIS = 300_000;

    /** A lead's or owner's session ends after so long without a request, in milliseconds. */
    public static final long SESSION_LEAD_IDLE_MILLIS_MAX = 900_000;

    /** Another's session ends after so long without a request, in milliseconds. */
    public static final long SESSION_IDLE_MILLIS_MAX = 43_200_000;

    /** Every session ends after so long, in milliseconds. */
    public static final long SESSION_MILLIS_MAX = 86_400_000;

    /** A request counts for a session's idle end when the last was so long ago, in milliseconds. */
    public static final long SESSION_SEEN_MILLIS = 1_000;

    /** Sessions at once; the one seen longest ago ends for one more. */
    public static final int SESSIONS_MAX = 500;

    /** How long a pairing code is good for, in milliseconds. */
    public static final long PAIRING_MILLIS_MAX = 120_000;

    /** Wrong pairing codes that one address may type while a code is good. */
    public static final int PAIRING_TRIES_MAX = 5;

    /** Wrong pairing codes from all addresses together, after which no offered code is good. */
    public static final int PAIRING_ALL_TRIES_MAX = 100;

    /** Pairing codes that are good at once. */
    public static final int PAIRINGS_MAX = 10;

    /** People, those who left among them. */
    public static final int PEOPLE_MAX = 500;

    /** Devices, those that were ended among them. */
    public static final int DEVICES_MAX = 500;

    /** Programs' tokens, those that were ended among them. */
    public static final int TOKENS_MAX = 500;

    /** Owners at once: the owner's password is looked for among them all. */
    public static final int OWNERS_MAX = 3;

    /** Places of which wrong tries are remembered; the one with the fewest is forgotten first. */
    public static final int TRIES_PLACES_MAX = 400;
}
