#pragma once
// Everything that is known of one client, for her own eyes or another program.

#include <map>
#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

struct LookRecord {
    Look look;
    std::vector<RecipeRevision> recipes;  // oldest first
    std::optional<RecipeDraft> draft;     // what is written since and not saved yet
    std::vector<SignOff> sign_offs;       // oldest first
};

struct ClientRecord {
    Client client;
    std::vector<Wedding> weddings;  // of whose party she is, or that her sittings and looks are for
    std::vector<Sitting> sittings;
    std::vector<LookRecord> looks;
    std::vector<Photo> photos;  // of her sittings and looks, and those that show her besides
    std::vector<ConsentEntry> consents = {};  // all that she ever said, oldest first
    std::vector<Exported> exports = {};       // what went out under it
    // The photos that are not hers to have, and why: "shows other clients too".
    std::map<PhotoId, std::string> kept_here = {};
    std::vector<Inspiration> brought = {};    // pictures that she brought, somebody else's work
};

// Throws StoreError when there is no such client.
ClientRecord client_record(Library& library, ClientId client);

// One object; app/qturn/json.md describes its fields.
std::string client_record_json(const ClientRecord& record);

// Tables of comma-separated values (RFC 4180), UTF-8, with the fields' names in their first line.
struct CsvFile {
    std::string name;  // "sittings.csv"
    std::string text;
};
std::vector<CsvFile> client_record_csv(const ClientRecord& record);

// What she has said of it, a line each, and what went out; one line that says so when nothing is
// recorded.
std::vector<std::string> consent_lines(const ClientRecord& record);

// Writes both, and beside them `pdf` as record.pdf, into a new folder that carries its own
// checksums (RFC 8493), with the photos that are hers to have and the papers of her consents. The
// PDF is drawn of sheet/client_sheet.h. Answers what is not in it and why, in sentences. Throws
// StoreError when something of that name is there already; DiskError when it cannot be written.
std::vector<std::string> export_client(Library& library, const ClientRecord& record,
                                       std::span<const std::byte> pdf, const Path& folder,
                                       LocalTime now);

}  // namespace quarterturn
