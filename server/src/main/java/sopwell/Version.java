package sopwell;

/** Which Sopwell this is. Stateless. */
final class Version {
    /** As in the build's description. */
    static final String NUMBER = "0.1.0";

    private Version() {}
}
