package sopwell.sim;

import java.nio.file.Path;
import sopwell.log.EventLog;
import sopwell.storage.DataFolder;
import sopwell.storage.MemoryLog;

/** Where the log stands while processes come and go. Belongs to one thread. */
interface Store extends AutoCloseable {
    /** The log as a process that starts now finds it. */
    EventLog open(String stand);

    @Override
    void close();

    /** One that forgets everything at the end, but not with a process. */
    static Store memory() {
        MemoryLog log = new MemoryLog("epoch");
        return new Store() {
            @Override
            public EventLog open(String stand) {
                return log;
            }

            @Override
            public void close() {
                log.close();
            }
        };
    }

    /** A real file; what a process left is closed before the next one opens it. */
    static Store file(Path folder) {
        return new Store() {
            private DataFolder data;
            private EventLog log;

            @Override
            public EventLog open(String stand) {
                close();
                data = DataFolder.open(folder);
                log = data.openLog(stand);
                return log;
            }

            @Override
            public void close() {
                if (data != null) {
                    log.close();
                    data.close();
                    data = null;
                }
            }
        };
    }
}
