// The triggers note each look whose pairs or facts may have changed, whoever changed what;
// indexer/looks/pairs.h makes them anew before they are shown.

#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration photo_pairs{R"sql(
CREATE TABLE look_fact (
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    fact TEXT NOT NULL,
    value TEXT NOT NULL,
    said INTEGER NOT NULL,
    PRIMARY KEY (look, fact, said, value)
) STRICT, WITHOUT ROWID;

-- A row stays while there is a pair or a choice of hers.
CREATE TABLE pair (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    look INTEGER NOT NULL REFERENCES look ON DELETE CASCADE,
    kind TEXT NOT NULL,
    number INTEGER NOT NULL,
    angle TEXT NOT NULL,
    first INTEGER REFERENCES photo ON DELETE SET NULL,
    second INTEGER REFERENCES photo ON DELETE SET NULL,
    first_note TEXT NOT NULL DEFAULT 'none',
    second_note TEXT NOT NULL DEFAULT 'none',
    worn_on TEXT,
    chosen_first INTEGER REFERENCES photo ON DELETE SET NULL,
    chosen_second INTEGER REFERENCES photo ON DELETE SET NULL,
    pinned INTEGER NOT NULL DEFAULT 0,
    refused INTEGER NOT NULL DEFAULT 0,
    first_gone INTEGER NOT NULL DEFAULT 0,
    second_gone INTEGER NOT NULL DEFAULT 0,
    UNIQUE (look, kind, number, angle)
) STRICT;
CREATE INDEX pair_first ON pair (first);
CREATE INDEX pair_second ON pair (second);
CREATE INDEX pair_chosen_first ON pair (chosen_first) WHERE chosen_first IS NOT NULL;
CREATE INDEX pair_chosen_second ON pair (chosen_second) WHERE chosen_second IS NOT NULL;
-- All pairs, the newest first, without reading the table.
CREATE INDEX pair_newest ON pair (
    worn_on, id, look, kind, number, angle, first, second, first_note, second_note,
    chosen_first, chosen_second, pinned, refused, first_gone, second_gone);

-- How the second photo is laid upon the first, while it is these two and they are shown this way.
CREATE TABLE pair_alignment (
    pair INTEGER PRIMARY KEY REFERENCES pair ON DELETE CASCADE,
    version INTEGER NOT NULL,
    first INTEGER NOT NULL REFERENCES photo ON DELETE CASCADE,
    second INTEGER NOT NULL REFERENCES photo ON DELETE CASCADE,
    along REAL NOT NULL,
    across REAL NOT NULL,
    x REAL NOT NULL,
    y REAL NOT NULL,
    sure INTEGER NOT NULL
) STRICT;
CREATE INDEX pair_alignment_first ON pair_alignment (first);
CREATE INDEX pair_alignment_second ON pair_alignment (second);
CREATE TRIGGER alignment_mirrored AFTER UPDATE OF mirrored ON photo BEGIN
    DELETE FROM pair_alignment WHERE first = new.id OR second = new.id;
END;
CREATE TRIGGER alignment_points_set AFTER INSERT ON head_points BEGIN
    DELETE FROM pair_alignment WHERE first = new.photo OR second = new.photo;
END;
CREATE TRIGGER alignment_points_moved AFTER UPDATE ON head_points BEGIN
    DELETE FROM pair_alignment WHERE first = new.photo OR second = new.photo;
END;
CREATE TRIGGER alignment_points_cleared AFTER DELETE ON head_points BEGIN
    DELETE FROM pair_alignment WHERE first = old.photo OR second = old.photo;
END;

CREATE TABLE pair_filter (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    folded_name TEXT NOT NULL UNIQUE,
    words TEXT NOT NULL,
    refused INTEGER NOT NULL
) STRICT;

CREATE TABLE pair_filter_value (
    filter INTEGER NOT NULL REFERENCES pair_filter ON DELETE CASCADE,
    fact TEXT NOT NULL,
    place INTEGER NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (filter, fact, place)
) STRICT, WITHOUT ROWID;

-- Her own choice is remembered as gone before the photo is.
CREATE TRIGGER pair_photo_goes BEFORE DELETE ON photo BEGIN
    UPDATE pair SET first_gone = 1 WHERE chosen_first = old.id;
    UPDATE pair SET second_gone = 1 WHERE chosen_second = old.id;
END;

CREATE TABLE look_to_pair (look INTEGER PRIMARY KEY REFERENCES look ON DELETE CASCADE) STRICT;
INSERT INTO look_to_pair SELECT id FROM look;

CREATE TRIGGER to_pair_photo_added AFTER INSERT ON photo BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look WHERE id = new.look
    OR id IN (SELECT look FROM look_sitting WHERE sitting = new.sitting);
END;
CREATE TRIGGER to_pair_photo_changed AFTER UPDATE OF sitting, look, stage, angle, flaws,
    accepted_because, focus, mean_light, moment, width, height ON photo BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look WHERE id IN (old.look, new.look)
    OR id IN (SELECT look FROM look_sitting WHERE sitting IN (old.sitting, new.sitting));
END;
CREATE TRIGGER to_pair_photo_removed AFTER DELETE ON photo BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look WHERE id = old.look
    OR id IN (SELECT look FROM look_sitting WHERE sitting = old.sitting);
END;

CREATE TRIGGER to_pair_look_added AFTER INSERT ON look BEGIN
    INSERT OR IGNORE INTO look_to_pair VALUES (new.id);
END;
CREATE TRIGGER to_pair_look_changed AFTER UPDATE ON look BEGIN
    INSERT OR IGNORE INTO look_to_pair VALUES (new.id);
END;
CREATE TRIGGER to_pair_look_sitting_added AFTER INSERT ON look_sitting BEGIN
    INSERT OR IGNORE INTO look_to_pair VALUES (new.look);
END;
CREATE TRIGGER to_pair_look_sitting_removed AFTER DELETE ON look_sitting BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look WHERE id = old.look;
END;
CREATE TRIGGER to_pair_sitting_changed AFTER UPDATE OF kind, starts ON sitting BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look
    WHERE id IN (SELECT look FROM look_sitting WHERE sitting = new.id)
    OR id IN (SELECT look FROM photo WHERE sitting = new.id);
END;
CREATE TRIGGER to_pair_wedding_changed AFTER UPDATE OF date ON wedding BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look WHERE wedding = new.id;
END;
CREATE TRIGGER to_pair_recipe_added AFTER INSERT ON recipe_revision BEGIN
    INSERT OR IGNORE INTO look_to_pair VALUES (new.look);
END;
CREATE TRIGGER to_pair_recipe_removed AFTER DELETE ON recipe_revision BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look WHERE id = old.look;
END;
CREATE TRIGGER to_pair_choice_changed AFTER UPDATE OF chosen_first, chosen_second, pinned ON pair
BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look WHERE id = new.look;
END;

-- Her list of look families.
CREATE TRIGGER to_pair_families_set AFTER INSERT ON setting WHEN new.name = 'look families' BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look;
END;
CREATE TRIGGER to_pair_families_cleared AFTER DELETE ON setting WHEN old.name = 'look families'
BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look;
END;
)sql"};

}  // namespace quarterturn
