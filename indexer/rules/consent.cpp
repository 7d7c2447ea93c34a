#include "indexer/rules/consent.h"

#include <algorithm>

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

constexpr WordList<Standing, 6> standing_list{{{Standing::not_asked, "not asked"},
                                               {Standing::granted, "granted"},
                                               {Standing::not_yet, "not yet"},
                                               {Standing::ended, "ended"},
                                               {Standing::declined, "declined"},
                                               {Standing::withdrawn, "withdrawn"}}};

// The one that was said last of those that `counts`.
template <class Counts>
const ConsentEntry* last_said(std::span<const ConsentEntry> entries, Counts counts) {
    const ConsentEntry* last = nullptr;
    for (const ConsentEntry& entry : entries) {
        if (!counts(entry)) continue;
        if (last == nullptr ||
            std::pair(entry.said_on, entry.id) > std::pair(last->said_on, last->id)) {
            last = &entry;
        }
    }
    return last;
}

bool is_no(const ConsentEntry& entry) {
    return entry.said != ConsentSaid::granted;
}

bool stands_after(const ConsentEntry& yes, const ConsentEntry* no) {
    return no == nullptr || (yes.id > no->id && yes.said_on >= no->said_on);
}

Standing standing_of(const ConsentEntry& entry, Date on) {
    if (entry.said == ConsentSaid::declined) return Standing::declined;
    if (entry.said == ConsentSaid::withdrawn) return Standing::withdrawn;
    if (entry.from && on < *entry.from) return Standing::not_yet;
    if (entry.until && on > *entry.until) return Standing::ended;
    return Standing::granted;
}

// ", with her face, from 2026-11-07 until 2028-11-07"
std::string granted_words(const ConsentEntry& entry) {
    std::string words = ", " + std::string(word(entry.shown));
    if (entry.from) words += ", from " + iso_text(*entry.from);
    if (entry.until) words += (entry.from ? " until " : ", until ") + iso_text(*entry.until);
    return words;
}

}  // namespace

std::string_view word(Standing standing) {
    return find_word(standing_list, standing);
}

StandingConsent consent_on(std::span<const ConsentEntry> entries, Use use, Date on) {
    const auto of_use = [&](const ConsentEntry& each) { return each.use == use; };
    const auto no_of_use = [&](const ConsentEntry& each) { return of_use(each) && is_no(each); };
    const ConsentEntry* recorded_last = nullptr;
    for (const ConsentEntry& each : entries) {
        const bool later = recorded_last == nullptr || each.id > recorded_last->id;
        if (no_of_use(each) && later) recorded_last = &each;
    }
    const ConsentEntry* no = last_said(entries, no_of_use);
    const ConsentEntry* yes = last_said(entries, [&](const ConsentEntry& each) {
        return of_use(each) && !is_no(each) && each.said_on <= on && stands_after(each, no) &&
               stands_after(each, recorded_last);
    });
    const ConsentEntry* entry = yes != nullptr ? yes : no;
    if (entry == nullptr) return {};
    return {standing_of(*entry, on), entry};
}

std::optional<AgeBand> age_on(std::span<const ConsentEntry> entries, Date on) {
    const ConsentEntry* entry = last_said(
        entries, [&](const ConsentEntry& each) { return each.age && each.said_on <= on; });
    return entry == nullptr ? std::nullopt : entry->age;
}

bool is_child_on(std::span<const ConsentEntry> entries, Date on) {
    const auto age = age_on(entries, on);
    return (age && is_child(*age)) || std::ranges::any_of(entries, [&](const ConsentEntry& entry) {
               return entry.age && is_child(*entry.age) && entry.said_on > on;
           });
}

std::string standing_words(const StandingConsent& consent) {
    std::string words(word(consent.standing));
    if (consent.entry == nullptr) return words;
    const ConsentEntry& entry = *consent.entry;
    if (entry.said != ConsentSaid::granted) return words + " on " + iso_text(entry.said_on);
    return words + granted_words(entry);
}

std::string said_words(const ConsentEntry& entry) {
    std::string words = iso_text(entry.said_on) + ", " + std::string(word(entry.use)) + ": " +
                        std::string(word(entry.said));
    if (entry.said == ConsentSaid::granted) words += granted_words(entry);
    words += "; " + std::string(word(entry.how));
    if (!entry.witness.empty()) words += " before " + entry.witness;
    if (entry.giver == ConsentGiver::guardian) {
        words += ", by her parent or guardian " + entry.guardian;
    }
    if (entry.age) words += ", aged " + std::string(word(*entry.age));
    if (!entry.note.empty()) words += "; " + entry.note;
    return words;
}

}  // namespace quarterturn
