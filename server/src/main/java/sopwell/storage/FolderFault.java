package sopwell.storage;

import sopwell.log.LogFault;

/** A data folder that can't be used as it is; the sentence is for whoever started the server. */
public final class FolderFault extends LogFault {
    private static final long serialVersionUID = 1L;

    FolderFault(String sentence) {
        super(sentence);
    }

    FolderFault(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
