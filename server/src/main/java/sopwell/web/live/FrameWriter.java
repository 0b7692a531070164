package sopwell.web.live;

/** Writes frames in one form and language. Implementations are thread-safe. */
@FunctionalInterface
public interface FrameWriter {
    /** The text of a frame. */
    String write(Frame frame);

    /**
     * The text of a sign of life.
     *
     * @param seq the log's last place, which a board shows only if the event is about it
     * @param nowMs the server's clock, milliseconds since 1970-01-01 UTC
     */
    default String beat(long seq, long nowMs) {
        return "beat " + seq + " " + nowMs;
    }
}
