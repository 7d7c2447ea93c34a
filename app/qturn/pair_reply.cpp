#include "app/qturn/pair_reply.h"

#include "app/qturn/photo_list.h"
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
    for (const SideNote note : {pair.made.first_note, pair.made.second_note}) {
        if (note != SideNote::none) words.emplace_back(word(note));
    }
    return joined(words);
}

std::string tags_text(const Tags& tags) {
    std::vector<std::string> words;
    if (tags.stage) words.emplace_back(word(*tags.stage));
    if (tags.angle) words.emplace_back(word(*tags.angle));
    return words.empty() ? "nothing" : joined(words);
}

// `side`: "first" or "second".
std::string note_sentence(PairId pair, const Photo& photo, SideNote note, const std::string& side) {
    const std::string number = std::to_string(pair.value);
    const std::string& name = photo.file.name;
    const std::string choose_again = "qturn pairs choose " + number + " --" + side + " best";
    switch (note) {
        case SideNote::tagged_otherwise:
            return name + " is tagged " + tags_text(photo.tags) +
                   " now, but the pair is pinned with it. Let it go with: qturn pairs pin " +
                   number + " --take-back";
        case SideNote::not_usable:
            return name + " is not usable (" + flaws_text(photo) +
                   "), but you chose it. Take the best one instead with: " + choose_again;
        case SideNote::set_aside:
            return "The " + side + " photo that you chose is tagged otherwise now: " + name +
                   " stands instead. Be content with it: " + choose_again;
        case SideNote::removed:
            return "The " + side + " photo that you chose is no longer in the library: " + name +
                   " stands instead. Be content with it: " + choose_again;
        case SideNote::none:
            return {};
    }
    return {};
}

nlohmann::json side_json(const Photo& photo, bool chosen, SideNote note) {
    nlohmann::json side = short_json(photo);
    side["taken"] = photo.moment ? nlohmann::json(iso_text(*photo.moment)) : nlohmann::json();
    side["mirrored"] = photo.tags.mirrored;
    side["chosen"] = chosen;
    side["note"] = note == SideNote::none ? nlohmann::json() : nlohmann::json(word(note));
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
        {"first", side_json(photos.at(made.first), choice.first == made.first, made.first_note)},
        {"second",
         side_json(photos.at(made.second), choice.second == made.second, made.second_note)},
        {"pinned", choice.pinned},
        {"refused", choice.refused}};
}

nlohmann::json to_json(const PairFilter& filter) {
    nlohmann::json values = nlohmann::json::object();
    for (const auto& [fact, wanted] : filter.values) values[std::string(word(fact))] = wanted;
    return {{"facts", values}, {"words", filter.words}, {"refused", filter.refused}};
}

std::vector<std::string> side_notes(const Pair& pair, const std::map<PhotoId, Photo>& photos) {
    std::vector<std::string> sentences;
    const auto tell = [&](PhotoId id, SideNote note, const char* side) {
        if (note != SideNote::none) {
            sentences.push_back(note_sentence(pair.id, photos.at(id), note, side));
        }
    };
    tell(pair.made.first, pair.made.first_note, "first");
    tell(pair.made.second, pair.made.second_note, "second");
    return sentences;
}

}  // namespace quarterturn
