#include "indexer/looks/pair_gate.h"

#include <algorithm>
#include <bitset>
#include <map>
#include <tuple>
#include <unordered_map>

#include "indexer/store/photos_at_gate.h"

namespace quarterturn {
namespace {

using Uses = std::bitset<all_uses.size()>;

// Photos of the same people and the same photographer have the same verdict.
class Verdicts {
  public:
    Verdicts(PhotoGate& gate, Date on) : gate_(gate), on_(on) {}

    Uses of(const PhotoAtGate& at_gate) {
        const auto& [photo, seen, credit] = at_gate;
        const Key key{number_of(photo.tags), face_shows(photo, seen), seen.strangers,
                      shows_nobody(photo, seen), number_of(credit)};
        const auto [known, is_new] = known_.try_emplace(key);
        if (is_new) known->second = judge(gate_.to_show(photo, seen, credit));
        return known->second;
    }

  private:
    using Key = std::tuple<std::size_t, bool, bool, bool, std::size_t>;

    std::size_t number_of(const Tags& tags) {
        const bool as_before = tags.look == last_.look && tags.sitting == last_.sitting &&
                               tags.shown == last_.shown && !people_.empty();
        if (as_before) return last_people_;
        last_ = tags;
        last_people_ = people_.try_emplace(gate_.clients_in(tags), people_.size()).first->second;
        return last_people_;
    }

    std::size_t number_of(const Credit& credit) {
        const auto found = std::ranges::find(credits_, credit);
        const auto number = static_cast<std::size_t>(found - credits_.begin());
        if (found == credits_.end()) credits_.push_back(credit);
        return number;
    }

    Uses judge(const PhotoToShow& shown) const {
        Uses uses;
        for (std::size_t i = 0; i < all_uses.size(); ++i) {
            uses[i] = may_go(shown, all_uses[i], on_).may();
        }
        return uses;
    }

    PhotoGate& gate_;
    Date on_;
    Tags last_;
    std::size_t last_people_ = 0;
    std::map<std::vector<ClientId>, std::size_t> people_;
    std::vector<Credit> credits_;
    std::map<Key, Uses> known_;
};

using UsesOfPhotos = std::unordered_map<std::int64_t, Uses>;

std::vector<std::vector<Use>> for_both(const UsesOfPhotos& uses, std::span<const Pair> pairs) {
    const auto of = [&](PhotoId photo) {
        const auto found = uses.find(photo.value);
        return found == uses.end() ? Uses{} : found->second;
    };
    std::vector<std::vector<Use>> allowed(pairs.size());
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const Uses both = of(pairs[i].made.first) & of(pairs[i].made.second);
        for (std::size_t use = 0; use < all_uses.size(); ++use) {
            if (both[use]) allowed[i].push_back(all_uses[use]);
        }
    }
    return allowed;
}

bool has(const std::vector<Against>& all, const Against& one) {
    return std::ranges::any_of(all, [&](const Against& other) { return other.words == one.words; });
}

bool face_stands_against(const std::vector<Against>& against) {
    return std::ranges::any_of(against,
                               [](const Against& each) { return each.obstacle == Obstacle::face; });
}

}  // namespace

std::vector<std::string> against_both(PhotoGate& gate, const Photo& first, const Photo& second,
                                      Use use, Date on) {
    const auto one = gate.may_go(first, use, on).against;
    const auto other = gate.may_go(second, use, on).against;
    std::vector<std::string> words;
    for (const Against& each : one) {
        std::string whose = first.file.name + ": ";
        if (has(other, each)) {
            const bool of_a_person = each.client.has_value();
            whose = of_a_person ? "" : first.file.name + ", " + second.file.name + ": ";
        }
        words.push_back(whose + each.words);
    }
    for (const Against& each : other) {
        if (!has(one, each)) words.push_back(second.file.name + ": " + each.words);
    }
    if (face_stands_against(one) || face_stands_against(other)) {
        words.emplace_back(
            "Pictures without the face, also confirmed ones, cannot stand in a pair: it shows both "
            "photos as they are.");
    }
    return words;
}

std::vector<std::vector<Use>> allowed_uses(Library& library, std::span<const Pair> pairs, Date on) {
    PhotoGate gate = PhotoGate::for_many(library);
    Verdicts verdicts(gate, on);
    UsesOfPhotos uses;
    each_photo_of_pairs(library.database(), [&](const PhotoAtGate& at_gate) {
        uses.emplace(at_gate.photo.id.value, verdicts.of(at_gate));
    });
    return for_both(uses, pairs);
}

std::vector<std::vector<Use>> allowed_uses_of_few(Library& library, std::span<const Pair> pairs,
                                                  Date on) {
    std::vector<PhotoId> ids;
    for (const Pair& pair : pairs) ids.insert(ids.end(), {pair.made.first, pair.made.second});
    const std::vector<PhotoAtGate> at_gate = photos_at_gate(library.database(), ids);
    std::vector<Photo> photos;
    for (const PhotoAtGate& each : at_gate) photos.push_back(each.photo);
    PhotoGate gate = PhotoGate::for_these(library, photos);
    Verdicts verdicts(gate, on);
    UsesOfPhotos uses;
    for (const PhotoAtGate& each : at_gate) uses.emplace(each.photo.id.value, verdicts.of(each));
    return for_both(uses, pairs);
}

}  // namespace quarterturn
