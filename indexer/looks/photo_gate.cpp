#include "indexer/looks/photo_gate.h"

#include <algorithm>
#include <limits>
#include <set>

#include "indexer/store/hair_only_table.h"
#include "indexer/store/some_records.h"

namespace quarterturn {
namespace {

void add_once(std::vector<ClientId>& clients, ClientId client) {
    if (std::ranges::find(clients, client) == clients.end()) clients.push_back(client);
}

template <class Key, class Value>
std::optional<Value> value_in(const std::map<Key, Value>& values, Key key) {
    const auto found = values.find(key);
    return found == values.end() ? std::nullopt : std::optional(found->second);
}

}  // namespace

PhotoGate::PhotoGate(Library& library) : library_(library) {
    keep(library.consents().all(), library.weddings().all());
}

void PhotoGate::keep(std::vector<ConsentEntry> consents, const std::vector<Wedding>& weddings) {
    for (ConsentEntry& entry : consents) consents_[entry.client].push_back(std::move(entry));
    for (const Wedding& wedding : weddings) {
        for (const PartyMember& member : wedding.party) {
            if (is_childs_role(member.role)) childs_roles_.emplace(member.client, member.role);
        }
    }
}

PhotoGate PhotoGate::for_many(Library& library) {
    PhotoGate gate(library);
    Ahead& ahead = gate.ahead_.emplace();
    for (const Look& look : library.looks().all()) ahead.looks.emplace(look.id, look.client);
    for (const Sitting& sitting : library.sittings().all()) {
        ahead.sittings.emplace(sitting.id, sitting.client);
    }
    for (const Client& client : library.clients().all()) {
        ahead.names.emplace(client.id, client.name);
    }
    return gate;
}

PhotoGate PhotoGate::for_these(Library& library, std::span<const Photo> photos) {
    std::set<LookId> looks;
    std::set<SittingId> sittings;
    std::set<ClientId> people;
    for (const Photo& photo : photos) {
        if (photo.tags.look) looks.insert(*photo.tags.look);
        if (photo.tags.sitting) sittings.insert(*photo.tags.sitting);
        people.insert(photo.tags.shown.begin(), photo.tags.shown.end());
    }
    SomeRecords records(library.database());
    PhotoGate gate(library, NothingRead{});
    Ahead& ahead = gate.ahead_.emplace();
    ahead.looks = records.clients_of(std::vector(looks.begin(), looks.end()));
    ahead.sittings = records.clients_of(std::vector(sittings.begin(), sittings.end()));
    for (const auto& [look, client] : ahead.looks) people.insert(client);
    for (const auto& [sitting, client] : ahead.sittings) people.insert(client);
    const std::vector<ClientId> clients(people.begin(), people.end());
    for (const Client& client : records.clients(clients))
        ahead.names.emplace(client.id, client.name);
    gate.keep(records.consents(clients), records.weddings_with(clients));
    return gate;
}

std::optional<ClientId> PhotoGate::client_of(LookId id) {
    if (ahead_) return value_in(ahead_->looks, id);
    const auto look = library_.looks().find(id);
    return look ? std::optional(look->client) : std::nullopt;
}

std::optional<ClientId> PhotoGate::client_of(SittingId id) {
    if (ahead_) return value_in(ahead_->sittings, id);
    const auto sitting = library_.sittings().find(id);
    return sitting ? std::optional(sitting->client) : std::nullopt;
}

std::optional<std::string> PhotoGate::name_of(ClientId id) {
    if (ahead_) return value_in(ahead_->names, id);
    const auto client = library_.clients().find(id);
    return client ? std::optional(client->name) : std::nullopt;
}

std::vector<ClientId> PhotoGate::clients_in(const Tags& tags) {
    std::vector<ClientId> clients;
    const auto of_look = tags.look ? client_of(*tags.look) : std::nullopt;
    const auto of_sitting = tags.sitting ? client_of(*tags.sitting) : std::nullopt;
    for (const auto client : {of_look, of_sitting}) {
        if (client) add_once(clients, *client);
    }
    for (const ClientId client : tags.shown) add_once(clients, client);
    return clients;
}

ShownPerson PhotoGate::person(ClientId client) {
    const auto role = childs_roles_.find(client);
    return {client, name_of(client).value_or("client " + std::to_string(client.value)),
            role == childs_roles_.end() ? "" : role->second, consents_[client]};
}

PhotoToShow PhotoGate::to_show(const Photo& photo) {
    return to_show(photo, library_.credits().seen(photo.id), library_.credits().of(photo.id));
}

PhotoToShow PhotoGate::to_show(const Photo& photo, const Seen& seen, std::optional<Credit> credit) {
    PhotoToShow shown;
    for (const ClientId client : clients_in(photo.tags)) shown.people.push_back(person(client));
    shown.face_shows = face_shows(photo, seen);
    shown.strangers = seen.strangers;
    shown.nobody = shows_nobody(photo, seen);
    shown.credit = std::move(credit);
    return shown;
}

Verdict PhotoGate::may_go(const Photo& photo, Use use, Date on) {
    return quarterturn::may_go(to_show(photo), use, on);
}

Verdict PhotoGate::may_go_hair_only(const Photo& photo, Use use, Date on) {
    PhotoToShow shown = to_show(photo);
    shown.face_shows = false;
    return quarterturn::may_go(shown, use, on);
}

WayOut PhotoGate::way_out(const Photo& photo, Use use, Date on) {
    WayOut whole{may_go(photo, use, on), std::nullopt};
    const bool face = std::ranges::any_of(whole.verdict.against, [](const Against& against) {
        return against.obstacle == Obstacle::face;
    });
    if (!face) return whole;
    const auto confirmed = HairOnlyTable(library_.database()).of(photo.id);
    if (!confirmed || confirmed->mirrored != photo.tags.mirrored) return whole;
    return {may_go_hair_only(photo, use, on), confirmed};
}

}  // namespace quarterturn
