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

bool belongs(const Photo& photo, const ClientRecord& record) {
    const auto of_sitting = [&](const Sitting& sitting) {
        return photo.tags.sitting == sitting.id;
    };
    const auto of_look = [&](const LookRecord& each) { return photo.tags.look == each.look.id; };
    return std::ranges::any_of(record.sittings, of_sitting) ||
           std::ranges::any_of(record.looks, of_look) ||
           std::ranges::find(photo.tags.shown, record.client.id) != photo.tags.shown.end();
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
        record.looks.push_back(
            {look, library.recipes().revisions(look.id), library.sign_offs().all(look.id)});
    }
    record.weddings = weddings_of(library, record);
    record.photos = library.photos().all();
    std::erase_if(record.photos, [&](const Photo& photo) { return !belongs(photo, record); });
    return record;
}

void export_client(Library& library, ClientId client, const Path& folder, LocalTime now) {
    const ClientRecord record = client_record(library, client);
    write_whole_bag(library.disk(), folder, [&](BagWriter& bag) {
        bag.add("client.json", client_record_json(record));
        for (const CsvFile& file : client_record_csv(record)) bag.add(file.name, file.text);
        bag.finish({{"External-Description", "Record of " + record.client.name},
                    {"Bagging-Date", iso_text(date_of(now))},
                    {"Bag-Software-Agent", "Quarterturn"}});
    });
}

}  // namespace quarterturn
