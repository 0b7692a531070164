package sopwell.web.pages;

import sopwell.web.T;
import sopwell.web.live.Frame;
import sopwell.web.live.FrameWriter;

/** Writes frames as HTML in one language, with the same templates as the pages. Thread-safe. */
public final class HtmlFrames implements FrameWriter {
    private final Pages pages;
    private final T t;

    /** A writer for screens of one language. */
    public HtmlFrames(Pages pages, T t) {
        this.pages = pages;
        this.t = t;
    }

    @Override
    public String write(Frame frame) {
        return pages.frame(frame, t);
    }
}
