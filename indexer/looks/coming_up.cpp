#include "indexer/looks/coming_up.h"

#include <set>

#include "indexer/looks/look_standing.h"

namespace quarterturn {
namespace {

struct Records {
    std::map<ClientId, Client> clients;
    std::map<WeddingId, Wedding> weddings;
    std::map<std::pair<WeddingId, ClientId>, std::vector<Look>> looks_of_wedding;
    std::map<SittingId, std::vector<Look>> looks_of_sitting;
};

Records read_records(Library& library) {
    Records records;
    for (Client& client : library.clients().all()) {
        const ClientId id = client.id;
        records.clients[id] = std::move(client);
    }
    for (Wedding& wedding : library.weddings().all()) {
        const WeddingId id = wedding.id;
        records.weddings[id] = std::move(wedding);
    }
    for (const Look& look : library.looks().all()) {
        if (look.wedding) records.looks_of_wedding[{*look.wedding, look.client}].push_back(look);
        for (const SittingId sitting : look.sittings) {
            records.looks_of_sitting[sitting].push_back(look);
        }
    }
    return records;
}

std::vector<LookAhead> unjudged(const std::vector<Look>& looks) {
    std::vector<LookAhead> ahead;
    for (const Look& look : looks) ahead.push_back({look, std::nullopt});
    return ahead;
}

Occasion wedding_occasion(Records& records, const Wedding& wedding) {
    Occasion occasion{.date = wedding.date, .wedding = wedding, .is_wedding = true};
    for (const PartyMember& member : wedding.party) {
        occasion.clients.push_back(
            {records.clients[member.client], member.role,
             unjudged(records.looks_of_wedding[{wedding.id, member.client}])});
    }
    return occasion;
}

Occasion sitting_occasion(Records& records, const Sitting& sitting) {
    Occasion occasion{.date = date_of(sitting.starts), .sittings = {sitting}};
    if (sitting.wedding) occasion.wedding = records.weddings[*sitting.wedding];
    occasion.clients.push_back(
        {records.clients[sitting.client],
         occasion.wedding ? role_in(*occasion.wedding, sitting.client) : std::string{},
         unjudged(records.looks_of_sitting[sitting.id])});
    return occasion;
}

bool belongs_to_day(const Sitting& sitting, const Wedding& wedding) {
    return sitting.wedding == wedding.id && sitting.kind == SittingKind::wedding_day &&
           date_of(sitting.starts) == wedding.date;
}

std::vector<Occasion> all_occasions(Library& library) {
    Records records = read_records(library);
    std::map<WeddingId, Occasion> weddings;
    for (const auto& [id, wedding] : records.weddings) {
        weddings[id] = wedding_occasion(records, wedding);
    }
    std::vector<Occasion> occasions;
    for (const Sitting& sitting : library.sittings().all()) {
        const auto day = sitting.wedding ? weddings.find(*sitting.wedding) : weddings.end();
        if (day != weddings.end() && belongs_to_day(sitting, *day->second.wedding)) {
            day->second.sittings.push_back(sitting);
        } else {
            occasions.push_back(sitting_occasion(records, sitting));
        }
    }
    for (auto& [id, occasion] : weddings) occasions.push_back(std::move(occasion));
    std::ranges::stable_sort(occasions, {}, [](const Occasion& occasion) {
        return std::pair(occasion.date, occasion.sittings.empty()
                                            ? LocalTime::max()
                                            : occasion.sittings.front().starts);
    });
    return occasions;
}

template <class Visit>
void for_each_look(std::span<Occasion> occasions, Visit visit) {
    for (Occasion& occasion : occasions) {
        for (ClientAhead& client : occasion.clients) {
            for (LookAhead& look : client.looks) visit(look);
        }
    }
}

}  // namespace

ComingUp coming_up(Library& library, Date today) {
    std::vector<Occasion> occasions = all_occasions(library);
    const auto first_ahead = std::ranges::lower_bound(occasions, today, {}, &Occasion::date);
    ComingUp answer;
    answer.past.assign(std::make_move_iterator(occasions.begin()),
                       std::make_move_iterator(first_ahead));
    answer.ahead.assign(std::make_move_iterator(first_ahead),
                        std::make_move_iterator(occasions.end()));
    std::ranges::reverse(answer.past);
    judge(library, answer.ahead);
    return answer;
}

void judge(Library& library, std::span<Occasion> occasions) {
    std::vector<Look> looks;
    std::set<LookId> seen;
    for_each_look(occasions, [&](const LookAhead& ahead) {
        if (seen.insert(ahead.look.id).second) looks.push_back(ahead.look);
    });
    auto standings = look_standings(library, looks);
    for_each_look(occasions, [&](LookAhead& ahead) { ahead.standing = standings[ahead.look.id]; });
}

}  // namespace quarterturn
