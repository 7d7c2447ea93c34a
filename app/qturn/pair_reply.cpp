#include "app/qturn/pair_reply.h"

#include "app/qturn/say.h"
#include "app/qturn/to_json.h"

namespace quarterturn {
namespace {

std::string said_text(const Pair& pair) {
    std::vector<std::string> words;
    if (pair.choice.pinned) words.emplace_back("pinned");
    if (!pair.choice.pinned && (pair.choice.first || pair.choice.second)) {
        words.emplace_back("chosen");
    }
    if (pair.choice.refused) words.emplace_back("refused");
    if (pair.made.first_strays || pair.made.second_strays) words.emplace_back("tags changed");
    return joined(words);
}

std::string tags_text(const Tags& tags) {
    std::vector<std::string> words;
    if (tags.stage) words.emplace_back(word(*tags.stage));
    if (tags.angle) words.emplace_back(word(*tags.angle));
    return words.empty() ? "nothing" : joined(words);
}

nlohmann::json side_json(const Photo& photo, bool chosen, bool strays) {
    nlohmann::json side = short_json(photo);
    side["taken"] = photo.moment ? nlohmann::json(iso_text(*photo.moment)) : nlohmann::json();
    side["mirrored"] = photo.tags.mirrored;
    side["chosen"] = chosen;
    side["tags_changed"] = strays;
    return side;
}

}  // namespace

std::map<PhotoId, Photo> photos_of(Library& library, const std::vector<Pair>& pairs) {
    std::vector<PhotoId> ids;
    for (const Pair& pair : pairs) ids.insert(ids.end(), {pair.made.first, pair.made.second});
    std::map<PhotoId, Photo> photos;
    for (Photo& photo : library.photos().these(ids)) photos[photo.id] = std::move(photo);
    return photos;
}

std::vector<std::string> pair_cells(const Pair& pair, const Names& names,
                                    const std::map<PhotoId, Photo>& photos,
                                    const std::map<LookId, Look>& looks) {
    const MadePair& made = pair.made;
    return {number_text(pair.id.value),
            names.look(made.place.look),
            names.client(looks.at(made.place.look).client),
            std::string(word(made.place.kind)),
            std::string(word(made.place.angle)),
            made.worn_on ? iso_text(*made.worn_on) : std::string(),
            photos.at(made.first).file.name,
            photos.at(made.second).file.name,
            said_text(pair)};
}

nlohmann::json to_json(const Pair& pair, const Names& names,
                       const std::map<PhotoId, Photo>& photos) {
    const MadePair& made = pair.made;
    const PairChoice& choice = pair.choice;
    return {
        {"id", pair.id.value},
        {"look", names.look(made.place.look)},
        {"look_id", made.place.look.value},
        {"kind", word(made.place.kind)},
        {"number", made.place.number},
        {"angle", word(made.place.angle)},
        {"worn_on", made.worn_on ? nlohmann::json(iso_text(*made.worn_on)) : nlohmann::json()},
        {"first", side_json(photos.at(made.first), choice.first == made.first, made.first_strays)},
        {"second",
         side_json(photos.at(made.second), choice.second == made.second, made.second_strays)},
        {"pinned", choice.pinned},
        {"refused", choice.refused}};
}

nlohmann::json to_json(const PairFilter& filter) {
    nlohmann::json values = nlohmann::json::object();
    for (const auto& [fact, wanted] : filter.values) values[std::string(word(fact))] = wanted;
    return {{"facts", values}, {"words", filter.words}, {"refused", filter.refused}};
}

std::vector<std::string> strays(const Pair& pair, const std::map<PhotoId, Photo>& photos) {
    std::vector<std::string> sentences;
    const auto tell = [&](PhotoId id, bool strays) {
        if (!strays) return;
        const Photo& photo = photos.at(id);
        sentences.push_back(photo.file.name + " is tagged " + tags_text(photo.tags) +
                            " now, but the pair is pinned with it. Let it go with: qturn pairs "
                            "pin " +
                            std::to_string(pair.id.value) + " --take-back");
    };
    tell(pair.made.first, pair.made.first_strays);
    tell(pair.made.second, pair.made.second_strays);
    return sentences;
}

}  // namespace quarterturn
