#include "ui/recipe/recipe_aids.h"

#include "ui/shell/session.h"
#include "ui/widgets/words.h"

namespace quarterturn {

void RecipeAids::look_at(const Look& look) {
    Library& library = session_.library();
    look_ = look;
    words_.emplace(library);
    std::vector<Photo> photos = library.photos().around_look(look);
    std::erase_if(
        photos, [&](const Photo& photo) { return photo.tags.look && *photo.tags.look != look.id; });
    if (photos == photos_) return;
    photos_ = std::move(photos);
    emit photos_changed();
}

QStringList RecipeAids::words_beginning(WordsFor what, const QString& begun) const {
    QStringList found;
    if (!words_) return found;
    for (const std::string& words : words_->beginning(what, to_utf8(begun))) {
        if (from_utf8(words) != begun) found << from_utf8(words);
    }
    return found;
}

std::optional<Photo> RecipeAids::photo(const std::string& sha256) const {
    const auto id = session_.library().photos().with_sha256(sha256);
    return id ? session_.library().photos().find(*id) : std::nullopt;
}

}  // namespace quarterturn
