#pragma once
// The gate: whether a photo may go out for a use on a day. Every way out of the program asks it.
// It judges by what is recorded, and by nothing else: local law and the photographer's contract
// rule.

#include <string>
#include <vector>

#include "indexer/record/credit.h"
#include "indexer/record/photo.h"
#include "indexer/rules/consent.h"

namespace quarterturn {

struct ShownPerson {
    ClientId client;
    std::string name;
    std::string childs_role;  // "flower girl", where her part in a wedding is a child's
    std::vector<ConsentEntry> consents;
};

struct PhotoToShow {
    std::vector<ShownPerson> people;
    bool face_shows = true;
    bool strangers = false;  // somebody is in it who is no client
    bool nobody = false;     // no person is in it, so that nobody has to be asked
    std::optional<Credit> credit;
};

enum class Obstacle {
    nobody_named,
    strangers,
    not_asked,
    declined,
    withdrawn,
    not_yet,
    ended,
    face,
    childs_age,
    child,
    whose,
    somebody_elses,
    not_licensed,
    licence_ended,
    credit_line
};
std::string_view word(Obstacle obstacle);

struct Against {
    Obstacle obstacle = Obstacle::nobody_named;
    std::optional<ClientId> client;  // whose consent it is about
    std::string words;               // a sentence
};

struct Verdict {
    std::vector<Against> against;  // people in their order, then whose photo it is
    std::vector<ConsentId> under;  // what those shown granted, as far as it holds

    bool may() const { return against.empty(); }
};

// It may go when everyone shown allows the use on that day, with the face if one shows; for a child
// a parent or guardian does; nobody is in it who cannot be asked; it is the stylist's own photo, or
// the photographer's licence covers the use on that day and the credit line is known.
Verdict may_go(const PhotoToShow& photo, Use use, Date on);

// What to do about it, in so few words that they stand under a picture: "Ask Ada about website".
// `person`: the name of whom it is about; empty where it is about nobody.
std::string next_step(const Against& against, const std::string& person, Use use);

// Only somebody who looked can say that none shows, since the search misses faces; and her word
// does not count where the search found one, or where the photo is tagged with a side that shows
// one.
bool face_shows(const Photo& photo, const Seen& seen);

// Why a word of hers on the photo does not count: sentences.
std::vector<std::string> doubts(const Photo& photo, const Seen& seen);

// Her word, unless the search found a face, or the photo is tagged with a side of somebody's head.
bool shows_nobody(const Photo& photo, const Seen& seen);

// Whether a part in a wedding is one that children have: "flower girl" (common practice).
bool is_childs_role(std::string_view role);

}  // namespace quarterturn
