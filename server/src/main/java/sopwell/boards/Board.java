package sopwell.boards;

import java.util.List;

/** What one screen shows. */
public interface Board {
    /** The rows in sight, in their order. */
    List<? extends Row> rows();

    /** How many more rows there are below those in sight. */
    int below();
}
