package sopwell.access;

import java.util.List;

/**
 * Why somebody is not let in, or something about access is not done. Nothing was changed but the
 * count of tries. Immutable.
 *
 * @param args what the sentence names, as {@link Why} says
 */
public record Refused(Why why, List<String> args) {
    /** The reasons. The sentence of each is the text {@code access.} and its code. */
    public enum Why {
        /** PIN or password is not the right one; how many tries are left. */
        WRONG_SECRET,
        /** Too many tries; how many seconds to wait. */
        WAIT,
        /** Far too many tries; a lead or the owner must unlock. */
        LOCKED,
        /** Nobody types a PIN at a device that was not paired. */
        NOT_PAIRED,
        /** There is no such person, or they no longer work here. */
        NO_SUCH_PERSON,
        /** There is no such device or token, or it was ended. */
        NO_SUCH_THING,
        /** The person has no PIN or password of that kind yet. */
        NONE_SET,
        /** A PIN has 4 to 8 digits; the least and the most. */
        PIN_FORM,
        /** A password has 8 to 128 characters; the least and the most. */
        PASSWORD_FORM,
        /** The role has no password. */
        ROLE_WITHOUT_PASSWORD,
        /** A name is missing or too long; the most characters. */
        NAME_FORM,
        /** The pairing code is not, or no longer, right. */
        CODE_WRONG,
        /** Too many codes were tried; how many seconds to wait. */
        CODE_TRIES,
        /** The last owner who can sign in stays one. */
        LAST_OWNER,
        /** Only an owner does that to an owner. */
        OWNERS_ONLY,
        /** No more fit; how many there may be. */
        TOO_MANY,
        /** Too many other secrets are being checked; this one was not looked at. */
        BUSY
    }

    public Refused {
        args = List.copyOf(args);
    }

    static Refused of(Why why, Object... args) {
        return new Refused(why, java.util.Arrays.stream(args).map(Object::toString).toList());
    }
}
