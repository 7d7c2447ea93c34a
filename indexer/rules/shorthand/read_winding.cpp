#include <cmath>

#include "indexer/rules/shorthand/readers.h"

namespace quarterturn::shorthand {
namespace {

bool ends_here(const Phrase& phrase, std::size_t at) {
    return !phrase.free(at) || phrase.is(at, {"and", "then"});
}

// "from the face", "her face": where it ends, or `from`.
std::size_t face_end(const Phrase& phrase, std::size_t from, std::string_view word) {
    std::size_t at = from;
    if (phrase.is(at, {word})) ++at;
    if (phrase.is(at, {"the", "her"})) ++at;
    return phrase.is(at, {"face"}) ? at + 1 : from;
}

struct Direction {
    Wind wind = Wind::away;
    std::size_t end = 0;
};

std::optional<Direction> direction_at(const Phrase& phrase, std::size_t at) {
    if (phrase.is(at, {"away"})) {
        const std::size_t end = face_end(phrase, at + 1, "from");
        if (end > at + 1 || ends_here(phrase, end)) return Direction{Wind::away, end};
    }
    if (phrase.is(at, {"off"}) && face_end(phrase, at + 1, "") > at + 1) {
        return Direction{Wind::away, face_end(phrase, at + 1, "")};
    }
    if (phrase.is(at, {"towards", "toward", "forward", "forwards", "to"})) {
        const std::size_t end = face_end(phrase, at + 1, "");
        const bool alone = !phrase.is(at, {"to"}) && ends_here(phrase, end);
        if (end > at + 1 || alone) return Direction{Wind::towards, end};
    }
    if (phrase.is(at, {"alternating", "alternate", "alternately"})) {
        const bool named = phrase.is(at + 1, {"directions", "direction", "ways"});
        if (named || ends_here(phrase, at + 1)) {
            return Direction{Wind::alternating, at + (named ? 2 : 1)};
        }
    }
    return std::nullopt;
}

enum class TimeOf { hands_on, waiting, cooling, being_left };

struct Span {
    std::size_t begin = 0;
    std::size_t end = 0;
};

bool cooling_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"cool", "cools", "cooling", "cooled"});
}
bool waiting_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"wait", "waiting", "rest"});
}
bool leaving_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"leave"}) ||
           (phrase.is(at, {"left"}) && at > 0 && phrase.is(at - 1, {"be"}));
}
bool joins_time(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"to", "for", "let", "up", "may", "can", "be", "down", "about", "it"});
}

bool tells_what_time(const Phrase& phrase, std::size_t at) {
    return cooling_at(phrase, at) || waiting_at(phrase, at) || leaving_at(phrase, at) ||
           phrase.is(at, {"hands-on"});
}

// The words around a time that say what it is the time of; little ones only on the way to them.
Span with_what(const Phrase& phrase, Span time) {
    Span span = time;
    for (std::size_t at = time.begin; at > 0; --at) {
        if (tells_what_time(phrase, at - 1))
            span.begin = at - 1;
        else if (!joins_time(phrase, at - 1))
            break;
    }
    while (span.begin < time.begin && span.begin > 0 && joins_time(phrase, span.begin - 1)) {
        --span.begin;
    }
    for (std::size_t at = time.end; at < phrase.size(); ++at) {
        if (tells_what_time(phrase, at))
            span.end = at + 1;
        else if (!joins_time(phrase, at))
            break;
    }
    return span;
}

TimeOf time_of(const Phrase& phrase, Span span) {
    for (std::size_t at = span.begin; at < span.end; ++at) {
        if (cooling_at(phrase, at)) return TimeOf::cooling;
        if (waiting_at(phrase, at)) return TimeOf::waiting;
        if (leaving_at(phrase, at)) return TimeOf::being_left;
    }
    return TimeOf::hands_on;
}

std::optional<int>& field_of(Step& step, TimeOf what) {
    switch (what) {
        case TimeOf::waiting:
            return step.waiting_minutes;
        case TimeOf::cooling:
            return step.setting.cooling_minutes;
        case TimeOf::being_left:
            return step.setting.may_be_left_minutes;
        case TimeOf::hands_on:
            break;
    }
    return step.minutes;
}

struct Time {
    int minutes = 0;
    std::size_t end = 0;
};

// "10 min", "an hour", "1.5 h".
std::optional<Time> time_at(const Phrase& phrase, std::size_t at) {
    const bool an_hour = phrase.is(at, {"an", "a"}) && phrase.is(at + 1, {"hour"});
    if (an_hour) return Time{60, at + 2};
    const auto number = phrase.number(at);
    if (!number) return std::nullopt;
    double minutes = 0;
    if (phrase.is(at + 1, {"min", "mins", "minute", "minutes", "m", "'"})) minutes = *number;
    if (phrase.is(at + 1, {"h", "hr", "hrs", "hour", "hours"})) minutes = *number * 60;
    if (minutes <= 0 || minutes != std::floor(minutes)) return std::nullopt;
    return Time{static_cast<int>(minutes), at + 2};
}

// "clip each curl to cool": where it ends, or 0.
std::size_t setting_end(const Phrase& phrase, std::string& how) {
    std::size_t at = phrase.is(0, {"and", "then"}) ? 1 : 0;
    const bool clipped = phrase.is(at, {"clip", "clipped"});
    const bool pinned = phrase.is(at, {"pin", "pinned"});
    if (!clipped && !pinned) return 0;
    how = clipped ? "clipped" : "pinned";
    if (phrase.is(++at, {"curl", "curls"})) return 0;  // pin curls are made, not pinned
    while (phrase.is(at, {"each", "every", "curl", "curls", "one", "it", "while", "warm", "hot",
                          "up", "in", "place", "flat", "all", "them"})) {
        ++at;
    }
    const std::size_t to = phrase.is(at, {"to", "and"}) ? at + 1 : at;
    if (phrase.is(to, {"cool", "set"})) at = to + 1;
    return ends_here(phrase, at) ? at : 0;
}

// "30mm rollers", "rollers": where they end, or `from`.
std::size_t rollers_end(const Phrase& phrase, std::size_t from, std::string& how) {
    const bool sized = phrase.number(from) && phrase.is(from + 1, {"mm"});
    const std::size_t at = sized ? from + 2 : from;
    if (!phrase.is(at, {"rollers", "roller"})) return from;
    how = sized ? "rollers, " + phrase[from].plain + " mm" : "rollers";
    return at + 1;
}

}  // namespace

void read_wind(Phrase& phrase, Step& step) {
    for (std::size_t at = 0; at < phrase.size() && !step.winding.direction; ++at) {
        const auto direction = direction_at(phrase, at);
        if (!direction) continue;
        step.winding.direction = direction->wind;
        phrase.use(at, direction->end);
    }
}

void read_times(Phrase& phrase, Step& step) {
    for (std::size_t at = 0; at < phrase.size(); ++at) {
        const auto time = time_at(phrase, at);
        if (!time) continue;
        const Span span = with_what(phrase, {at, time->end});
        auto& field = field_of(step, time_of(phrase, span));
        if (field) continue;
        field = time->minutes;
        phrase.use(span.begin, span.end);
    }
}

void read_setting(Phrase& phrase, Step& step) {
    if (!step.setting.how.empty()) return;
    std::string how;
    if (const std::size_t end = setting_end(phrase, how)) {
        step.setting.how = how;
        phrase.use(0, end);
        return;
    }
    for (std::size_t at = 0; at < phrase.size(); ++at) {
        const std::size_t end = rollers_end(phrase, at, how);
        if (end == at) continue;
        step.setting.how = how;
        phrase.use(at, end);
        return;
    }
}

void read_root_lift(Phrase& phrase, Step& step) {
    for (std::size_t at = 0; at < phrase.size() && step.winding.root_lift.empty(); ++at) {
        const bool strength = phrase.is(at, {"high", "strong", "low", "slight", "soft", "full",
                                             "medium", "good", "no", "max", "little"});
        const std::size_t lift = at + (strength ? 1 : 0);
        const bool root_lift = phrase.is(lift, {"root"}) && phrase.is(lift + 1, {"lift"});
        const bool lift_roots =
            phrase.is(lift, {"lift", "lifted"}) && phrase.is(lift + 1, {"root", "roots"});
        if (!root_lift && !lift_roots) continue;
        step.winding.root_lift = strength ? phrase[at].plain : "yes";
        phrase.use(at, lift + 2);
    }
}

void use_joining_words(Phrase& phrase) {
    for (std::size_t at = phrase.size(); at-- > 1;) {
        const bool before_field = phrase[at].used;
        if (before_field &&
            phrase.is(at - 1, {"with", "at", "for", "of", "on", "in", "using", "and", "the", "then",
                               "to", "wind", "plus", "+", "&", "about"})) {
            phrase.use(at - 1, at);
        }
    }
}

}  // namespace quarterturn::shorthand
