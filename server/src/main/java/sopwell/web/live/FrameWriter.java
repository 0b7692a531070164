package sopwell.web.live;

/** Writes frames in one form and language. Implementations are thread-safe. */
@FunctionalInterface
public interface FrameWriter {
    /** The text of a frame. */
    String write(Frame frame);
}
