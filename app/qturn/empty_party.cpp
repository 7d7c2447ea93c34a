#include "app/qturn/empty_party.h"

namespace quarterturn {

void tell_empty_party(Reply& reply, const Wedding& wedding) {
    if (!wedding.party.empty()) return;
    reply.lines.push_back("Nobody is in the party of " + wedding.name +
                          " yet. Add its clients with: qturn wedding change " +
                          std::to_string(wedding.id.value) + " --party CLIENT=ROLE");
    reply.outcome = Outcome::needs_attention;
}

}  // namespace quarterturn
