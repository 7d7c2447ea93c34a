// Consent, and the ledger of what went out, are only ever added to: the triggers refuse the rest.

#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration consent_records{R"sql(
CREATE TABLE consent (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    client INTEGER NOT NULL REFERENCES client ON DELETE RESTRICT,
    use TEXT NOT NULL,
    said TEXT NOT NULL,
    said_on TEXT NOT NULL,
    shown TEXT NOT NULL,
    valid_from TEXT,
    valid_until TEXT,
    how TEXT NOT NULL,
    giver TEXT NOT NULL,
    guardian TEXT NOT NULL,
    witness TEXT NOT NULL,
    age TEXT,
    note TEXT NOT NULL,
    recorded_at INTEGER NOT NULL
) STRICT;
CREATE INDEX consent_client ON consent (client);

CREATE TABLE consent_paper (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    path TEXT NOT NULL UNIQUE,
    sha256 TEXT NOT NULL,
    bytes INTEGER NOT NULL,
    added_at INTEGER NOT NULL
) STRICT;

CREATE TABLE consent_paper_of (
    consent INTEGER NOT NULL REFERENCES consent ON DELETE RESTRICT,
    paper INTEGER NOT NULL REFERENCES consent_paper ON DELETE RESTRICT,
    PRIMARY KEY (consent, paper)
) STRICT, WITHOUT ROWID;
CREATE INDEX consent_paper_of_paper ON consent_paper_of (paper);

CREATE TABLE photo_credit (
    photo INTEGER PRIMARY KEY REFERENCES photo ON DELETE CASCADE,
    whose TEXT NOT NULL,
    name TEXT NOT NULL,
    valid_until TEXT,
    line TEXT
) STRICT;

CREATE TABLE photo_licence (
    photo INTEGER NOT NULL REFERENCES photo_credit ON DELETE CASCADE,
    use TEXT NOT NULL,
    PRIMARY KEY (photo, use)
) STRICT, WITHOUT ROWID;

CREATE TABLE photo_seen (
    photo INTEGER PRIMARY KEY REFERENCES photo ON DELETE CASCADE,
    face INTEGER,
    strangers INTEGER NOT NULL,
    nobody INTEGER NOT NULL
) STRICT;

-- The photo's number is no reference: the ledger tells what went out even when the photo has gone.
CREATE TABLE export (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    photo INTEGER NOT NULL,
    photo_name TEXT NOT NULL,
    photo_sha256 TEXT NOT NULL,
    use TEXT NOT NULL,
    at INTEGER NOT NULL,
    file TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    bytes INTEGER NOT NULL
) STRICT;
CREATE INDEX export_photo ON export (photo);

CREATE TABLE export_under (
    export INTEGER NOT NULL REFERENCES export ON DELETE RESTRICT,
    consent INTEGER NOT NULL REFERENCES consent ON DELETE RESTRICT,
    PRIMARY KEY (export, consent)
) STRICT, WITHOUT ROWID;
CREATE INDEX export_under_consent ON export_under (consent);

CREATE TABLE export_place (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    export INTEGER NOT NULL REFERENCES export ON DELETE RESTRICT,
    place TEXT NOT NULL
) STRICT;
CREATE INDEX export_place_export ON export_place (export);

CREATE TABLE export_taken_down (
    export INTEGER PRIMARY KEY REFERENCES export ON DELETE RESTRICT,
    taken_on TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE TABLE selection (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    folded_name TEXT NOT NULL UNIQUE
) STRICT;

CREATE TABLE selection_photo (
    selection INTEGER NOT NULL REFERENCES selection ON DELETE CASCADE,
    place INTEGER NOT NULL,
    photo INTEGER NOT NULL REFERENCES photo ON DELETE CASCADE,
    PRIMARY KEY (selection, place),
    UNIQUE (selection, photo)
) STRICT, WITHOUT ROWID;
CREATE INDEX selection_photo_photo ON selection_photo (photo);

CREATE TRIGGER consent_kept BEFORE UPDATE ON consent BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
CREATE TRIGGER consent_stays BEFORE DELETE ON consent BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
CREATE TRIGGER consent_paper_kept BEFORE UPDATE ON consent_paper BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
CREATE TRIGGER consent_paper_stays BEFORE DELETE ON consent_paper BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
CREATE TRIGGER consent_paper_of_kept BEFORE UPDATE ON consent_paper_of BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
CREATE TRIGGER consent_paper_of_stays BEFORE DELETE ON consent_paper_of BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
CREATE TRIGGER export_kept BEFORE UPDATE ON export BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
CREATE TRIGGER export_stays BEFORE DELETE ON export BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
CREATE TRIGGER export_under_kept BEFORE UPDATE ON export_under BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
CREATE TRIGGER export_under_stays BEFORE DELETE ON export_under BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
CREATE TRIGGER export_place_kept BEFORE UPDATE ON export_place BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
CREATE TRIGGER export_place_stays BEFORE DELETE ON export_place BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
CREATE TRIGGER export_taken_down_kept BEFORE UPDATE ON export_taken_down BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
CREATE TRIGGER export_taken_down_stays BEFORE DELETE ON export_taken_down BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
-- INSERT OR REPLACE takes a row away without asking those.
CREATE TRIGGER consent_not_replaced BEFORE INSERT ON consent
WHEN EXISTS (SELECT 1 FROM consent WHERE id = new.id) BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
CREATE TRIGGER consent_paper_not_replaced BEFORE INSERT ON consent_paper
WHEN EXISTS (SELECT 1 FROM consent_paper WHERE id = new.id) BEGIN
    SELECT raise(ABORT, 'consent is only added to');
END;
CREATE TRIGGER export_not_replaced BEFORE INSERT ON export
WHEN EXISTS (SELECT 1 FROM export WHERE id = new.id) BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
CREATE TRIGGER export_place_not_replaced BEFORE INSERT ON export_place
WHEN EXISTS (SELECT 1 FROM export_place WHERE id = new.id) BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
CREATE TRIGGER export_taken_down_not_replaced BEFORE INSERT ON export_taken_down
WHEN EXISTS (SELECT 1 FROM export_taken_down WHERE export = new.export) BEGIN
    SELECT raise(ABORT, 'the ledger is only added to');
END;
)sql"};

}  // namespace quarterturn
