#include "indexer/looks/client_record.h"

#include <algorithm>
#include <set>

#include "indexer/looks/whole_bag.h"

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
    return record;
}

std::vector<std::string> consent_lines(const ClientRecord&) {
    return {"No consent recorded."};
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
