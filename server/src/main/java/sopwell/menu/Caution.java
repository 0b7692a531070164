package sopwell.menu;

/** What can hurt where it is worked with. The limits it names are the stand's settings. */
public enum Caution {
    /** A fryer. */
    HOT_FAT,
    /** A dip that is kept hot. */
    HOT_JUS,
    /** Food that is reheated to be held hot. */
    REHEAT,
    /** A power-driven slicer. */
    SLICER,
    /** Vegetables under oil, kept cold for a short time only. */
    UNDER_OIL
}
