#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration photo_bin{R"sql(
-- The day a photo was put into the bin; nothing while it does not lie in it.
ALTER TABLE photo ADD COLUMN binned TEXT;
CREATE INDEX photo_binned ON photo (binned) WHERE binned IS NOT NULL;

-- All photos, the newest first, without reading the photos themselves.
DROP INDEX photo_newest;
CREATE INDEX photo_newest ON photo (moment, id, sitting, binned);

CREATE TABLE bin_change (
    action INTEGER NOT NULL REFERENCES action ON DELETE CASCADE,
    photo INTEGER NOT NULL REFERENCES photo ON DELETE CASCADE,
    before TEXT,
    after TEXT,
    PRIMARY KEY (action, photo)
) STRICT, WITHOUT ROWID;
CREATE INDEX bin_change_photo ON bin_change (photo);

CREATE TRIGGER to_pair_photo_binned AFTER UPDATE OF binned ON photo BEGIN
    INSERT OR IGNORE INTO look_to_pair SELECT id FROM look WHERE id = new.look
    OR id IN (SELECT look FROM look_sitting WHERE sitting = new.sitting);
END;
)sql"};

}  // namespace quarterturn
