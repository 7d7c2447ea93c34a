// The triggers note each look whose pairs may be shown or found otherwise than before, whoever
// changed what, so that a wall of pairs that was read before reads no others again.

#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration pair_changes{R"sql(
-- Numbers only grow: what is above the last one that was read has changed since. `look` may be gone.
CREATE TABLE pair_change (
    number INTEGER PRIMARY KEY AUTOINCREMENT,
    look INTEGER NOT NULL
) STRICT;
CREATE INDEX pair_change_look ON pair_change (look);
-- Once for each look. No OR REPLACE: that of the statement at work would hold instead.
CREATE TRIGGER pair_change_once BEFORE INSERT ON pair_change BEGIN
    DELETE FROM pair_change WHERE look = new.look;
END;

CREATE VIEW photo_in_pair (photo, look) AS
SELECT first, look FROM pair UNION ALL SELECT second, look FROM pair;
CREATE VIEW sitting_in_pair (sitting, look) AS
SELECT photo.sitting, pair.look FROM photo
JOIN pair ON pair.first = photo.id OR pair.second = photo.id;
-- Whose consent is asked for the photos of its pairs.
CREATE VIEW client_in_pair (client, look) AS
SELECT client, id FROM look
UNION ALL
SELECT sitting.client, pair.look FROM sitting JOIN photo ON photo.sitting = sitting.id
JOIN pair ON pair.first = photo.id OR pair.second = photo.id
UNION ALL
SELECT look.client, pair.look FROM look JOIN photo ON photo.look = look.id
JOIN pair ON pair.first = photo.id OR pair.second = photo.id
UNION ALL
SELECT photo_shown.client, pair.look FROM photo_shown
JOIN pair ON pair.first = photo_shown.photo OR pair.second = photo_shown.photo;

CREATE TRIGGER pair_change_pair_added AFTER INSERT ON pair BEGIN
    INSERT INTO pair_change (look) VALUES (new.look);
END;
CREATE TRIGGER pair_change_pair_changed AFTER UPDATE ON pair BEGIN
    INSERT INTO pair_change (look) VALUES (new.look);
END;
CREATE TRIGGER pair_change_pair_removed AFTER DELETE ON pair BEGIN
    INSERT INTO pair_change (look) VALUES (old.look);
END;

CREATE TRIGGER pair_change_fact_added AFTER INSERT ON look_fact BEGIN
    INSERT INTO pair_change (look) VALUES (new.look);
END;
CREATE TRIGGER pair_change_fact_changed AFTER UPDATE ON look_fact BEGIN
    INSERT INTO pair_change (look) VALUES (new.look);
END;
CREATE TRIGGER pair_change_fact_removed AFTER DELETE ON look_fact BEGIN
    INSERT INTO pair_change (look) VALUES (old.look);
END;

-- A look that goes or stays takes what it told of her hair from her others.
CREATE TRIGGER pair_change_look_changed AFTER UPDATE OF client, worn ON look BEGIN
    INSERT INTO pair_change (look)
    SELECT look FROM client_in_pair WHERE client IN (old.client, new.client);
END;
CREATE TRIGGER pair_change_look_removed AFTER DELETE ON look BEGIN
    INSERT INTO pair_change (look) SELECT look FROM client_in_pair WHERE client = old.client;
END;
CREATE TRIGGER pair_change_look_sitting_added AFTER INSERT ON look_sitting BEGIN
    INSERT INTO pair_change (look) VALUES (new.look);
END;
CREATE TRIGGER pair_change_look_sitting_changed AFTER UPDATE ON look_sitting BEGIN
    INSERT INTO pair_change (look) VALUES (old.look), (new.look);
END;
CREATE TRIGGER pair_change_look_sitting_removed AFTER DELETE ON look_sitting BEGIN
    INSERT INTO pair_change (look) VALUES (old.look);
END;
CREATE TRIGGER pair_change_sitting_changed AFTER UPDATE OF client ON sitting BEGIN
    INSERT INTO pair_change (look) SELECT look FROM sitting_in_pair WHERE sitting = new.id;
END;

CREATE TRIGGER pair_change_photo AFTER UPDATE OF sha256, sitting, look, angle, mirrored, binned,
    frontal_face, profile_to_left, profile_to_right ON photo BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair WHERE photo = new.id;
END;
CREATE TRIGGER pair_change_shown_added AFTER INSERT ON photo_shown BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair WHERE photo = new.photo;
END;
CREATE TRIGGER pair_change_shown_changed AFTER UPDATE ON photo_shown BEGIN
    INSERT INTO pair_change (look)
    SELECT look FROM photo_in_pair WHERE photo IN (old.photo, new.photo);
END;
CREATE TRIGGER pair_change_shown_removed AFTER DELETE ON photo_shown BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair WHERE photo = old.photo;
END;
CREATE TRIGGER pair_change_seen_added AFTER INSERT ON photo_seen BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair WHERE photo = new.photo;
END;
CREATE TRIGGER pair_change_seen_changed AFTER UPDATE ON photo_seen BEGIN
    INSERT INTO pair_change (look)
    SELECT look FROM photo_in_pair WHERE photo IN (old.photo, new.photo);
END;
CREATE TRIGGER pair_change_seen_removed AFTER DELETE ON photo_seen BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair WHERE photo = old.photo;
END;
CREATE TRIGGER pair_change_credit_added AFTER INSERT ON photo_credit BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair WHERE photo = new.photo;
END;
CREATE TRIGGER pair_change_credit_changed AFTER UPDATE ON photo_credit BEGIN
    INSERT INTO pair_change (look)
    SELECT look FROM photo_in_pair WHERE photo IN (old.photo, new.photo);
END;
CREATE TRIGGER pair_change_credit_removed AFTER DELETE ON photo_credit BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair WHERE photo = old.photo;
END;
CREATE TRIGGER pair_change_licence_added AFTER INSERT ON photo_licence BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair WHERE photo = new.photo;
END;
CREATE TRIGGER pair_change_licence_changed AFTER UPDATE ON photo_licence BEGIN
    INSERT INTO pair_change (look)
    SELECT look FROM photo_in_pair WHERE photo IN (old.photo, new.photo);
END;
CREATE TRIGGER pair_change_licence_removed AFTER DELETE ON photo_licence BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair WHERE photo = old.photo;
END;

CREATE TRIGGER pair_change_picture_kept AFTER INSERT ON inspiration BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair
    WHERE photo IN (SELECT id FROM photo WHERE sha256 = new.sha256);
END;
CREATE TRIGGER pair_change_picture_changed AFTER UPDATE ON inspiration BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair
    WHERE photo IN (SELECT id FROM photo WHERE sha256 IN (old.sha256, new.sha256));
END;
CREATE TRIGGER pair_change_picture_removed AFTER DELETE ON inspiration BEGIN
    INSERT INTO pair_change (look) SELECT look FROM photo_in_pair
    WHERE photo IN (SELECT id FROM photo WHERE sha256 = old.sha256);
END;

CREATE TRIGGER pair_change_consent_added AFTER INSERT ON consent BEGIN
    INSERT INTO pair_change (look) SELECT look FROM client_in_pair WHERE client = new.client;
END;
CREATE TRIGGER pair_change_consent_changed AFTER UPDATE ON consent BEGIN
    INSERT INTO pair_change (look)
    SELECT look FROM client_in_pair WHERE client IN (old.client, new.client);
END;
CREATE TRIGGER pair_change_consent_removed AFTER DELETE ON consent BEGIN
    INSERT INTO pair_change (look) SELECT look FROM client_in_pair WHERE client = old.client;
END;
-- A child's role asks for a guardian.
CREATE TRIGGER pair_change_member_added AFTER INSERT ON party_member BEGIN
    INSERT INTO pair_change (look) SELECT look FROM client_in_pair WHERE client = new.client;
END;
CREATE TRIGGER pair_change_member_changed AFTER UPDATE ON party_member BEGIN
    INSERT INTO pair_change (look)
    SELECT look FROM client_in_pair WHERE client IN (old.client, new.client);
END;
CREATE TRIGGER pair_change_member_removed AFTER DELETE ON party_member BEGIN
    INSERT INTO pair_change (look) SELECT look FROM client_in_pair WHERE client = old.client;
END;
)sql"};

}  // namespace quarterturn
