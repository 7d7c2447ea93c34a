#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

// Times are minutes after midnight.
const Migration wedding_mornings{R"sql(
CREATE TABLE morning_stylist (
    wedding INTEGER NOT NULL REFERENCES wedding ON DELETE CASCADE,
    stylist INTEGER NOT NULL,
    arrives INTEGER NOT NULL,
    PRIMARY KEY (wedding, stylist)
) STRICT, WITHOUT ROWID;

CREATE TABLE morning_break (
    wedding INTEGER NOT NULL,
    stylist INTEGER NOT NULL,
    place INTEGER NOT NULL,
    begins INTEGER NOT NULL,
    ends INTEGER NOT NULL,
    PRIMARY KEY (wedding, stylist, place),
    FOREIGN KEY (wedding, stylist) REFERENCES morning_stylist ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE morning_wish (
    wedding INTEGER NOT NULL REFERENCES wedding ON DELETE CASCADE,
    client INTEGER NOT NULL REFERENCES client ON DELETE CASCADE,
    ready_by INTEGER,
    arrives INTEGER,
    first INTEGER NOT NULL,
    last INTEGER NOT NULL,
    before INTEGER,
    cooling INTEGER,
    may_be_left INTEGER,
    after INTEGER,
    PRIMARY KEY (wedding, client)
) STRICT, WITHOUT ROWID;
CREATE INDEX morning_wish_client ON morning_wish (client);

-- The plan as it was changed by hand.
CREATE TABLE morning_seat (
    wedding INTEGER NOT NULL REFERENCES wedding ON DELETE CASCADE,
    client INTEGER NOT NULL REFERENCES client ON DELETE CASCADE,
    part INTEGER NOT NULL,
    stylist INTEGER NOT NULL,
    begins INTEGER NOT NULL,
    PRIMARY KEY (wedding, client, part)
) STRICT, WITHOUT ROWID;
CREATE INDEX morning_seat_client ON morning_seat (client);
)sql"};

}  // namespace quarterturn
