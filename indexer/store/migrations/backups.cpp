#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration backups{R"sql(
CREATE TABLE backup (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    mark TEXT NOT NULL UNIQUE,
    folder TEXT NOT NULL,
    volume TEXT NOT NULL,
    newest_records TEXT NOT NULL,
    finished_at INTEGER,
    photos INTEGER NOT NULL,
    last_photo INTEGER NOT NULL,
    last_erasure INTEGER NOT NULL
) STRICT;

-- Photos that were looked at for a backup and are not in it, since their file was gone or damaged.
CREATE TABLE backup_lack (
    backup INTEGER NOT NULL REFERENCES backup ON DELETE CASCADE,
    photo INTEGER NOT NULL REFERENCES photo ON DELETE CASCADE,
    PRIMARY KEY (backup, photo)
) STRICT, WITHOUT ROWID;
CREATE INDEX backup_lack_photo ON backup_lack (photo);

-- How far the checking of all files has come; one row at most.
CREATE TABLE verification (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    last_photo INTEGER NOT NULL,
    finished_at INTEGER,
    problems INTEGER NOT NULL
) STRICT;

-- What was found to be wrong before the checking was stopped: looked at again when it goes on.
CREATE TABLE verification_problem (
    photo INTEGER PRIMARY KEY REFERENCES photo ON DELETE CASCADE
) STRICT;
)sql"};

}  // namespace quarterturn
