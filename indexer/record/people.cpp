#include "indexer/record/people.h"

namespace quarterturn {

std::string role_in(const Wedding& wedding, ClientId client) {
    for (const PartyMember& member : wedding.party) {
        if (member.client == client) return member.role;
    }
    return {};
}

}  // namespace quarterturn
