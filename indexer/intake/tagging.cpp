#include "indexer/intake/tagging.h"

#include "indexer/intake/named_photos.h"
#include "indexer/intake/sort.h"

namespace quarterturn {
namespace {

Client client_of(Library& library, ClientId id) {
    const auto client = library.clients().find(id);
    if (!client) throw StoreError("There is no client number " + std::to_string(id.value) + ".");
    return *client;
}

Look look_of(Library& library, LookId id) {
    const auto look = library.looks().find(id);
    if (!look) throw StoreError("There is no look number " + std::to_string(id.value) + ".");
    return *look;
}

Sitting sitting_of(Library& library, SittingId id) {
    const auto sitting = library.sittings().find(id);
    if (!sitting) throw StoreError("There is no sitting number " + std::to_string(id.value) + ".");
    return *sitting;
}

template <class Value>
void put(const std::optional<Value>& wish, Value& tag) {
    if (wish) tag = *wish;
}

Tags wished(Tags tags, const TagWishes& wishes) {
    put(wishes.angle, tags.angle);
    put(wishes.stage, tags.stage);
    put(wishes.look, tags.look);
    put(wishes.mirrored, tags.mirrored);
    put(wishes.shown, tags.shown);
    put(wishes.note, tags.note);
    put(wishes.accepted_because, tags.accepted_because);
    return tags;
}

template <class Word>
std::string word_or(const std::optional<Word>& value, const std::string& none) {
    return value ? std::string{word(*value)} : none;
}

std::string names_text(Library& library, const std::vector<ClientId>& clients) {
    std::string text;
    for (const ClientId client : clients) {
        text += (text.empty() ? "" : " and ") + client_of(library, client).name;
    }
    return text.empty() ? "nobody else" : text;
}

// "left, after, look 'Low bun'"
std::string wishes_text(Library& library, const TagWishes& wishes) {
    std::string text;
    const auto add = [&](const std::string& part) { text += (text.empty() ? "" : ", ") + part; };
    if (wishes.angle) add(word_or(*wishes.angle, "no angle"));
    if (wishes.stage) add(word_or(*wishes.stage, "no stage"));
    if (wishes.look) {
        add(*wishes.look ? "look '" + look_of(library, **wishes.look).name + "'" : "no look");
    }
    if (wishes.mirrored) add(*wishes.mirrored ? "mirrored" : "not mirrored");
    if (wishes.shown) add("showing " + names_text(library, *wishes.shown));
    if (wishes.note) add(wishes.note->empty() ? "no note" : "with a note");
    if (wishes.accepted_because) {
        add(wishes.accepted_because->empty() ? "not to be used anyway" : "to be used anyway");
    }
    return text;
}

// The look's client sits in the chair, or is one of those who are seen too.
void refuse_look_of_another(Library& library, const Photo& photo, const Tags& tags) {
    if (!tags.look || !tags.sitting) return;
    const Look look = look_of(library, *tags.look);
    const ClientId seated = sitting_of(library, *tags.sitting).client;
    if (look.client == seated || std::ranges::find(tags.shown, look.client) != tags.shown.end()) {
        return;
    }
    const std::string name = client_of(library, look.client).name;
    throw StoreError(photo.file.name + " is of a sitting of " + client_of(library, seated).name +
                     ", and the look '" + look.name + "' is " + name + "'s: add " + name +
                     " to the clients shown if she is in the picture, or place the photo in a "
                     "sitting of hers.");
}

void drop_seated_from_shown(Library& library, Tags& tags) {
    if (tags.sitting) std::erase(tags.shown, sitting_of(library, *tags.sitting).client);
}

void apply(Library& library, std::string said, std::vector<TagChange> tags) {
    library.history().apply({.said = std::move(said), .tags = std::move(tags)});
}

Tags confirmed(const Photo& photo) {
    Tags tags = photo.tags;
    if (!tags.angle) tags.angle = photo.suggestion.angle;
    if (!tags.stage) tags.stage = photo.suggestion.stage;
    return tags;
}

// One action that gives all photos this sitting, and sorting afterwards.
std::vector<RefusedFile> place(Library& library, std::span<const PhotoId> ids, bool by_hand,
                               std::optional<SittingId> sitting, const std::string& where) {
    const std::vector<Photo> photos = photos_named(library, ids);
    std::vector<TagChange> changes;
    for (const Photo& photo : photos) {
        Tags tags = photo.tags;
        tags.placed_by_hand = by_hand;
        if (by_hand) tags.sitting = sitting;
        refuse_look_of_another(library, photo, tags);
        changes.push_back({photo.id, std::move(tags)});
    }
    apply(library, "placed " + photos_text(photos) + ' ' + where, std::move(changes));
    return sort_by_time(library).not_moved;
}

}  // namespace

void tag(Library& library, std::span<const PhotoId> ids, const TagWishes& wishes) {
    const std::vector<Photo> photos = photos_named(library, ids);
    std::vector<TagChange> changes;
    for (const Photo& photo : photos) {
        Tags tags = wished(photo.tags, wishes);
        if (wishes.shown) drop_seated_from_shown(library, tags);
        if (wishes.look || wishes.shown) refuse_look_of_another(library, photo, tags);
        changes.push_back({photo.id, std::move(tags)});
    }
    apply(library, "tagged " + photos_text(photos) + ' ' + wishes_text(library, wishes),
          std::move(changes));
}

int confirm_suggestions(Library& library, std::span<const PhotoId> ids) {
    std::vector<Photo> photos = photos_named(library, ids);
    std::erase_if(photos, [](const Photo& photo) { return confirmed(photo) == photo.tags; });
    std::vector<TagChange> changes;
    for (const Photo& photo : photos) changes.push_back({photo.id, confirmed(photo)});
    apply(library, "confirmed what was suggested for " + photos_text(photos), std::move(changes));
    return static_cast<int>(photos.size());
}

std::vector<RefusedFile> place_by_hand(Library& library, std::span<const PhotoId> photos,
                                       std::optional<SittingId> sitting) {
    if (!sitting) return place(library, photos, true, std::nullopt, "in no sitting");
    const Sitting chosen = sitting_of(library, *sitting);
    const std::string where = "in the " + std::string{word(chosen.kind)} + " of " +
                              client_of(library, chosen.client).name + " on " +
                              iso_text(date_of(chosen.starts));
    return place(library, photos, true, sitting, where);
}

std::vector<RefusedFile> leave_to_time(Library& library, std::span<const PhotoId> photos) {
    return place(library, photos, false, std::nullopt, "by their time again");
}

}  // namespace quarterturn
