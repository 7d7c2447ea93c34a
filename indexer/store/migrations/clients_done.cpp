#include "indexer/store/migrations/migrations.h"

namespace quarterturn {

const Migration clients_done{R"sql(
-- Whose hair is done, as she said it where there are no steps to tick.
CREATE TABLE client_done (
    wedding INTEGER NOT NULL REFERENCES wedding ON DELETE CASCADE,
    client INTEGER NOT NULL REFERENCES client ON DELETE CASCADE,
    PRIMARY KEY (wedding, client)
) STRICT, WITHOUT ROWID;
CREATE INDEX client_done_client ON client_done (client);
)sql"};

}  // namespace quarterturn
