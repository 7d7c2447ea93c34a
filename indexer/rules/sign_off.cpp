#include "indexer/rules/sign_off.h"

#include <map>

namespace quarterturn {
namespace {

using Sentences = std::vector<std::string>;

std::string sentence(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    return text + ".";
}

std::string quoted(const std::string& text) {
    return "\"" + text + "\"";
}

// Walks two lists by key: `gone` for what is only in the old one, `added` for what is only in the
// new one, `both` for what is in both.
template <class Item, class Key, class Gone, class Added, class Both>
void compare(const std::vector<Item>& old_items, const std::vector<Item>& new_items, Key key,
             Gone gone, Added added, Both both) {
    std::map<std::decay_t<decltype(key(old_items.front()))>, const Item*> left;
    for (const Item& item : old_items) left.emplace(key(item), &item);
    for (const Item& item : new_items) {
        const auto found = left.find(key(item));
        if (found == left.end()) {
            added(item);
            continue;
        }
        both(*found->second, item);
        left.erase(found);
    }
    for (const auto& [ignored, item] : left) gone(*item);
}

void compare_photo(const SealedPhoto& was, const SealedPhoto& is, Sentences& changes) {
    if (was.name != is.name) changes.push_back(was.name + " is now named " + is.name + ".");
    if (was.sha256 != is.sha256) changes.push_back(is.name + " is no longer the same picture.");
    if (was.tags != is.tags) {
        changes.push_back(is.name + " is now tagged " + quoted(is.tags) + "; it was " +
                          quoted(was.tags) + ".");
    }
}

void compare_photos(const Seal& sealed, const Seal& now, Sentences& changes) {
    compare(
        sealed.photos, now.photos, [](const SealedPhoto& photo) { return photo.photo; },
        [&](const SealedPhoto& photo) {
            changes.push_back(photo.name + " no longer belongs to the look.");
        },
        [&](const SealedPhoto& photo) { changes.push_back(photo.name + " was added since."); },
        [&](const SealedPhoto& was, const SealedPhoto& is) { compare_photo(was, is, changes); });
}

void compare_recipes(const Seal& sealed, const Seal& now, Sentences& changes) {
    if (sealed.recipe_sha256 != now.recipe_sha256) changes.emplace_back("Its recipe was changed.");
}

std::string shot_name(const Waiver& waiver) {
    return "The shot " + quoted(shot_text(waiver.shot));
}

void compare_waivers(const Seal& sealed, const Seal& now, Sentences& changes) {
    compare(
        sealed.waivers, now.waivers, [](const Waiver& waiver) { return waiver.shot; },
        [&](const Waiver& waiver) {
            changes.push_back(shot_name(waiver) + " is no longer waived.");
        },
        [&](const Waiver& waiver) {
            changes.push_back(shot_name(waiver) + " was waived since: " + waiver.reason + ".");
        },
        [&](const Waiver& was, const Waiver& is) {
            if (was.reason == is.reason) return;
            changes.push_back(shot_name(is) + " is now waived for another reason: " + is.reason +
                              ".");
        });
}

}  // namespace

Sentences reasons_against_sign_off(const CoverageReport& coverage,
                                   std::span<const RecipeFinding> recipe) {
    Sentences reasons;
    for (const CoverageLine& line : coverage.lines) {
        if (open_gap(line)) reasons.push_back(sentence(gap_text(line)));
    }
    for (const RecipeFinding& finding : recipe) {
        if (finding.weight == Weight::bars_sign_off) reasons.push_back(finding.sentence);
    }
    return reasons;
}

std::string sealed_tags(const Tags& tags) {
    std::string text = tags.stage ? std::string(word(*tags.stage)) : "no stage";
    text += ", ";
    text += tags.angle ? word(*tags.angle) : "no angle";
    if (tags.mirrored) text += ", mirrored";
    if (!tags.accepted_because.empty()) text += ", accepted: " + tags.accepted_because;
    return text;
}

Sentences changes_since(const Seal& sealed, const Seal& now) {
    Sentences changes;
    compare_photos(sealed, now, changes);
    compare_recipes(sealed, now, changes);
    compare_waivers(sealed, now, changes);
    return changes;
}

}  // namespace quarterturn
