#pragma once

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/erasure.h"
#include "indexer/record/people.h"
#include "indexer/store/database.h"
#include "indexer/store/erasure_sought.h"

namespace quarterturn {

struct ToErase {
    Client client;
    std::optional<LookId> only;      // this look of hers alone, with its photos; else all of her
    std::vector<PhotoId> photos;     // that go with her
    std::vector<std::string> files;  // to be removed, relative to the library's folder
    // Whether her name is taken out of the texts of others too: not while another client has it.
    bool name_is_hers_alone = true;
    Date on{};
    ErasureSought sought{};
};

struct UnfinishedErasure {
    Erasure erasure;
    std::optional<ErasureSought> sought;  // nothing once it was searched for
};

struct FoundLeft {
    ErasureId erasure;
    SaidOfFile said;  // as in ErasureLeft
};

// Erasure in the records. All functions throw StoreError.
class ErasureTable {
  public:
    explicit ErasureTable(Database& database) : database_(&database) {}

    // One transaction: the client, her photos, looks, sittings, consents and what hangs on them
    // are gone, a wedding too of which nobody else is; her name is taken out of the texts of others
    // (own_texts.h). Where one look alone is to go: it, its photos, recipe, sign-offs and what
    // hangs on them. The history of changes is empty, the search index made anew. What went out of
    // hers and was not taken down stays in the ledger, without the photo's name and checksum. The
    // photos of others that show her count as showing somebody who is no client. The files stand on
    // the list.
    ErasureId erase(const ToErase& what);
    // Those that go with her, in the order of dates.
    std::vector<WeddingId> weddings_of_nobody_else(ClientId client);
    // Calls `look` on the records as they would be then, but for her name in the texts of others,
    // and takes all of it back.
    void look_after(const ToErase& what, const std::function<void()>& look);
    // For a library that is to hold one client alone: all of these go in one transaction, and with
    // them every photo but hers, what went out of others, selections that are empty then, and the
    // facts of erasures. No files are listed.
    void leave_one(std::span<const ToErase> others, std::span<const PhotoId> hers);

    // One transaction: these photos of the bin are gone with what hangs on them; what they were
    // undone by, too. Their lines in the ledger and in seals of the past stay. The files stand on
    // the list.
    void let_go(std::span<const PhotoId> photos, const std::vector<std::string>& files);

    std::vector<std::string> files_left();
    void file_is_gone(std::string_view path);
    bool any_unfinished();
    std::vector<UnfinishedErasure> unfinished();  // the oldest first
    // When no file is left, and what is sought was searched for: writes the records anew, so that
    // no free page and no journal holds what was there, and keeps what was found in place of what
    // was sought. Throws StoreError when another program reads the library meanwhile.
    void finish(const std::vector<FoundLeft>& found);

    std::vector<ErasureLeft> left();  // of the oldest erasure first
    // She was told all of it: what is about no file goes.
    void note_told();
    void forget_left(std::int64_t id);
    void forget_all_left();

    std::vector<Erasure> all();  // the oldest first

  private:
    Database* database_;
};

}  // namespace quarterturn
