#include "indexer/looks/client_record.h"

#include <algorithm>
#include <set>

#include "indexer/looks/whole_bag.h"
#include "indexer/rules/consent.h"

namespace quarterturn {
namespace {

bool in_party(const Wedding& wedding, ClientId client) {
    return std::any_of(wedding.party.begin(), wedding.party.end(),
                       [&](const PartyMember& member) { return member.client == client; });
}

std::vector<Wedding> weddings_of(Library& library, const ClientRecord& record) {
    std::set<WeddingId> named;
    for (const Sitting& sitting : record.sittings) {
        if (sitting.wedding) named.insert(*sitting.wedding);
    }
    for (const LookRecord& each : record.looks) {
        if (each.look.wedding) named.insert(*each.look.wedding);
    }
    std::vector<Wedding> weddings = library.weddings().all();
    std::erase_if(weddings, [&](const Wedding& wedding) {
        return !named.contains(wedding.id) && !in_party(wedding, record.client.id);
    });
    return weddings;
}

std::vector<Photo> photos_of(Library& library, ClientId client) {
    std::vector<PhotoId> ids;
    for (const FoundPhoto& found : library.search().find({.client = client})) {
        ids.push_back(found.id);
    }
    return library.photos().these(ids);
}

std::vector<Exported> exports_under(Library& library, const std::vector<ConsentEntry>& consents) {
    std::vector<Exported> exports = library.ledger().all();
    std::erase_if(exports, [&](const Exported& exported) {
        return std::ranges::none_of(exported.under, [&](ConsentId id) {
            return std::ranges::find(consents, id, &ConsentEntry::id) != consents.end();
        });
    });
    return exports;
}

}  // namespace

ClientRecord client_record(Library& library, ClientId id) {
    const auto client = library.clients().find(id);
    if (!client) {
        throw StoreError("There is no client number " + std::to_string(id.value) +
                         ": look her up in the list of clients.");
    }
    ClientRecord record{*client, {}, library.sittings().of_client(id), {}, {}};
    for (const Look& look : library.looks().of_client(id)) {
        record.looks.push_back({look, library.recipes().revisions(look.id),
                                library.recipes().draft(look.id),
                                library.sign_offs().all(look.id)});
    }
    record.weddings = weddings_of(library, record);
    record.photos = photos_of(library, id);
    record.consents = library.consents().of(id);
    record.exports = exports_under(library, record.consents);
    return record;
}

std::vector<std::string> consent_lines(const ClientRecord& record) {
    std::vector<std::string> lines;
    for (const ConsentEntry& entry : record.consents) lines.push_back(said_words(entry));
    if (lines.empty()) lines.emplace_back("No consent recorded.");
    for (const Exported& exported : record.exports) {
        std::string line = "Went out on " + iso_text(date_of(exported.at)) + ", " +
                           std::string(word(exported.use)) + ": " + exported.photo_name;
        if (exported.taken_down) line += ", taken down on " + iso_text(exported.taken_down->on);
        lines.push_back(std::move(line));
    }
    return lines;
}

void export_client(Library& library, const ClientRecord& record, std::span<const std::byte> pdf,
                   const Path& folder, LocalTime now) {
    write_whole_bag(library.disk(), folder, [&](BagWriter& bag) {
        bag.add("record.pdf", pdf);
        bag.add("client.json", client_record_json(record));
        for (const CsvFile& file : client_record_csv(record)) bag.add(file.name, file.text);
        bag.finish({{"External-Description", "Record of " + record.client.name},
                    {"Bagging-Date", iso_text(date_of(now))},
                    {"Bag-Software-Agent", "Quarterturn"}});
    });
}

}  // namespace quarterturn
