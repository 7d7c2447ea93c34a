#include "indexer/erasure/named_by_others.h"

#include <algorithm>
#include <set>

#include "indexer/store/erasure_table.h"
#include "indexer/store/own_texts.h"
#include "indexer/store/text_words.h"

namespace quarterturn {
namespace {

std::string beginning_large(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z') {
        words[0] = static_cast<char>(words[0] - 'a' + 'A');
    }
    return words;
}

std::string words_where_it_goes(const NamedPlace& place) {
    return "Her name is taken out of " + place.place +
           (place.signed_off ? ": it is signed off, and will show as changed since." : ".");
}

std::string words_where_it_stays(const NamedPlace& place) {
    const std::string where = beginning_large(place.place);
    if (place.as_it_came) {
        return where + " says " + place.said + ", as the file was called when it came.";
    }
    return where + " still says " + place.said + ": look whether she is meant, and change it.";
}

// Of a name of one word none: it is the whole.
std::vector<std::string> parts_of(const std::string& name) {
    constexpr std::size_t least_letters = 3;
    std::vector<std::string> parts;
    for (const TextWord& word : words_in(name)) {
        if (word.plain.size() < least_letters) continue;
        parts.push_back(name.substr(word.begin, word.end - word.begin));
    }
    return parts.size() > 1 ? parts : std::vector<std::string>{};
}

class PartFinder {
  public:
    PartFinder(Library& library, const std::string& name)
        : library_(library), name_(name), whole_({name}) {}

    std::vector<std::string> sentences(std::span<const WeddingId> weddings) {
        for (const WeddingId id : weddings) {
            const auto wedding = library_.weddings().find(id);
            if (!wedding || !has_a_part(whole_.without(wedding->name, ""))) continue;
            say("The wedding " + wedding->name +
                " is named with a part of her name: give it another name if that should go too.");
        }
        for (const auto& [photo, credit] : library_.credits().all()) {
            look_at("The photographer's name ", credit.name);
            look_at("The credit line ", credit.line.value_or(""));
        }
        look_at_recipes();
        return std::move(sentences_);
    }

  private:
    bool has_a_part(const std::string& text) const { return share_a_word(text, name_); }

    void look_at_recipes() {
        const auto named = places_naming(library_.database(), whole_);
        for (const NamedPlace& place :
             recipes_naming(library_.database(), SoughtNames(parts_of(name_), false))) {
            if (std::ranges::find(named, place.place, &NamedPlace::place) != named.end()) continue;
            say(beginning_large(place.place) + " says " + place.said +
                ", a part of her name: look whether she is meant, and change it if that should go "
                "too.");
        }
    }

    // One that says the whole name is named already.
    void look_at(const char* what, const std::string& text) {
        if (text.empty() || !seen_.insert(what + text).second) return;
        if (!has_a_part(text) || !whole_.said_in(text).empty()) return;
        say(what + text +
            " holds a part of her name: say anew whose the photos are if that should go too.");
    }

    void say(std::string sentence) { sentences_.push_back(std::move(sentence)); }

    Library& library_;
    const std::string& name_;
    SoughtNames whole_;
    std::set<std::string> seen_;
    std::vector<std::string> sentences_;
};

}  // namespace

SoughtNames names_that_go(const ErasurePlan& plan) {
    std::vector<std::string> names;
    if (!plan.only) names.push_back(plan.client.name);
    return SoughtNames(names, plan.name_is_hers_alone);
}

std::vector<WeddingId> weddings_of(Library& library, ClientId client) {
    std::set<WeddingId> weddings;
    for (const Wedding& wedding : library.weddings().all()) {
        const auto hers = std::ranges::find(wedding.party, client, &PartyMember::client);
        if (hers != wedding.party.end()) weddings.insert(wedding.id);
    }
    for (const Sitting& sitting : library.sittings().of_client(client)) {
        if (sitting.wedding) weddings.insert(*sitting.wedding);
    }
    for (const Look& look : library.looks().of_client(client)) {
        if (look.wedding) weddings.insert(*look.wedding);
    }
    return {weddings.begin(), weddings.end()};
}

std::vector<std::string> named_with_a_part(Library& library, std::span<const WeddingId> weddings,
                                           const std::string& name) {
    return PartFinder(library, name).sentences(weddings);
}

std::vector<std::string> words_of_places_left(const std::vector<NamedPlace>& places) {
    std::vector<std::string> words;
    for (const NamedPlace& place : places) {
        if (!place.goes) words.push_back(words_where_it_stays(place));
    }
    return words;
}

NamedByOthers named_by_others(Library& library, const ErasurePlan& plan) {
    NamedByOthers named;
    if (plan.only) return named;
    ToErase what;
    what.client = plan.client;
    for (const Photo& photo : plan.photos) what.photos.push_back(photo.id);
    const std::vector<WeddingId> hers = weddings_of(library, plan.client.id);
    ErasureTable(library.database()).look_after(what, [&] {
        named.places = places_naming(library.database(), names_that_go(plan));
        named.alike = named_with_a_part(library, hers, plan.client.name);
    });
    return named;
}

std::vector<std::string> naming_words(const NamedByOthers& named) {
    std::vector<std::string> words;
    for (const NamedPlace& place : named.places) {
        if (place.goes) words.push_back(words_where_it_goes(place));
    }
    for (const auto& part : {words_of_places_left(named.places), named.alike}) {
        words.insert(words.end(), part.begin(), part.end());
    }
    return words;
}

}  // namespace quarterturn
