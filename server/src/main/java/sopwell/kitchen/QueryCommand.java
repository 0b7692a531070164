package sopwell.kitchen;

import java.util.List;
import java.util.Optional;

/** What stations and the counter can ask of each other. */
public sealed interface QueryCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        ASK,
        ANSWER
    }

    /** This command's kind. */
    Kind kind();

    /** Asks the counter about a part. */
    record Ask(PartId part, Question question) implements QueryCommand {
        @Override
        public Kind kind() {
            return Kind.ASK;
        }
    }

    /**
     * Answers a query.
     *
     * @param options what it should be of the modifier group that was asked about, perhaps nothing
     *     of it; empty when the part is right as it stands. It holds for every piece of the line
     * @param text the answer in own words, or empty
     */
    record Answer(QueryId query, Optional<List<String>> options, String text)
            implements QueryCommand {
        public Answer {
            options = options.map(List::copyOf);
        }

        @Override
        public Kind kind() {
            return Kind.ANSWER;
        }
    }
}
