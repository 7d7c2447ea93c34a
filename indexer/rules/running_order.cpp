#include "indexer/rules/running_order.h"

#include <algorithm>
#include <stdexcept>

#include "indexer/rules/running_order/morning_search.h"

namespace quarterturn {
namespace {

constexpr int longest_part = 12 * 60;

void refuse_unless(bool holds, const std::string& sentence) {
    if (!holds) throw std::invalid_argument(sentence);
}

bool is_time(int minute) {
    return minute >= 0 && minute <= minutes_of_a_day;
}

void refuse_unless_work(const MorningClient& client) {
    const ChairWork& work = client.work;
    refuse_unless(work.before >= 1, client.name +
                                        " has no minutes in the chair yet: write them into her "
                                        "recipe, or name them for this morning.");
    const bool sound = work.before <= longest_part && work.after >= 0 &&
                       work.after <= longest_part && work.cooling >= 0 &&
                       work.cooling <= longest_part && work.may_be_left <= longest_part &&
                       (!work.in_two_parts() || work.may_be_left >= work.cooling);
    refuse_unless(sound, "The minutes of " + client.name +
                             " cannot be: no part lasts longer than 12 hours, and a set may be "
                             "left as long as it must cool at least.");
}

void refuse_unless_sound(const MorningNeeds& needs) {
    const auto& clients = needs.clients;
    refuse_unless(!clients.empty(),
                  "Nobody can be planned yet: add the clients of the party, and how long each sits "
                  "and when she must be ready.");
    refuse_unless(clients.size() <= std::size_t{most_in_the_chair},
                  "A morning is planned for at most " + std::to_string(most_in_the_chair) +
                      " clients, and this party has " + std::to_string(clients.size()) +
                      ": leave some out.");
    refuse_unless(
        !needs.stylists.empty() && needs.stylists.size() <= std::size_t{most_stylists},
        "A morning is planned for one to " + std::to_string(most_stylists) + " stylists.");
    for (const MorningClient& client : clients) {
        refuse_unless_work(client);
        refuse_unless(is_time(client.ready_by) && is_time(client.arrives),
                      "The times of " + client.name + " are no times of one day.");
        refuse_unless(clients.size() == 1 || !(client.first && client.last),
                      client.name + " cannot be the first and the last: leave out one of the two.");
    }
    refuse_unless(std::ranges::count(clients, true, &MorningClient::first) <= 1,
                  "Only one client can be the first.");
    refuse_unless(std::ranges::count(clients, true, &MorningClient::last) <= 1,
                  "Only one client can be the last.");
    for (const StylistHours& hours : needs.stylists) {
        refuse_unless(is_time(hours.arrives), "A stylist's arrival is no time of one day.");
        for (const Break& pause : hours.breaks) {
            refuse_unless(is_time(pause.begins) && is_time(pause.ends) && pause.begins < pause.ends,
                          "A break begins before it ends, within one day.");
        }
    }
}

}  // namespace

RunningOrder plan_morning(const MorningNeeds& needs, long steps) {
    refuse_unless_sound(needs);
    return MorningSearch(needs, steps).run();
}

}  // namespace quarterturn
