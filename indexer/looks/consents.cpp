#include "indexer/looks/consents.h"

#include <algorithm>
#include <limits>
#include <set>

#include "indexer/disk/checksum.h"
#include "indexer/disk/write_once.h"
#include "indexer/store/hair_only_table.h"
#include "indexer/store/some_records.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_paper_bytes = std::int64_t{64} << 20;

void add_once(std::vector<ClientId>& clients, ClientId client) {
    if (std::ranges::find(clients, client) == clients.end()) clients.push_back(client);
}

template <class Key, class Value>
std::optional<Value> value_in(const std::map<Key, Value>& values, Key key) {
    const auto found = values.find(key);
    return found == values.end() ? std::nullopt : std::optional(found->second);
}

Path folder_of_papers(ClientId client) {
    return Path("consents") / ("client " + std::to_string(client.value));
}

// Written whole by an attempt that was interrupted before the records knew of it.
bool is_left(Library& library, const Path& place, std::string_view sum) {
    const auto papers = library.consents().papers();
    const bool recorded = std::ranges::any_of(
        papers, [&](const ConsentPaper& paper) { return paper.path == place.generic_string(); });
    return !recorded && sha256_of_file(library.disk(), library.folder() / place) == sum;
}

// "form.pdf", "form (2).pdf" …: free, or with what was left of the same paper.
Path place_of_paper(Library& library, const Path& folder, const Path& name, std::string_view sum) {
    Path place = folder / name;
    for (int number = 2;
         library.disk().exists(library.folder() / place) && !is_left(library, place, sum);
         ++number) {
        Path numbered = name.stem();
        numbered += " (" + std::to_string(number) + ")";
        numbered += name.extension();
        place = folder / numbered;
    }
    return place;
}

ClientId client_of(Library& library, std::span<const ConsentId> entries) {
    std::optional<ClientId> client;
    for (const ConsentId id : entries) {
        const auto entry = library.consents().find(id);
        if (!entry) {
            throw StoreError("There is no entry " + std::to_string(id.value) +
                             " in the consents: look its number up in the history.");
        }
        if (client && *client != entry->client) {
            throw StoreError("The entries belong to several clients: attach the file for each.");
        }
        client = entry->client;
    }
    if (!client) throw StoreError("No entry was named that the file belongs to.");
    return *client;
}

Bytes read_paper(Library& library, const Path& file) {
    Bytes bytes = library.disk().read(file, most_paper_bytes);
    if (bytes.empty()) {
        throw StoreError(file.string() + " is empty: choose the scan or the message itself.");
    }
    return bytes;
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

namespace {

void refuse_own_guardian(Library& library, const ConsentEntry& entry) {
    if (entry.giver != ConsentGiver::guardian) return;
    const auto client = library.clients().find(entry.client);
    if (!client || folded(client->name) != folded(entry.guardian)) return;
    throw StoreError(
        "A child cannot be her own guardian: name the parent or guardian who allows it.");
}

// By her age as the entry itself tells it, or as it was told before.
void refuse_child_alone(Library& library, const ConsentEntry& entry) {
    if (entry.said != ConsentSaid::granted || entry.giver == ConsentGiver::guardian) return;
    auto entries = library.consents().of(entry.client);
    entries.push_back(entry);
    entries.back().id = ConsentId{std::numeric_limits<std::int64_t>::max()};  // said last
    if (!is_child_on(entries, entry.said_on)) return;
    const auto client = library.clients().find(entry.client);
    const auto age = age_on(entries, entry.said_on);
    throw StoreError((client ? client->name : "She") + " is " +
                     (age && is_child(*age) ? std::string(word(*age)) : "a child") +
                     ": a parent or guardian decides; say who (--guardian).");
}

void record_one(Library& library, const SaidOfUses& said, std::vector<ConsentEntry>& recorded) {
    refuse_own_guardian(library, said.entry);
    refuse_child_alone(library, said.entry);
    for (const Use use : said.uses) {
        ConsentEntry each = said.entry;
        each.use = use;
        each.id = library.consents().add(each);
        recorded.push_back(std::move(each));
    }
}

std::vector<ConsentId> ids_in(const std::vector<ConsentEntry>& entries) {
    std::vector<ConsentId> ids;
    for (const ConsentEntry& entry : entries) ids.push_back(entry.id);
    return ids;
}

// Within a transaction.
ConsentPaper add_paper(Library& library, const Path& file, std::span<const ConsentId> entries,
                       LocalTime now) {
    const ClientId client = client_of(library, entries);
    const Bytes bytes = read_paper(library, file);
    const Path folder = folder_of_papers(client);
    library.disk().make_folders(library.folder() / folder);
    ConsentPaper paper;
    paper.name = file.filename().string();
    paper.sha256 = sha256(bytes);
    const Path place = place_of_paper(library, folder, file.filename(), paper.sha256);
    const bool left = library.disk().exists(library.folder() / place);
    paper.path = place.generic_string();
    paper.bytes = static_cast<std::int64_t>(bytes.size());
    paper.added_at = now;
    paper.id = library.consents().add_paper(paper);
    library.consents().attach(paper.id, entries);
    if (!left) write_once(library.disk(), library.folder() / place, bytes);
    return paper;
}

std::string what_she_allows(Library& library, ClientId id) {
    const auto client = library.clients().find(id);
    return "what " + (client ? client->name : "she") + " allows";
}

}  // namespace

std::vector<ConsentEntry> record_said(Library& library, const std::vector<SaidOfUses>& all,
                                      const Path& paper) {
    Transaction together(library.database());
    std::vector<ConsentEntry> recorded;
    for (const SaidOfUses& said : all) record_one(library, said, recorded);
    if (recorded.empty()) return recorded;
    if (!paper.empty()) {
        const ConsentPaper attached =
            add_paper(library, paper, ids_in(recorded), all.back().entry.recorded_at);
        for (ConsentEntry& each : recorded) each.papers.push_back(attached);
    }
    library.history().stop_at("recorded " + what_she_allows(library, recorded.back().client));
    together.commit();
    return recorded;
}

std::vector<ConsentEntry> record_consent(Library& library, const ConsentEntry& entry,
                                         std::span<const Use> uses) {
    return record_said(library, {{entry, {uses.begin(), uses.end()}}}, {});
}

// A day that every entry was said before.
constexpr Date end_of_time{std::chrono::year{9999}, std::chrono::December, std::chrono::day{31}};

std::vector<Use> uses_to_withdraw(Library& library, ClientId client) {
    const auto entries = library.consents().of(client);
    std::vector<Use> uses;
    for (const Use use : all_uses) {
        const StandingConsent consent = consent_on(entries, use, end_of_time);
        if (consent.entry != nullptr && consent.entry->said == ConsentSaid::granted) {
            uses.push_back(use);
        }
    }
    return uses;
}

ConsentPaper attach_paper(Library& library, const Path& file, std::span<const ConsentId> entries,
                          LocalTime now) {
    Transaction both(library.database());
    ConsentPaper paper = add_paper(library, file, entries, now);
    library.history().stop_at("attached a paper to " +
                              what_she_allows(library, client_of(library, entries)));
    both.commit();
    return paper;
}

std::string problem_with_paper(Library& library, const ConsentPaper& paper) {
    const Path file = library.folder() / paper.path;
    const std::string next = ": put it back from a backup, or attach the paper again.";
    if (!library.disk().exists(file)) return file.string() + " is not there any longer" + next;
    if (holds(library.disk(), file, paper.bytes, paper.sha256)) return {};
    return file.string() + " is no longer the file that was attached" + next;
}

std::vector<std::string> problems_with_papers(Library& library,
                                              std::span<const ConsentId> entries) {
    std::vector<std::string> problems;
    for (const ConsentId id : entries) {
        const auto entry = library.consents().find(id);
        if (!entry) continue;
        for (const ConsentPaper& paper : entry->papers) {
            std::string problem = problem_with_paper(library, paper);
            const bool told = std::ranges::find(problems, problem) != problems.end();
            if (!problem.empty() && !told) problems.push_back(std::move(problem));
        }
    }
    return problems;
}

}  // namespace quarterturn
