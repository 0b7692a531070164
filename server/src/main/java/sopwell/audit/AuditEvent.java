package sopwell.audit;

import java.time.LocalDate;
import sopwell.log.Event;

/** Who did something, and what became of who may do what. Ids only, never a name. */
public sealed interface AuditEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        DONE_BY,
        ACCESS_CHANGED,
        NAMES_ERASED
    }

    /** This event's kind. */
    Kind kind();

    /** Who did what the events before it say that belong to the same command; its last event. */
    record DoneBy(Who who) implements AuditEvent {
        @Override
        public Kind kind() {
            return Kind.DONE_BY;
        }
    }

    /**
     * Something changed about who may do what.
     *
     * @param change what
     * @param person the id of the person that it is about, or empty
     * @param device the id of the device that it is about, or empty
     * @param token the id of the program's token that it is about, or empty
     */
    record AccessChanged(Change change, String person, String device, String token)
            implements AuditEvent {
        /** Something about a person. */
        public static AccessChanged ofPerson(Change change, String person) {
            return new AccessChanged(change, person, "", "");
        }

        /** Something about a device. */
        public static AccessChanged ofDevice(Change change, String device) {
            return new AccessChanged(change, "", device, "");
        }

        /** Something about a program's token. */
        public static AccessChanged ofToken(Change change, String token) {
            return new AccessChanged(change, "", "", token);
        }

        @Override
        public Kind kind() {
            return Kind.ACCESS_CHANGED;
        }
    }

    /**
     * Names were taken out of the log.
     *
     * @param of whose
     * @param date the business day of which they were
     * @param order the id of the one order of which, or empty
     * @param fromSeq the first place that was looked at
     * @param toSeq the last one
     * @param names how many texts hold no name any more
     * @param digest stands for every event that was changed by it, as it is since then
     */
    record NamesErased(
            Of of, LocalDate date, String order, long fromSeq, long toSeq, int names, String digest)
            implements AuditEvent {
        @Override
        public Kind kind() {
            return Kind.NAMES_ERASED;
        }
    }

    /** Whose names were taken out. Their written form is frozen as events' names are. */
    enum Of {
        /** All guests'. */
        GUESTS,
        /** Staff's who have left. */
        STAFF,
        /** One person's, wherever it stood. */
        PERSON
    }

    /** What can change about who may do what. Their written form is frozen as events' names are. */
    enum Change {
        PERSON_ADDED,
        PERSON_CHANGED,
        PERSON_RENAMED,
        ROLE_SET,
        PERSON_LEFT,
        PERSON_ERASED,
        PIN_SET,
        PIN_LOCKED,
        PASSWORD_SET,
        PASSWORD_LOCKED,
        UNLOCKED,
        DEVICE_PAIRED,
        DEVICE_CHANGED,
        DEVICE_REVOKED,
        TOKEN_MADE,
        TOKEN_REVOKED
    }
}
