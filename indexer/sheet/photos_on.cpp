#include "indexer/sheet/photos_on.h"

#include <algorithm>

#include "indexer/looks/passing_on.h"

namespace quarterturn {
namespace {

std::optional<PhotoId> id_of(Library& library, const PhotoItem& item) {
    if (!item.sha256.empty()) return library.photos().with_sha256(item.sha256);
    for (const StoredFile& stored : library.photos().stored_files()) {
        if (library.folder() / stored.path == item.file) {
            return library.photos().with_sha256(stored.sha256);
        }
    }
    return std::nullopt;
}

}  // namespace

bool shows_photos(const Document& document) {
    return std::ranges::any_of(document.pages, [](const Page& page) {
        return std::ranges::any_of(page.items, [](const PageItem& item) {
            return std::holds_alternative<PhotoItem>(item);
        });
    });
}

std::vector<Photo> photos_on(Library& library, const Document& document) {
    std::vector<PhotoId> ids;
    for (const Page& page : document.pages) {
        for (const PageItem& item : page.items) {
            const auto* photo = std::get_if<PhotoItem>(&item);
            if (photo == nullptr) continue;
            const auto id = id_of(library, *photo);
            if (id && std::ranges::find(ids, *id) == ids.end()) ids.push_back(*id);
        }
    }
    return library.photos().these_also_in_bin(ids);
}

Document for_own_work(Library& library, Document document, Date on) {
    refuse_against_own_work(library, photos_on(library, document), on);
    return document;
}

}  // namespace quarterturn
