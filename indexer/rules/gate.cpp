#include "indexer/rules/gate.h"

#include <algorithm>

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

constexpr WordList<Obstacle, 15> obstacle_words{{{Obstacle::nobody_named, "nobody named"},
                                                 {Obstacle::strangers, "strangers"},
                                                 {Obstacle::not_asked, "not asked"},
                                                 {Obstacle::declined, "declined"},
                                                 {Obstacle::withdrawn, "withdrawn"},
                                                 {Obstacle::not_yet, "not yet"},
                                                 {Obstacle::ended, "ended"},
                                                 {Obstacle::face, "face"},
                                                 {Obstacle::childs_age, "child's age"},
                                                 {Obstacle::child, "child"},
                                                 {Obstacle::whose, "whose"},
                                                 {Obstacle::somebody_elses, "somebody else's"},
                                                 {Obstacle::not_licensed, "not licensed"},
                                                 {Obstacle::licence_ended, "licence ended"},
                                                 {Obstacle::credit_line, "credit line"}}};

class Gatekeeper {
  public:
    Gatekeeper(const PhotoToShow& photo, Use use, Date on)
        : photo_(photo), use_(use), where_(in_words(use)), on_(on) {}

    Verdict judge() {
        ask_people();
        ask_whose();
        return std::move(verdict_);
    }

  private:
    void add(Obstacle obstacle, const std::string& words,
             std::optional<ClientId> client = std::nullopt) {
        verdict_.against.push_back({obstacle, client, words});
    }

    void ask_people() {
        if (photo_.strangers) {
            add(Obstacle::strangers,
                "Somebody is in the picture who is no client: choose another photo, or add "
                "that person as a client and ask.");
        }
        if (photo_.nobody) return;
        if (photo_.people.empty()) {
            add(Obstacle::nobody_named,
                "It is not recorded who is shown: tag the photo with a look or a sitting, or say "
                "that nobody is in it.");
        }
        for (const ShownPerson& person : photo_.people) ask(person);
    }

    void ask(const ShownPerson& person) {
        const StandingConsent consent = consent_on(person.consents, use_, on_);
        if (consent.standing != Standing::granted) {
            refuse(person, consent);
            return;
        }
        verdict_.under.push_back(consent.entry->id);
        if (photo_.face_shows && consent.entry->shown == ShownAs::hair_only) {
            add(Obstacle::face,
                person.name + " allows only her hair to be shown " + where_ +
                    ", and a face shows, or may show.",
                person.client);
        }
        ask_for_child(person, *consent.entry);
    }

    void ask_for_child(const ShownPerson& person, const ConsentEntry& entry) {
        if (is_child_on(person.consents, on_)) {
            if (entry.giver == ConsentGiver::guardian) return;
            add(Obstacle::child,
                person.name +
                    " is a child, and no parent or guardian has allowed her to be shown " + where_ +
                    ".",
                person.client);
        } else if (!person.childs_role.empty() && !age_on(person.consents, on_)) {
            add(Obstacle::childs_age,
                person.name + " is " + person.childs_role +
                    " at a wedding, and it is not recorded how old she is.",
                person.client);
        }
    }

    void refuse(const ShownPerson& person, const StandingConsent& consent) {
        const std::string& name = person.name;
        const auto day = [](Date date) { return iso_text(date); };
        switch (consent.standing) {
            case Standing::not_asked:
                return add(
                    Obstacle::not_asked,
                    name + " was not asked whether she may be shown " + where_ + ": ask her.",
                    person.client);
            case Standing::declined:
                return add(Obstacle::declined,
                           name + " does not want to be shown " + where_ + ", as she said on " +
                               day(consent.entry->said_on) + ".",
                           person.client);
            case Standing::withdrawn:
                return add(Obstacle::withdrawn,
                           name + " withdrew on " + day(consent.entry->said_on) +
                               " that she may be shown " + where_ + ".",
                           person.client);
            case Standing::not_yet:
                return add(Obstacle::not_yet,
                           name + " may be shown " + where_ + " only from " +
                               day(*consent.entry->from) + " on.",
                           person.client);
            case Standing::ended:
                return add(Obstacle::ended,
                           name + " allowed to be shown " + where_ + " until " +
                               day(*consent.entry->until) + ": ask her anew.",
                           person.client);
            case Standing::granted:
                return;
        }
    }

    void ask_whose() {
        if (!photo_.credit) {
            add(Obstacle::whose,
                "It is not recorded whose photo it is: say whether it is your own or a "
                "photographer's.");
        } else if (photo_.credit->whose == Whose::somebody_else) {
            add(Obstacle::somebody_elses, "The photo is somebody else's, and is never passed on.");
        } else if (photo_.credit->whose == Whose::photographer) {
            ask_photographer(*photo_.credit);
        }
    }

    void ask_photographer(const Credit& credit) {
        if (std::ranges::find(credit.licensed, use_) == credit.licensed.end()) {
            add(Obstacle::not_licensed,
                "The licence of " + credit.name + " does not allow the photo " + where_ + ".");
        }
        if (credit.until && on_ > *credit.until) {
            add(Obstacle::licence_ended,
                "The licence of " + credit.name + " ended on " + iso_text(*credit.until) + ".");
        }
        if (!credit.line) {
            add(Obstacle::credit_line,
                "It is not recorded which line " + credit.name + " wants beside the photo.");
        }
    }

    const PhotoToShow& photo_;
    Use use_;
    std::string where_;
    Date on_;
    Verdict verdict_;
};

bool shows_a_head(const Photo& photo) {
    return photo.tags.angle && photo.tags.angle != Angle::detail;
}

bool shows_a_face(Angle angle) {
    switch (angle) {
        case Angle::front:
        case Angle::left:
        case Angle::right:
        case Angle::left_three_quarter:
        case Angle::right_three_quarter:
            return true;
        case Angle::back:
        case Angle::crown:
        case Angle::detail:
            return false;
    }
    return true;
}

bool shows_a_face(const Tags& tags) {
    return tags.angle && shows_a_face(*tags.angle);
}

bool found_face(const Photo& photo) {
    const auto& signs = photo.head_signs;
    return signs && (signs->frontal_face || signs->profile_to_left || signs->profile_to_right);
}

}  // namespace

std::string_view word(Obstacle obstacle) {
    return find_word(obstacle_words, obstacle);
}

Verdict may_go(const PhotoToShow& photo, Use use, Date on) {
    return Gatekeeper(photo, use, on).judge();
}

std::string next_step(const Against& against, const std::string& person, Use use) {
    switch (against.obstacle) {
        case Obstacle::not_asked:
            return "Ask " + person + " about " + std::string(word(use));
        case Obstacle::ended:
            return "Ask " + person + " again";
        case Obstacle::child:
            return "Ask who looks after " + person;
        case Obstacle::childs_age:
            return "Say how old " + person + " is";
        case Obstacle::declined:
        case Obstacle::withdrawn:
            return person + " said no";
        case Obstacle::not_yet:
            return person + " allows it later";
        case Obstacle::face:
            return "Leave the face out";
        case Obstacle::nobody_named:
            return "Say who is seen";
        case Obstacle::strangers:
            return "Somebody is no client";
        case Obstacle::whose:
            return "Say whose photo it is";
        case Obstacle::somebody_elses:
            return "Somebody else's photo";
        case Obstacle::not_licensed:
        case Obstacle::licence_ended:
            return "Ask the photographer";
        case Obstacle::credit_line:
            return "Say the credit line";
    }
    return {};
}

bool face_shows(const Photo& photo, const Seen& seen) {
    return seen.face.value_or(true) || shows_a_face(photo.tags) || found_face(photo);
}

std::vector<std::string> doubts(const Photo& photo, const Seen& seen) {
    std::vector<std::string> words;
    if (seen.nobody && shows_a_head(photo)) {
        words.push_back("That nobody is in it does not count: it is tagged " +
                        std::string(word(*photo.tags.angle)) +
                        ", a side of somebody's head. Take the tag off first if that is wrong.");
    } else if (seen.nobody && found_face(photo)) {
        words.emplace_back("That nobody is in it does not count, since a face was found in it.");
    }
    if (seen.face == false && shows_a_face(photo.tags)) {
        words.push_back("That no face shows does not count: it is tagged " +
                        std::string(word(*photo.tags.angle)) +
                        ", where a face shows. Make a picture without it (Hair only…), or take "
                        "the tag off first if that is wrong.");
    } else if (seen.face == false && found_face(photo)) {
        words.emplace_back(
            "That no face shows does not count, since a face was found in it. Make a picture "
            "without it (Hair only…).");
    }
    return words;
}

bool shows_nobody(const Photo& photo, const Seen& seen) {
    return seen.nobody && !found_face(photo) && !shows_a_head(photo);
}

bool is_childs_role(std::string_view role) {
    constexpr std::array words{"girl", "boy", "child", "junior", "ring bearer", "page"};
    const std::string plain = plain_word(role);
    return std::ranges::any_of(
        words, [&](const char* each) { return plain.find(each) != std::string::npos; });
}

}  // namespace quarterturn
