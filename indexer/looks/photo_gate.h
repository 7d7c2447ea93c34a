#pragma once
// The gate, asked about photos of the library.

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/record/hair_only.h"
#include "indexer/rules/gate.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct WayOut {
    Verdict verdict;
    std::optional<HairOnly> hair_only;  // the picture that goes in place of the photo
};

// The records that the gate needs, read once. Throws StoreError.
class PhotoGate {
  public:
    explicit PhotoGate(Library& library);
    // For thousands of photos: reads too whose looks and sittings there are, with a fixed number of
    // statements.
    static PhotoGate for_many(Library& library);
    // For these alone; no other may be asked about.
    static PhotoGate for_these(Library& library, std::span<const Photo> photos);

    // Who is shown: the clients of the photo's look and sitting, and those named beside them.
    PhotoToShow to_show(const Photo& photo);
    PhotoToShow to_show(const Photo& photo, const Seen& seen, std::optional<Credit> credit);
    // The photo as it is.
    Verdict may_go(const Photo& photo, Use use, Date on);
    // The photo as it is; or, where it stays because of a face alone, the picture without it that
    // she has confirmed.
    WayOut way_out(const Photo& photo, Use use, Date on);
    // A picture of the photo that leaves the face out.
    Verdict may_go_hair_only(const Photo& photo, Use use, Date on);

    std::vector<ClientId> clients_in(const Tags& tags);

  private:
    struct Ahead {
        std::map<LookId, ClientId> looks;
        std::map<SittingId, ClientId> sittings;
        std::map<ClientId, std::string> names;
    };

    struct NothingRead {};
    PhotoGate(Library& library, NothingRead) : library_(library) {}

    void keep(std::vector<ConsentEntry> consents, const std::vector<Wedding>& weddings);
    std::optional<ClientId> client_of(LookId look);
    std::optional<ClientId> client_of(SittingId sitting);
    std::optional<std::string> name_of(ClientId client);
    ShownPerson person(ClientId client);

    Library& library_;
    std::optional<Ahead> ahead_;
    std::map<ClientId, std::vector<ConsentEntry>> consents_;
    std::map<ClientId, std::string> childs_roles_;
};

}  // namespace quarterturn
