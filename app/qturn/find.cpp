#include "app/qturn/find.h"

#include <set>

#include "app/qturn/names.h"
#include "app/qturn/reply.h"
#include "indexer/looks/pairs.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

// "12" or "#12"; nothing for any other text.
std::optional<std::int64_t> number_in(std::string_view text) {
    if (text.starts_with('#')) text.remove_prefix(1);
    if (text.empty() || text.size() > 18) return std::nullopt;
    if (text.find_first_not_of("0123456789") != std::string_view::npos) return std::nullopt;
    return std::stoll(std::string(text));
}

template <class Row, class Table>
std::vector<Row> by_number(Table table, const std::string& text) {
    using RowId = decltype(Row{}.id);
    const auto number = number_in(text);
    const auto row = number ? table.find(RowId{*number}) : std::nullopt;
    return row ? std::vector<Row>{*row} : std::vector<Row>{};
}

// A name that reads like a number is still a name when something is called so.
template <class Row, class Table>
std::vector<Row> by_name_or_number(Table table, const std::string& text) {
    auto rows = table.named(text);
    return rows.empty() ? by_number<Row>(table, text) : rows;
}

template <class Row, class Describe>
Row only(const std::vector<Row>& rows, const std::string& name, const std::string& what,
         const std::string& list_command, Describe describe) {
    if (rows.size() == 1) return rows.front();
    if (rows.empty()) {
        throw WrongUse("There is no " + what + " '" + name + "'. See: " + list_command);
    }
    std::string sentence = "'" + name + "' names more than one " + what + "; use the number:";
    for (const Row& row : rows)
        sentence += "\n  " + number_text(row.id.value) + "  " + describe(row);
    throw WrongUse(sentence);
}

std::string photo_line(const Photo& photo) {
    return photo.file.name + "  " +
           (photo.file.taken ? iso_text(photo.file.taken->local) : "time unknown") + "  " +
           photo.file.sha256.substr(0, 12);
}

bool is_sha256_start(const std::string& text) {
    return text.size() >= 6 &&
           text.find_first_not_of("0123456789abcdefABCDEF") == std::string::npos;
}

std::string lower_hex(std::string hex) {
    for (char& c : hex) c = static_cast<char>(c >= 'A' && c <= 'F' ? c - 'A' + 'a' : c);
    return hex;
}

std::vector<Photo> photos_called(Library& library, const std::string& name) {
    PhotoTable table = library.photos();
    auto photos = by_name_or_number<Photo>(table, name);
    if (!photos.empty() || !is_sha256_start(name)) return photos;
    return table.sha256_starting(lower_hex(name));
}

// What photos_called() asks the table of photos, asked of the bin.
class Bin {
  public:
    explicit Bin(Library& library) {
        for (BinnedPhoto& binned : library.bin().all()) photos_.push_back(std::move(binned.photo));
    }

    std::vector<Photo> called(const std::string& name) const {
        auto photos =
            that([&](const Photo& photo) { return folded(photo.file.name) == folded(name); });
        const auto number = number_in(name);
        if (photos.empty() && number) {
            photos = that([&](const Photo& photo) { return photo.id.value == *number; });
        }
        if (!photos.empty() || !is_sha256_start(name)) return photos;
        return that([hex = lower_hex(name)](const Photo& photo) {
            return photo.file.sha256.starts_with(hex);
        });
    }

  private:
    template <class Wanted>
    std::vector<Photo> that(Wanted wanted) const {
        std::vector<Photo> photos;
        std::ranges::copy_if(photos_, std::back_inserter(photos), wanted);
        return photos;
    }

    std::vector<Photo> photos_;
};

// "12-20" as numbers of photos that are there; empty when the text is no such range.
std::vector<Photo> photos_in_range(Library& library, const std::string& text) {
    const std::size_t dash = text.find('-');
    if (dash == std::string::npos) return {};
    const auto first = number_in(std::string_view(text).substr(0, dash));
    const auto last = number_in(std::string_view(text).substr(dash + 1));
    if (!first || !last) return {};
    std::vector<Photo> photos;
    bool ends_there = false;
    for (const Photo& photo : library.photos().all()) {
        if (photo.id.value < *first || photo.id.value > *last) continue;
        ends_there = ends_there || photo.id.value == *last;
        photos.push_back(photo);
    }
    if (!photos.empty() && !ends_there) {
        throw WrongUse("There is no photo with number " + std::to_string(*last) +
                       ", so the range " + text +
                       " may be a slip. List what is there with: "
                       "qturn photos");
    }
    return photos;
}

}  // namespace

Client find_client(Library& library, const std::string& name) {
    return only(by_name_or_number<Client>(library.clients(), name), name, "client",
                "qturn client list", [](const Client& client) { return client.name; });
}

Wedding find_wedding(Library& library, const std::string& name) {
    return only(
        by_name_or_number<Wedding>(library.weddings(), name), name, "wedding", "qturn wedding list",
        [](const Wedding& wedding) { return wedding.name + ", " + iso_text(wedding.date); });
}

Sitting find_sitting(Library& library, const std::string& number) {
    return only(by_number<Sitting>(library.sittings(), number), number, "sitting",
                "qturn sitting list", [](const Sitting&) { return std::string{}; });
}

Pair find_pair(Library& library, const std::string& number) {
    bring_pairs_up_to_date(library);
    return only(by_number<Pair>(library.pairs(), number), number, "pair", "qturn pairs list",
                [](const Pair&) { return std::string{}; });
}

Inspiration find_inspiration(Library& library, const std::string& number) {
    return only(by_number<Inspiration>(library.inspirations(), number), number, "kept picture",
                "qturn inspiration list", [](const Inspiration&) { return std::string{}; });
}

PhotoSelection find_selection(Library& library, const std::string& name) {
    if (auto selection = library.selections().find(name)) return std::move(*selection);
    throw WrongUse("There is no selection '" + name + "'. See: qturn portfolio selections");
}

Look find_look(Library& library, const std::string& name) {
    return only(
        by_name_or_number<Look>(library.looks(), name), name, "look", "qturn look list",
        [&](const Look& look) { return look.name + ", " + Names(library).client(look.client); });
}

Device find_device(Library& library, const std::string& name) {
    auto devices = by_number<Device>(library.devices(), name);
    for (const Device& device : library.devices().all()) {
        if (device_name(device) == name || device.model == name) devices.push_back(device);
    }
    return only(devices, name, "device", "qturn devices", [](const Device& device) {
        return device_name(device) + (device.serial.empty() ? "" : ", serial " + device.serial);
    });
}

std::vector<PhotoId> ids_of(const std::vector<Photo>& photos) {
    std::vector<PhotoId> ids;
    for (const Photo& photo : photos) ids.push_back(photo.id);
    return ids;
}

std::vector<Photo> find_photos(Library& library, const std::vector<std::string>& names) {
    std::vector<Photo> photos;
    std::set<PhotoId> known;
    for (const std::string& name : names) {
        auto found = photos_in_range(library, name);
        if (found.empty()) found = {find_photo(library, name)};
        for (const Photo& photo : found) {
            if (known.insert(photo.id).second) photos.push_back(photo);
        }
    }
    return photos;
}

Photo find_photo(Library& library, const std::string& name) {
    return only(photos_called(library, name), name, "photo", "qturn photos", photo_line);
}

std::vector<Photo> find_photos_in_bin(Library& library, const std::vector<std::string>& names) {
    const Bin bin(library);
    std::vector<Photo> photos;
    for (const std::string& name : names) {
        Photo photo =
            only(bin.called(name), name, "photo in the bin", "qturn bin list", photo_line);
        const bool known = std::ranges::find(photos, photo.id, &Photo::id) != photos.end();
        if (!known) photos.push_back(std::move(photo));
    }
    return photos;
}

}  // namespace quarterturn
