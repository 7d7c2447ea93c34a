#pragma once
// The bin: photos that she put away. They stand in no list of PhotoTable, SearchTable or another
// table, but file and record stay whole. Photos go in and out through History, so that it can be
// undone, and go for good through ErasureTable.

#include <set>
#include <string>
#include <vector>

#include "indexer/record/photo.h"
#include "indexer/store/database.h"

namespace quarterturn {

struct BinnedPhoto {
    Photo photo;
    Date since{};
};

// All functions throw StoreError.
class BinTable {
  public:
    explicit BinTable(Database& database) : database_(&database) {}

    // Notes that the library is opened on that day, and answers which day is sure (days_opened.h):
    // a clock that is months ahead for a week empties no bin by it.
    Date note_opening(Date today);
    // That day, or a later one on which the library was opened: for a clock that is behind.
    Date not_before(Date today);

    std::vector<BinnedPhoto> all();  // those that lie there longest first
    std::vector<PhotoId> since_or_before(Date day);
    std::set<std::string> checksums();

  private:
    Database* database_;
};

}  // namespace quarterturn
