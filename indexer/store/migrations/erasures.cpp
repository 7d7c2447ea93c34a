// Hair only, and erasure: the one thing that may take away what is only added to. It stands in
// `erasing` for as long as its transaction lasts.

#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration erasures{R"sql(
CREATE TABLE hair_only (
    photo INTEGER PRIMARY KEY REFERENCES photo ON DELETE CASCADE,
    way TEXT NOT NULL,
    x REAL NOT NULL,
    y REAL NOT NULL,
    width REAL NOT NULL,
    height REAL NOT NULL,
    mirrored INTEGER NOT NULL,
    sha256 TEXT NOT NULL,
    confirmed_at INTEGER NOT NULL
) STRICT;

-- Whether a picture went out that leaves her face out.
ALTER TABLE export ADD COLUMN hair_only INTEGER NOT NULL DEFAULT 0;

CREATE TABLE erasure (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    erased_on TEXT NOT NULL,
    photos INTEGER NOT NULL,
    looks INTEGER NOT NULL,
    finished INTEGER NOT NULL DEFAULT 0
) STRICT;

-- Files whose records are gone and that are still to be removed, relative to the library's folder.
CREATE TABLE erasure_file (path TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;

CREATE TABLE erasing (id INTEGER PRIMARY KEY) STRICT;

DROP TRIGGER consent_stays;
CREATE TRIGGER consent_stays BEFORE DELETE ON consent
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
DROP TRIGGER consent_paper_stays;
CREATE TRIGGER consent_paper_stays BEFORE DELETE ON consent_paper
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
DROP TRIGGER consent_paper_of_stays;
CREATE TRIGGER consent_paper_of_stays BEFORE DELETE ON consent_paper_of
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
DROP TRIGGER consent_kept;
CREATE TRIGGER consent_kept BEFORE UPDATE ON consent
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
DROP TRIGGER export_kept;
CREATE TRIGGER export_kept BEFORE UPDATE ON export
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
DROP TRIGGER export_stays;
CREATE TRIGGER export_stays BEFORE DELETE ON export
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
DROP TRIGGER export_under_stays;
CREATE TRIGGER export_under_stays BEFORE DELETE ON export_under
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
DROP TRIGGER export_place_kept;
CREATE TRIGGER export_place_kept BEFORE UPDATE ON export_place
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
DROP TRIGGER export_place_stays;
CREATE TRIGGER export_place_stays BEFORE DELETE ON export_place
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
DROP TRIGGER export_taken_down_kept;
CREATE TRIGGER export_taken_down_kept BEFORE UPDATE ON export_taken_down
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
DROP TRIGGER export_taken_down_stays;
CREATE TRIGGER export_taken_down_stays BEFORE DELETE ON export_taken_down
WHEN NOT EXISTS (SELECT 1 FROM erasing) BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
)sql"};

}  // namespace quarterturn
