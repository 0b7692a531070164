package sopwell.storage;

import sopwell.log.EventLog;

class MemoryLogTest extends EventLogContract {
    private final MemoryLog log = new MemoryLog("0123456789abcdef");

    @Override
    EventLog log() {
        return log;
    }

    @Override
    EventLog again() {
        return log;
    }
}
