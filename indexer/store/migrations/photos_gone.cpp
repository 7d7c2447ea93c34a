#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration photos_gone{R"sql(
-- How many photos of an action have gone for good since; what it changed of them went with them.
ALTER TABLE action ADD COLUMN photos_gone INTEGER NOT NULL DEFAULT 0;

CREATE TRIGGER action_photo_gone BEFORE DELETE ON photo BEGIN
    UPDATE action SET photos_gone = photos_gone + 1 WHERE id IN
    (SELECT action FROM tag_change WHERE photo = old.id
     UNION SELECT action FROM bin_change WHERE photo = old.id);
END;
)sql"};

}  // namespace quarterturn
