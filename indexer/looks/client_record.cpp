#include "indexer/looks/client_record.h"

#include <algorithm>
#include <set>

#include "indexer/looks/exported_record.h"
#include "indexer/looks/sealed_file.h"
#include "indexer/looks/whole_bag.h"
#include "indexer/rules/consent.h"
#include "indexer/store/some_records.h"

namespace quarterturn {
namespace {

std::vector<Wedding> weddings_of(Library& library, const ClientRecord& record) {
    std::set<WeddingId> named;
    for (const Sitting& sitting : record.sittings) {
        if (sitting.wedding) named.insert(*sitting.wedding);
    }
    for (const LookRecord& each : record.looks) {
        if (each.look.wedding) named.insert(*each.look.wedding);
    }
    SomeRecords records(library.database());
    for (const Wedding& wedding : records.weddings_with(std::array{record.client.id})) {
        named.insert(wedding.id);
    }
    return records.weddings(std::vector(named.begin(), named.end()));
}

std::vector<Photo> photos_of(Library& library, ClientId client) {
    std::vector<PhotoId> ids;
    for (const FoundPhoto& found : library.search().find({.client = client})) {
        ids.push_back(found.id);
    }
    return library.photos().these(ids);
}

std::vector<Exported> exports_under(Library& library, const std::vector<ConsentEntry>& consents) {
    std::vector<ConsentId> ids;
    for (const ConsentEntry& entry : consents) ids.push_back(entry.id);
    return SomeRecords(library.database()).exports_under(ids);
}

bool shows_other_clients(const Tags& tags, const ClientRecord& record) {
    const auto is_hers = [](const auto& mine, auto id, auto of) {
        return std::ranges::find(mine, id, of) != mine.end();
    };
    const auto look_id = [](const LookRecord& each) { return each.look.id; };
    if (tags.look && !is_hers(record.looks, *tags.look, look_id)) return true;
    if (tags.sitting && !is_hers(record.sittings, *tags.sitting, &Sitting::id)) return true;
    return std::ranges::any_of(tags.shown,
                               [&](ClientId shown) { return shown != record.client.id; });
}

std::map<PhotoId, std::string> photos_kept_here(Library& library, const ClientRecord& record) {
    std::map<PhotoId, std::string> kept;
    std::vector<PhotoId> photos;
    for (const Photo& photo : record.photos) photos.push_back(photo.id);
    SomeRecords records(library.database());
    auto seen = records.seen(photos);
    auto credits = records.credits(photos);
    for (const Photo& photo : record.photos) {
        if (shows_other_clients(photo.tags, record)) {
            kept[photo.id] = "shows other clients too";
        } else if (seen[photo.id].strangers) {
            kept[photo.id] = "shows somebody who is no client";
        } else if (credits[photo.id].whose == Whose::somebody_else) {
            kept[photo.id] = "is somebody else's";
        }
    }
    return kept;
}

// Her photos and papers as files, as far as they can be read and are hers to have.
class CopiesOfHers {
  public:
    CopiesOfHers(Library& library, const ClientRecord& record)
        : library_(library), record_(record) {}

    void add_to(BagWriter& bag) {
        for (const Photo& photo : record_.photos) add_photo(bag, photo);
        tell_of_bin();
        tell_of_brought();
        std::set<std::string> added;
        for (const ConsentEntry& entry : record_.consents) {
            for (const ConsentPaper& paper : entry.papers) {
                if (added.insert(paper.path).second) add_paper(bag, paper);
            }
        }
    }

    std::vector<std::string> left_out() const { return left_out_; }

  private:
    void add_photo(BagWriter& bag, const Photo& photo) {
        const auto kept = record_.kept_here.find(photo.id);
        if (kept != record_.kept_here.end()) {
            left_out_.push_back(photo.file.name + " " + kept->second +
                                ", and is not in the folder.");
            return;
        }
        const std::string name =
            std::to_string(photo.id.value) + " " + portable_name(photo.file.name);
        if (const auto bytes =
                read(photo.file.name, [&] { return read_unchanged(library_, photo); })) {
            bag.add("photos/" + name, *bytes);
        }
    }

    void tell_of_bin() {
        const PhotoSearch hers{.client = record_.client.id, .binned = true};
        const std::size_t photos = library_.search().find(hers).size();
        if (photos == 0) return;
        left_out_.push_back(
            std::to_string(photos) + (photos == 1 ? " photo of hers lies" : " photos of hers lie") +
            " in the bin, and " + (photos == 1 ? "is" : "are") +
            " not in the folder: take out what she is to have, and write it again.");
    }

    void tell_of_brought() {
        for (const Inspiration& picture : record_.brought) {
            left_out_.push_back(picture.name +
                                ", which she brought along, is somebody else's work, and is named "
                                "but not in the folder.");
        }
    }

    void add_paper(BagWriter& bag, const ConsentPaper& paper) {
        const std::string name = std::to_string(paper.id.value) + " " + portable_name(paper.name);
        const auto bytes = read(paper.name, [&] {
            return library_.disk().read(library_.folder() / paper.path, paper.bytes);
        });
        if (bytes) bag.add("consents/" + name, *bytes);
    }

    template <class Read>
    std::optional<Bytes> read(const std::string& name, Read how) try {
        return how();
    } catch (const std::runtime_error& error) {
        left_out_.push_back(name + " is not in the folder: " + error.what());
        return std::nullopt;
    }

    Library& library_;
    const ClientRecord& record_;
    std::vector<std::string> left_out_;
};

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
    record.kept_here = photos_kept_here(library, record);
    record.consents = library.consents().of(id);
    record.exports = exports_under(library, record.consents);
    record.brought = library.inspirations().of_client(id);
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

std::vector<std::string> export_client(Library& library, const ClientRecord& record,
                                       std::span<const std::byte> pdf, const Path& folder,
                                       LocalTime now) {
    CopiesOfHers copies(library, record);
    write_whole_bag(library.disk(), folder, [&](BagWriter& bag) {
        bag.add("record.pdf", pdf);
        bag.add("client.json", client_record_json(record));
        for (const CsvFile& file : client_record_csv(record)) bag.add(file.name, file.text);
        copies.add_to(bag);
        bag.finish({{"External-Description", "Record of " + record.client.name},
                    {"Bagging-Date", iso_text(date_of(now))},
                    {"Bag-Software-Agent", "Quarterturn"}});
    });
    return copies.left_out();
}

}  // namespace quarterturn
