#pragma once

#include <optional>
#include <span>
#include <vector>

#include "indexer/record/consent.h"
#include "indexer/store/database.h"

namespace quarterturn {

// What clients said, only ever added to: the records refuse every change of what stands there.
// Lists are in the order it was recorded. All functions throw StoreError.
class ConsentTable {
  public:
    explicit ConsentTable(Database& database) : database_(&database) {}

    // The id and the papers are not looked at. Refuses what is not whole: a child's consent that
    // does not say how old she is or who gave it, words without a witness, a time that ends before
    // it begins, a day that has not come yet when it was recorded.
    ConsentId add(const ConsentEntry& entry);
    std::optional<ConsentEntry> find(ConsentId id);
    std::vector<ConsentEntry> of(ClientId client);
    std::vector<ConsentEntry> all();

    // A file that lies in the library already.
    ConsentPaperId add_paper(const ConsentPaper& paper);
    void attach(ConsentPaperId paper, std::span<const ConsentId> entries);
    std::vector<ConsentPaper> papers();

  private:
    Database* database_;
};

}  // namespace quarterturn
