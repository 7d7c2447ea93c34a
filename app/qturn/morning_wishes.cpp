#include "app/qturn/morning_wishes.h"

#include <algorithm>

#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/reply.h"
#include "indexer/looks/running_order.h"

namespace quarterturn {
namespace {

constexpr const char* word_for_none = "none";  // as with tags

Named client_named(const std::string& text, const char* example) {
    Named parts = named(text);
    if (parts.name.empty()) {
        throw WrongUse("'" + text + "' names no client. Write it as in " + example + ".");
    }
    return parts;
}

// The stylists that are meant: the one of the number, or all.
std::vector<StylistHours*> stylists_named(Morning& morning, const std::string& number,
                                          const std::string& whole) {
    std::vector<StylistHours*> meant;
    if (number.empty()) {
        for (StylistHours& hours : morning.stylists) meant.push_back(&hours);
        return meant;
    }
    const int place = number_from(number, whole);
    if (place < 1 || place > static_cast<int>(morning.stylists.size())) {
        throw WrongUse("There is no stylist " + number + " on this morning: there are " +
                       std::to_string(morning.stylists.size()) + ". Set how many with --stylists.");
    }
    return {&morning.stylists[static_cast<std::size_t>(place) - 1]};
}

void set_stylists(Morning& morning, int count) {
    if (count < 1 || count > most_stylists) {
        throw WrongUse("A morning has one to " + std::to_string(most_stylists) + " stylists.");
    }
    // Who comes in addition comes when the first does, unless another time is named.
    StylistHours added;
    if (!morning.stylists.empty()) added.arrives = morning.stylists.front().arrives;
    morning.stylists.resize(static_cast<std::size_t>(count), added);
}

void set_arrival(Morning& morning, const std::string& text) {
    const Named parts = named(text);
    const int arrives = minute_from(parts.value);
    for (StylistHours* hours : stylists_named(morning, parts.name, text)) hours->arrives = arrives;
}

void add_break(Morning& morning, const std::string& text) {
    const Named parts = named(text);
    const std::size_t dash = parts.value.find('-');
    if (dash == std::string::npos) {
        throw WrongUse("'" + text + "' is no break. Write it as in 09:00-09:15.");
    }
    const Break pause{minute_from(parts.value.substr(0, dash)),
                      minute_from(parts.value.substr(dash + 1))};
    if (pause.ends <= pause.begins) {
        throw WrongUse("The break '" + text + "' ends before it begins.");
    }
    for (StylistHours* hours : stylists_named(morning, parts.name, text)) {
        if (std::ranges::find(hours->breaks, pause) == hours->breaks.end()) {
            hours->breaks.push_back(pause);
        }
    }
}

std::optional<int> minute_or_none(const std::string& value) {
    return value == word_for_none ? std::nullopt : std::optional(minute_from(value));
}

void set_minutes(MorningWish& wish, const std::string& value, const std::string& whole) {
    if (value == word_for_none) return wish.work.reset();
    std::vector<int> numbers;
    std::size_t from = 0;
    for (std::size_t plus = value.find('+'); plus != std::string::npos;
         plus = value.find('+', from)) {
        numbers.push_back(number_from(value.substr(from, plus - from), whole));
        from = plus + 1;
    }
    numbers.push_back(number_from(value.substr(from), whole));
    if (numbers.size() != 1 && numbers.size() != 3) {
        throw WrongUse("'" + whole +
                       "' are no minutes. Write all of them as in CLIENT=45, or those before the "
                       "set cools, while it cools and after it as in CLIENT=20+15+40.");
    }
    if (numbers[0] < 1) {
        throw WrongUse("'" + whole + "' leaves no minutes in the chair: write at least one, or " +
                       "CLIENT=none for those of her recipe.");
    }
    wish.work = ChairWork{.before = numbers[0]};
    if (numbers.size() == 3) {
        wish.work =
            ChairWork{numbers[0], numbers[1], std::max(numbers[1], usual_may_be_left), numbers[2]};
    }
}

void set_first(Library& library, Morning& morning, const std::string& name) {
    const ClientId client = find_client(library, name).id;
    for (MorningWish& wish : morning.wishes) wish.first = false;
    wish_of(morning, client).first = true;
}

void set_last(Library& library, Morning& morning, const std::string& name) {
    const ClientId client = find_client(library, name).id;
    for (MorningWish& wish : morning.wishes) wish.last = false;
    wish_of(morning, client).last = true;
}

}  // namespace

bool MorningOptions::says_nothing() const {
    return !stylists && arrivals.empty() && breaks.empty() && !no_breaks && !first && !last &&
           !any_order && ready_by.empty() && comes.empty() && minutes.empty();
}

int minute_from(const std::string& text) {
    if (const auto minute = parse_minute(text)) return *minute;
    throw WrongUse("'" + text + "' is no time of day. Write hours and minutes, as in 07:40.");
}

Morning with_options(Library& library, Morning morning, const MorningOptions& options) {
    if (options.stylists) set_stylists(morning, *options.stylists);
    if (options.no_breaks) {
        for (StylistHours& hours : morning.stylists) hours.breaks.clear();
    }
    for (const std::string& text : options.arrivals) set_arrival(morning, text);
    for (const std::string& text : options.breaks) add_break(morning, text);
    if (options.any_order) {
        for (MorningWish& wish : morning.wishes) wish.first = wish.last = false;
    }
    if (options.first) set_first(library, morning, *options.first);
    if (options.last) set_last(library, morning, *options.last);
    const auto wish_named = [&](const Named& parts) -> MorningWish& {
        return wish_of(morning, find_client(library, parts.name).id);
    };
    for (const std::string& text : options.ready_by) {
        const Named parts = client_named(text, "'Ada Lindqvist=11:30'");
        wish_named(parts).ready_by = minute_or_none(parts.value);
    }
    for (const std::string& text : options.comes) {
        const Named parts = client_named(text, "'Ada Lindqvist=07:30'");
        wish_named(parts).arrives = minute_or_none(parts.value);
    }
    for (const std::string& text : options.minutes) {
        const Named parts = client_named(text, "'Ada Lindqvist=45'");
        set_minutes(wish_named(parts), parts.value, text);
    }
    return morning;
}

}  // namespace quarterturn
