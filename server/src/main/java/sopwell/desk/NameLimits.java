package sopwell.desk;

/** What a date must be like before names are erased because of it, with its unit in each name. */
public final class NameLimits {
    /** How far a date may be from the last one that is sure and still be believed, in days. */
    public static final int JUMP_DAYS_MAX = 14;

    /** After a longer jump, as many business days make it sure again, the first one included. */
    public static final int SURE_AGAIN_DAYS = 7;

    private NameLimits() {}
}
