// Conventions of the schema: times of day are nanoseconds of local time since 1970-01-01T00:00,
// dates ISO 8601 text, vocabulary its own words, shifts seconds, offsets minutes. `folded` columns
// hold folded() of the column they are named after. Numbers of rows are never used again, since
// sign-offs and printed sheets outlive what they name.

#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration first_tables{R"sql(
CREATE TABLE client (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    folded_name TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX client_folded_name ON client (folded_name);

CREATE TABLE wedding (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    folded_name TEXT NOT NULL,
    date TEXT NOT NULL,
    venue TEXT NOT NULL,
    ready_by TEXT NOT NULL
) STRICT;
CREATE INDEX wedding_folded_name ON wedding (folded_name);
CREATE INDEX wedding_date ON wedding (date);

CREATE TABLE party_member (
    wedding INTEGER NOT NULL REFERENCES wedding ON DELETE CASCADE,
    place INTEGER NOT NULL,
    client INTEGER NOT NULL REFERENCES client ON DELETE CASCADE,
    role TEXT NOT NULL,
    PRIMARY KEY (wedding, place),
    UNIQUE (client, wedding)
) STRICT, WITHOUT ROWID;

CREATE TABLE sitting (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    client INTEGER NOT NULL REFERENCES client ON DELETE RESTRICT,
    wedding INTEGER REFERENCES wedding ON DELETE SET NULL,
    kind TEXT NOT NULL,
    starts INTEGER NOT NULL,
    ends INTEGER NOT NULL,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX sitting_starts ON sitting (starts);
CREATE INDEX sitting_client ON sitting (client, starts);
CREATE INDEX sitting_wedding ON sitting (wedding);

CREATE TABLE look (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    client INTEGER NOT NULL REFERENCES client ON DELETE RESTRICT,
    wedding INTEGER REFERENCES wedding ON DELETE SET NULL,
    name TEXT NOT NULL,
    folded_name TEXT NOT NULL,
    worn TEXT NOT NULL
) STRICT;
CREATE INDEX look_folded_name ON look (folded_name);
CREATE INDEX look_client ON look (client);
CREATE INDEX look_wedding ON look (wedding);

CREATE TABLE look_sitting (
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    place INTEGER NOT NULL,
    sitting INTEGER NOT NULL REFERENCES sitting ON DELETE CASCADE,
    PRIMARY KEY (look, place),
    UNIQUE (sitting, look)
) STRICT, WITHOUT ROWID;

-- A list of no look is her own default.
CREATE TABLE shot_list (
    id INTEGER PRIMARY KEY,
    look INTEGER UNIQUE REFERENCES look ON DELETE CASCADE
) STRICT;
CREATE UNIQUE INDEX shot_list_own_default ON shot_list (look IS NULL) WHERE look IS NULL;

CREATE TABLE shot_line (
    list INTEGER NOT NULL REFERENCES shot_list ON DELETE CASCADE,
    place INTEGER NOT NULL,
    stage TEXT NOT NULL,
    angle TEXT NOT NULL,
    need TEXT NOT NULL,
    PRIMARY KEY (list, place),
    UNIQUE (list, stage, angle)
) STRICT, WITHOUT ROWID;

CREATE TABLE waiver (
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    stage TEXT NOT NULL,
    angle TEXT NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (look, stage, angle)
) STRICT, WITHOUT ROWID;

CREATE TABLE recipe_revision (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    number INTEGER NOT NULL,
    saved_at INTEGER NOT NULL,
    recipe TEXT NOT NULL,
    UNIQUE (look, number)
) STRICT;

CREATE TABLE device (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    make TEXT NOT NULL,
    model TEXT NOT NULL,
    serial TEXT NOT NULL,
    clock_shift INTEGER NOT NULL DEFAULT 0,
    UNIQUE (make, model, serial)
) STRICT;

CREATE TABLE photo (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    folded_name TEXT NOT NULL,
    path TEXT NOT NULL,
    folded_path TEXT NOT NULL UNIQUE,
    sha256 TEXT NOT NULL UNIQUE,
    bytes INTEGER NOT NULL,
    width INTEGER NOT NULL,
    height INTEGER NOT NULL,
    orientation INTEGER NOT NULL,
    taken INTEGER,
    fraction_digits INTEGER,
    utc_offset INTEGER,
    device INTEGER REFERENCES device ON DELETE SET NULL,
    moment INTEGER,
    focus REAL NOT NULL DEFAULT 0,
    motion REAL NOT NULL DEFAULT 0,
    mean_light REAL NOT NULL DEFAULT 0,
    clipped_shadows REAL NOT NULL DEFAULT 0,
    clipped_highlights REAL NOT NULL DEFAULT 0,
    fingerprint INTEGER NOT NULL DEFAULT 0,
    frontal_face INTEGER,
    profile_to_left INTEGER,
    profile_to_right INTEGER,
    flaws TEXT NOT NULL DEFAULT '',
    suggested_angle TEXT,
    suggested_angle_source TEXT NOT NULL DEFAULT '',
    suggested_stage TEXT,
    suggested_stage_source TEXT NOT NULL DEFAULT '',
    sitting INTEGER REFERENCES sitting ON DELETE SET NULL,
    placed_by_hand INTEGER NOT NULL DEFAULT 0,
    look INTEGER REFERENCES look ON DELETE SET NULL,
    stage TEXT,
    angle TEXT,
    mirrored INTEGER NOT NULL DEFAULT 0,
    note TEXT NOT NULL DEFAULT '',
    accepted_because TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX photo_moment ON photo (moment IS NULL, moment);
CREATE INDEX photo_sitting ON photo (sitting, moment IS NULL, moment);
CREATE INDEX photo_look ON photo (look) WHERE look IS NOT NULL;
CREATE INDEX photo_device ON photo (device, moment IS NULL, moment);
CREATE INDEX photo_folded_name ON photo (folded_name);

CREATE TABLE photo_shown (
    photo INTEGER NOT NULL REFERENCES photo ON DELETE CASCADE,
    place INTEGER NOT NULL,
    client INTEGER NOT NULL REFERENCES client ON DELETE CASCADE,
    PRIMARY KEY (photo, place),
    UNIQUE (client, photo)
) STRICT, WITHOUT ROWID;

CREATE TABLE action (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    said TEXT NOT NULL,
    undone INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE INDEX action_undone ON action (undone);

CREATE TABLE tag_change (
    action INTEGER NOT NULL REFERENCES action ON DELETE CASCADE,
    photo INTEGER NOT NULL REFERENCES photo ON DELETE CASCADE,
    before TEXT NOT NULL,
    after TEXT NOT NULL,
    PRIMARY KEY (action, photo)
) STRICT, WITHOUT ROWID;
CREATE INDEX tag_change_photo ON tag_change (photo);

CREATE TABLE shift_change (
    action INTEGER NOT NULL REFERENCES action ON DELETE CASCADE,
    device INTEGER NOT NULL REFERENCES device ON DELETE CASCADE,
    before INTEGER NOT NULL,
    after INTEGER NOT NULL,
    PRIMARY KEY (action, device)
) STRICT, WITHOUT ROWID;
CREATE INDEX shift_change_device ON shift_change (device);

CREATE TABLE sign_off (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    signed_at INTEGER NOT NULL,
    recipe_sha256 TEXT NOT NULL,
    reopened_at INTEGER,
    reopened_because TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX sign_off_look ON sign_off (look);
CREATE UNIQUE INDEX sign_off_standing ON sign_off (look) WHERE reopened_at IS NULL;

-- The photo's number is no reference: the seal tells what was signed even when the photo has gone.
CREATE TABLE sealed_photo (
    sign_off INTEGER NOT NULL REFERENCES sign_off ON DELETE CASCADE,
    place INTEGER NOT NULL,
    photo INTEGER NOT NULL,
    name TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    tags TEXT NOT NULL,
    PRIMARY KEY (sign_off, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE sealed_waiver (
    sign_off INTEGER NOT NULL REFERENCES sign_off ON DELETE CASCADE,
    place INTEGER NOT NULL,
    stage TEXT NOT NULL,
    angle TEXT NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (sign_off, place)
) STRICT, WITHOUT ROWID;

CREATE TABLE seen_file (
    source TEXT PRIMARY KEY,
    bytes INTEGER NOT NULL,
    modified_ns INTEGER NOT NULL,
    sha256 TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE setting (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
)sql"};

}  // namespace quarterturn
