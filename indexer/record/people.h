#pragma once
// Clients, weddings and appointments.

#include <optional>
#include <string>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/record/time.h"
#include "indexer/record/words.h"

namespace quarterturn {

struct Client {
    ClientId id;
    std::string name;
    std::string note;

    bool operator==(const Client&) const = default;
};

struct PartyMember {
    ClientId client;
    std::string role;  // bride, bridesmaid, mother, flower girl

    bool operator==(const PartyMember&) const = default;
};

struct Wedding {
    WeddingId id;
    std::string name;
    Date date{};
    std::string venue;
    std::string ready_by;  // "12:30", empty when not agreed
    std::vector<PartyMember> party;

    bool operator==(const Wedding&) const = default;
};

// Empty when the client is not of the party.
std::string role_in(const Wedding& wedding, ClientId client);

struct Sitting {
    SittingId id;
    ClientId client;
    std::optional<WeddingId> wedding;
    SittingKind kind = SittingKind::trial;
    LocalTime starts{};
    LocalTime ends{};
    std::string note;

    bool operator==(const Sitting&) const = default;
};

// A finished style on one client. A sitting works on one look or more, and a look may be worked on
// in several sittings (the trial, then the wedding day).
struct Look {
    LookId id;
    ClientId client;
    std::optional<WeddingId> wedding;
    std::string name;
    Worn worn = Worn::ceremony;
    std::vector<SittingId> sittings;

    bool operator==(const Look&) const = default;
};

}  // namespace quarterturn
