#pragma once
// A library file of version 1 as text: what sqlite3's .dump says of one. It never changes, so that
// every later version is shown to open it.

namespace quarterturn {

inline constexpr const char* version_1_sql = R"sql(
PRAGMA application_id = 0x5174726E;
PRAGMA user_version = 1;
BEGIN TRANSACTION;
CREATE TABLE client (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    folded_name TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;
INSERT INTO client VALUES(1,'Mira Okonjo-Lindqvist','mira okonjo-lindqvist','rings before nine');
CREATE TABLE wedding (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL,
    folded_name TEXT NOT NULL,
    date TEXT NOT NULL,
    venue TEXT NOT NULL,
    ready_by TEXT NOT NULL
) STRICT;
INSERT INTO wedding VALUES(1,'Okonjo-Lindqvist and Vale','okonjo-lindqvist and vale','2026-11-21','The Old Granary','12:30');
CREATE TABLE party_member (
    wedding INTEGER NOT NULL REFERENCES wedding ON DELETE CASCADE,
    place INTEGER NOT NULL,
    client INTEGER NOT NULL REFERENCES client ON DELETE CASCADE,
    role TEXT NOT NULL,
    PRIMARY KEY (wedding, place),
    UNIQUE (client, wedding)
) STRICT, WITHOUT ROWID;
INSERT INTO party_member VALUES(1,0,1,'bride');
CREATE TABLE sitting (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    client INTEGER NOT NULL REFERENCES client ON DELETE RESTRICT,
    wedding INTEGER REFERENCES wedding ON DELETE SET NULL,
    kind TEXT NOT NULL,
    starts INTEGER NOT NULL,
    ends INTEGER NOT NULL,
    note TEXT NOT NULL
) STRICT;
INSERT INTO sitting VALUES(1,1,1,'trial',1794045600000000000,1794052800000000000,'');
CREATE TABLE look (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    client INTEGER NOT NULL REFERENCES client ON DELETE RESTRICT,
    wedding INTEGER REFERENCES wedding ON DELETE SET NULL,
    name TEXT NOT NULL,
    folded_name TEXT NOT NULL,
    worn TEXT NOT NULL
) STRICT;
INSERT INTO look VALUES(1,1,1,'low twisted bun','low twisted bun','ceremony');
CREATE TABLE look_sitting (
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    place INTEGER NOT NULL,
    sitting INTEGER NOT NULL REFERENCES sitting ON DELETE CASCADE,
    PRIMARY KEY (look, place),
    UNIQUE (sitting, look)
) STRICT, WITHOUT ROWID;
INSERT INTO look_sitting VALUES(1,0,1);
CREATE TABLE shot_list (
    id INTEGER PRIMARY KEY,
    look INTEGER UNIQUE REFERENCES look ON DELETE CASCADE
) STRICT;
INSERT INTO shot_list VALUES(1,1);
CREATE TABLE shot_line (
    list INTEGER NOT NULL REFERENCES shot_list ON DELETE CASCADE,
    place INTEGER NOT NULL,
    stage TEXT NOT NULL,
    angle TEXT NOT NULL,
    need TEXT NOT NULL,
    PRIMARY KEY (list, place),
    UNIQUE (list, stage, angle)
) STRICT, WITHOUT ROWID;
INSERT INTO shot_line VALUES(1,0,'after','left three-quarter','required');
CREATE TABLE waiver (
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    stage TEXT NOT NULL,
    angle TEXT NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (look, stage, angle)
) STRICT, WITHOUT ROWID;
INSERT INTO waiver VALUES(1,'after','back','the veil was pinned already');
CREATE TABLE recipe_revision (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    number INTEGER NOT NULL,
    saved_at INTEGER NOT NULL,
    recipe TEXT NOT NULL,
    UNIQUE (look, number)
) STRICT;
INSERT INTO recipe_revision VALUES(1,1,1,1794052800000000000,'{"accessory":"","build":[{"minutes":12,"pins":[{"colour":"brown","count":6,"crossed":true,"kind":"grip"}],"words":"twist to the nape"}],"cautions":"","feedback":"","finish":"","hair":"","hands_on_minutes":null,"heat_protection":"","heat_tool":null,"parting":"side, on her left","prep":[],"sections":"","waiting_minutes":null}');
CREATE TABLE device (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    make TEXT NOT NULL,
    model TEXT NOT NULL,
    serial TEXT NOT NULL,
    clock_shift INTEGER NOT NULL DEFAULT 0,
    UNIQUE (make, model, serial)
) STRICT;
INSERT INTO device VALUES(1,'Larkmoor','P3','',2820);
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
INSERT INTO photo VALUES(1,'IMG_0042.HEIC','img_0042.heic','photos/2026/2026-11-07 Mira Okonjo-Lindqvist trial/IMG_0042.HEIC','photos/2026/2026-11-07 mira okonjo-lindqvist trial/img_0042.heic','988744218fb1f4fd48f0893ef18e3173ca5f491623b58c51eef51197b7b46290',1234567,1500,2000,1,1794046323610000000,2,60,1,1794049143610000000,181.25,0.125,0.5,0.25,0.0625,-1070935975390360081,0,1,0,'out of focus, too dark','left','keyword ''left''','during','taken after the last gap',1,0,1,'after','left three-quarter',0,'a pin shows','');
CREATE TABLE photo_shown (
    photo INTEGER NOT NULL REFERENCES photo ON DELETE CASCADE,
    place INTEGER NOT NULL,
    client INTEGER NOT NULL REFERENCES client ON DELETE CASCADE,
    PRIMARY KEY (photo, place),
    UNIQUE (client, photo)
) STRICT, WITHOUT ROWID;
INSERT INTO photo_shown VALUES(1,0,1);
CREATE TABLE action (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    said TEXT NOT NULL,
    undone INTEGER NOT NULL DEFAULT 0
) STRICT;
INSERT INTO "action" VALUES(1,'tagged 1 photo left three-quarter',0);
INSERT INTO "action" VALUES(2,'shifted Larkmoor P3 by 47 minutes',0);
CREATE TABLE tag_change (
    action INTEGER NOT NULL REFERENCES action ON DELETE CASCADE,
    photo INTEGER NOT NULL REFERENCES photo ON DELETE CASCADE,
    before TEXT NOT NULL,
    after TEXT NOT NULL,
    PRIMARY KEY (action, photo)
) STRICT, WITHOUT ROWID;
INSERT INTO tag_change VALUES(1,1,'{"accepted because":"","angle":null,"look":null,"mirrored":false,"note":"","placed by hand":false,"shown":[],"sitting":null,"stage":null}','{"accepted because":"","angle":"left three-quarter","look":1,"mirrored":false,"note":"a pin shows","placed by hand":false,"shown":[1],"sitting":1,"stage":"after"}');
CREATE TABLE shift_change (
    action INTEGER NOT NULL REFERENCES action ON DELETE CASCADE,
    device INTEGER NOT NULL REFERENCES device ON DELETE CASCADE,
    before INTEGER NOT NULL,
    after INTEGER NOT NULL,
    PRIMARY KEY (action, device)
) STRICT, WITHOUT ROWID;
INSERT INTO shift_change VALUES(2,1,0,2820);
CREATE TABLE sign_off (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    signed_at INTEGER NOT NULL,
    recipe_sha256 TEXT NOT NULL,
    reopened_at INTEGER,
    reopened_because TEXT NOT NULL DEFAULT ''
) STRICT;
INSERT INTO sign_off VALUES(1,1,1794053400000000000,'2f9c2524d09f5073e1fb36dd12f235bd80956387fe17205cbe8ba5b5bca1274a',NULL,'');
CREATE TABLE sealed_photo (
    sign_off INTEGER NOT NULL REFERENCES sign_off ON DELETE CASCADE,
    place INTEGER NOT NULL,
    photo INTEGER NOT NULL,
    name TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    tags TEXT NOT NULL,
    PRIMARY KEY (sign_off, place)
) STRICT, WITHOUT ROWID;
INSERT INTO sealed_photo VALUES(1,0,1,'IMG_0042.HEIC','988744218fb1f4fd48f0893ef18e3173ca5f491623b58c51eef51197b7b46290','after, left three-quarter');
CREATE TABLE sealed_waiver (
    sign_off INTEGER NOT NULL REFERENCES sign_off ON DELETE CASCADE,
    place INTEGER NOT NULL,
    stage TEXT NOT NULL,
    angle TEXT NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (sign_off, place)
) STRICT, WITHOUT ROWID;
INSERT INTO sealed_waiver VALUES(1,0,'after','back','the veil was pinned already');
CREATE TABLE seen_file (
    source TEXT PRIMARY KEY,
    bytes INTEGER NOT NULL,
    modified_ns INTEGER NOT NULL,
    sha256 TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO seen_file VALUES('/media/card/IMG_0042.HEIC',1234567,1762510323610000000,'988744218fb1f4fd48f0893ef18e3173ca5f491623b58c51eef51197b7b46290');
CREATE TABLE setting (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
INSERT INTO setting VALUES('business line','Hair by Ines');
DELETE FROM sqlite_sequence;
INSERT INTO sqlite_sequence VALUES('client',1);
INSERT INTO sqlite_sequence VALUES('wedding',1);
INSERT INTO sqlite_sequence VALUES('sitting',1);
INSERT INTO sqlite_sequence VALUES('look',1);
INSERT INTO sqlite_sequence VALUES('recipe_revision',1);
INSERT INTO sqlite_sequence VALUES('device',1);
INSERT INTO sqlite_sequence VALUES('photo',1);
INSERT INTO sqlite_sequence VALUES('action',2);
INSERT INTO sqlite_sequence VALUES('sign_off',1);
CREATE INDEX client_folded_name ON client (folded_name);
CREATE INDEX wedding_folded_name ON wedding (folded_name);
CREATE INDEX wedding_date ON wedding (date);
CREATE INDEX sitting_starts ON sitting (starts);
CREATE INDEX sitting_client ON sitting (client, starts);
CREATE INDEX sitting_wedding ON sitting (wedding);
CREATE INDEX look_folded_name ON look (folded_name);
CREATE INDEX look_client ON look (client);
CREATE INDEX look_wedding ON look (wedding);
CREATE UNIQUE INDEX shot_list_own_default ON shot_list (look IS NULL) WHERE look IS NULL;
CREATE INDEX photo_moment ON photo (moment IS NULL, moment);
CREATE INDEX photo_sitting ON photo (sitting, moment IS NULL, moment);
CREATE INDEX photo_look ON photo (look) WHERE look IS NOT NULL;
CREATE INDEX photo_device ON photo (device, moment IS NULL, moment);
CREATE INDEX photo_folded_name ON photo (folded_name);
CREATE INDEX action_undone ON action (undone);
CREATE INDEX tag_change_photo ON tag_change (photo);
CREATE INDEX shift_change_device ON shift_change (device);
CREATE INDEX sign_off_look ON sign_off (look);
CREATE UNIQUE INDEX sign_off_standing ON sign_off (look) WHERE reopened_at IS NULL;
COMMIT;
)sql";

}  // namespace quarterturn
