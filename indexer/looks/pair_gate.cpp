#include "indexer/looks/pair_gate.h"

#include <algorithm>
#include <bitset>
#include <set>
#include <tuple>

namespace quarterturn {
namespace {

using Uses = std::bitset<all_uses.size()>;

// Photos of the same people and the same photographer have the same verdict.
class Verdicts {
  public:
    Verdicts(PhotoGate& gate, Date on) : gate_(gate), on_(on) {}

    Uses of(const Photo& photo) {
        const Seen seen = gate_.seen(photo.id);
        const auto credit = gate_.credit(photo.id);
        if (!credit) return {};
        const Key key{gate_.clients_in(photo.tags), face_shows(photo, seen), seen.strangers,
                      shows_nobody(photo, seen), number_of(*credit)};
        const auto [known, is_new] = known_.try_emplace(key);
        if (is_new) known->second = judge(gate_.to_show(photo));
        return known->second;
    }

  private:
    using Key = std::tuple<std::vector<ClientId>, bool, bool, bool, std::size_t>;

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
    std::vector<Credit> credits_;
    std::map<Key, Uses> known_;
};

// Of the pairs whose photos could both go: it is recorded whose they are.
std::vector<Photo> photos_worth_asking(Library& library, PhotoGate& gate,
                                       std::span<const Pair> pairs) {
    std::set<PhotoId> ids;
    for (const Pair& pair : pairs) {
        const MadePair& made = pair.made;
        if (gate.credit(made.first) && gate.credit(made.second)) {
            ids.insert({made.first, made.second});
        }
    }
    if (ids.empty()) return {};
    return library.photos().these(std::vector(ids.begin(), ids.end()));
}

bool has(const std::vector<std::string>& sentences, const std::string& sentence) {
    return std::ranges::find(sentences, sentence) != sentences.end();
}

std::vector<std::string> words_against(PhotoGate& gate, const Photo& photo, Use use, Date on) {
    std::vector<std::string> words;
    for (const Against& against : gate.may_go(photo, use, on).against) {
        words.push_back(against.words);
    }
    return words;
}

}  // namespace

std::vector<std::string> against_both(PhotoGate& gate, const Photo& first, const Photo& second,
                                      Use use, Date on) {
    const auto one = words_against(gate, first, use, on);
    const auto other = words_against(gate, second, use, on);
    std::vector<std::string> words;
    for (const std::string& each : one) {
        words.push_back(has(other, each) ? each : first.file.name + ": " + each);
    }
    for (const std::string& each : other) {
        if (!has(one, each)) words.push_back(second.file.name + ": " + each);
    }
    return words;
}

std::vector<std::vector<Use>> allowed_uses(Library& library, std::span<const Pair> pairs, Date on) {
    std::vector<std::vector<Use>> allowed(pairs.size());
    PhotoGate gate = PhotoGate::for_many(library);
    const auto photos = photos_worth_asking(library, gate, pairs);
    Verdicts verdicts(gate, on);
    std::map<PhotoId, Uses> uses;
    for (const Photo& photo : photos) uses[photo.id] = verdicts.of(photo);
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        const auto first = uses.find(pairs[i].made.first);
        const auto second = uses.find(pairs[i].made.second);
        if (first == uses.end() || second == uses.end()) continue;
        const Uses both = first->second & second->second;
        for (std::size_t use = 0; use < all_uses.size(); ++use) {
            if (both[use]) allowed[i].push_back(all_uses[use]);
        }
    }
    return allowed;
}

}  // namespace quarterturn
