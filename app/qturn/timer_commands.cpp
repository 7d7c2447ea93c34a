#include <chrono>

#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/names.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "indexer/rules/timers.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct TimerOptions {
    std::string wedding;
    std::string minutes;
    std::string name;
    std::string timer;
};

std::int64_t utc_seconds() {
    using std::chrono::seconds;
    const auto since_1970 = std::chrono::system_clock::now().time_since_epoch();
    return std::chrono::duration_cast<seconds>(since_1970).count();
}

std::string_view state_word(TimerState state) {
    switch (state) {
        case TimerState::running:
            return "running";
        case TimerState::last_minute:
            return "last minute";
        case TimerState::over:
            return "over";
    }
    return {};
}

json timer_json(const Timer& timer, std::int64_t now) {
    return {{"id", timer.id.value},
            {"name", timer.name},
            {"begins", timer.begins},
            {"ends", timer.ends},
            {"seconds_left", time_left(timer, now)},
            {"state", state_word(timer_state(timer, now))}};
}

Reply timers_reply(Library& library, WeddingId wedding, std::int64_t now) {
    Reply reply{{}, {{"timers", json::array()}}};
    std::vector<std::vector<std::string>> rows;
    for (const Timer& timer : library.boards().timers(wedding)) {
        rows.push_back({number_text(timer.id.value), time_left_text(timer, now), timer.name});
        reply.data["timers"].push_back(timer_json(timer, now));
    }
    append(reply.lines, columns(rows));
    if (rows.empty()) reply.lines.emplace_back("No timer runs.");
    return reply;
}

Timer checked_timer(WeddingId wedding, const TimerOptions& options, std::int64_t now) {
    try {
        return timer_from(wedding, options.name, number_from(options.minutes, options.minutes),
                          now);
    } catch (const std::invalid_argument& wrong) {
        throw WrongUse(wrong.what());
    }
}

Reply start_timer(Session& session, const TimerOptions& options) {
    Library& library = session.library();
    const WeddingId wedding = find_wedding(library, options.wedding).id;
    const std::int64_t now = utc_seconds();
    Timer timer = checked_timer(wedding, options, now);
    library.history().record("started the timer " + timer.name,
                             [&] { timer.id = library.boards().start(timer); });
    return {{"Started: " + timer.name + ", " +
             count_text((timer.ends - timer.begins) / 60, "minute") + "."},
            {{"timer", timer_json(timer, now)}}};
}

const Timer& find_timer(const std::vector<Timer>& timers, const std::string& name) {
    std::vector<const Timer*> called;
    for (const Timer& timer : timers) {
        const std::string number = number_text(timer.id.value);
        if (name == number || "#" + name == number) return timer;
        if (timer.name == name) called.push_back(&timer);
    }
    if (called.size() == 1) return *called.front();
    throw WrongUse(called.empty()
                       ? "No timer of this wedding is called '" + name +
                             "'. List them with timer list to find its number."
                       : "Several timers are called '" + name + "'. Name one by its number.");
}

Reply stop_timer(Session& session, const TimerOptions& options) {
    Library& library = session.library();
    const WeddingId wedding = find_wedding(library, options.wedding).id;
    const auto timers = library.boards().timers(wedding);
    const Timer& timer = find_timer(timers, options.timer);
    library.history().record("put the timer " + timer.name + " away",
                             [&] { library.boards().stop(timer.id); });
    return {{"Stopped: " + timer.name + "."}, {{"timer", timer_json(timer, utc_seconds())}}};
}

Reply list_timers(Session& session, const TimerOptions& options) {
    Library& library = session.library();
    return timers_reply(library, find_wedding(library, options.wedding).id, utc_seconds());
}

}  // namespace

void add_timer_commands(CommandSet& commands) {
    const auto options = std::make_shared<TimerOptions>();
    commands.group("timer", "What cools or waits on the wedding morning.");
    auto start =
        commands.add({"timer start", "Starts a timer on the board of a wedding.",
                      "qturn timer start 'Boathouse' 15 'Ysolde: cooling'"},
                     [options](Session& session) { return start_timer(session, *options); });
    start.argument("WEDDING", options->wedding, "Name or number");
    start.argument("MINUTES", options->minutes, "How long, in whole minutes");
    start.argument("NAME", options->name, "What it is for");
    auto list =
        commands.add({"timer list", "Lists the timers of a wedding with the time left.",
                      "qturn timer list 'Boathouse'"},
                     [options](Session& session) { return list_timers(session, *options); });
    list.argument("WEDDING", options->wedding, "Name or number");
    auto stop = commands.add({"timer stop", "Takes a timer off the board.",
                              "qturn timer stop 'Boathouse' 'Ysolde: cooling'"},
                             [options](Session& session) { return stop_timer(session, *options); });
    stop.argument("WEDDING", options->wedding, "Name or number");
    stop.argument("TIMER", options->timer, "Its number in the list, or its name");
}

}  // namespace quarterturn
