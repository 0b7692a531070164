package sopwell.menu;

/** The languages that Sopwell's screens speak. */
public enum Lang {
    EN,
    ES
}
