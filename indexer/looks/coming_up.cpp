#include "indexer/looks/coming_up.h"

#include <set>
#include <span>

#include "indexer/looks/look_standing.h"

namespace quarterturn {
namespace {

struct Records {
    std::map<ClientId, Client> clients;
    std::map<WeddingId, Wedding> weddings;
    std::map<std::pair<WeddingId, ClientId>, std::vector<Look>> looks_of_wedding;
    std::map<SittingId, std::vector<Look>> looks_of_sitting;
};

// Of these sittings, and of the weddings on the same days.
Records read_records(SomeRecords& some, std::span<const Wedding> weddings,
                     std::span<const Sitting> sittings) {
    Records records;
    std::set<WeddingId> named;
    std::set<ClientId> clients;
    std::vector<WeddingId> on_these_days;
    std::vector<SittingId> sitting_ids;
    for (const Wedding& wedding : weddings) {
        named.insert(wedding.id);
        on_these_days.push_back(wedding.id);
        for (const PartyMember& member : wedding.party) clients.insert(member.client);
    }
    for (const Sitting& sitting : sittings) {
        if (sitting.wedding) named.insert(*sitting.wedding);
        clients.insert(sitting.client);
        sitting_ids.push_back(sitting.id);
    }
    for (Client& client : some.clients(std::vector(clients.begin(), clients.end()))) {
        const ClientId id = client.id;
        records.clients[id] = std::move(client);
    }
    for (Wedding& wedding : some.weddings(std::vector(named.begin(), named.end()))) {
        const WeddingId id = wedding.id;
        records.weddings[id] = std::move(wedding);
    }
    for (const Look& look : some.looks_of(on_these_days, sitting_ids)) {
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

std::vector<Occasion> occasions_on(Library& library, const DaysFrom& days) {
    SomeRecords some(library.database());
    const std::vector<Wedding> on_these_days = some.weddings_on(days);
    const std::vector<Sitting> sittings = some.sittings_on(days);
    Records records = read_records(some, on_these_days, sittings);
    std::map<WeddingId, Occasion> weddings;
    for (const Wedding& wedding : on_these_days) {
        weddings[wedding.id] = wedding_occasion(records, wedding);
    }
    std::vector<Occasion> occasions;
    for (const Sitting& sitting : sittings) {
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

std::vector<Occasion> occasions_ahead(Library& library, Date today) {
    return occasions_on(library, {.first = today});
}

std::vector<MonthCount> past_months(Library& library, Date today) {
    return SomeRecords(library.database()).months_before(today);
}

std::vector<Occasion> past_occasions(Library& library, const DaysFrom& days) {
    std::vector<Occasion> past = occasions_on(library, days);
    std::ranges::reverse(past);
    return past;
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
