#include "app/qturn/running_order_reply.h"

#include "app/qturn/empty_party.h"
#include "app/qturn/say.h"

namespace quarterturn {
namespace {

using nlohmann::json;

const MorningClient& client_in(const MorningNeeds& needs, ClientId id) {
    return *std::ranges::find(needs.clients, id, &MorningClient::client);
}

std::string stylist_word(const MorningNeeds& needs, int stylist) {
    return needs.stylists.size() == 1 ? "" : "stylist " + std::to_string(stylist + 1);
}

std::string wait_words(const ChairWork& work) {
    if (!work.in_two_parts()) return "";
    return "cools " + std::to_string(work.cooling) + " min, may be left " +
           std::to_string(work.may_be_left);
}

std::vector<std::string> rows_of(const WeddingMorning& morning, const MorningPlan& plan) {
    std::vector<std::vector<std::string>> rows;
    for (const Seat& seat : plan.seats) {
        const MorningClient& client = client_in(morning.needs, seat.client);
        rows.push_back({minute_text(seat.begins) + " to " + minute_text(seat.ends),
                        stylist_word(morning.needs, seat.stylist), client.name,
                        task_word(morning.needs, seat),
                        seat.part == SeatPart::set ? wait_words(client.work) : ""});
    }
    return columns(rows);
}

std::string heading(const WeddingMorning& morning, const MorningPlan& plan) {
    const Wedding& wedding = morning.wedding;
    std::string text = "The morning of " + wedding.name + ", " + iso_text(wedding.date);
    if (!plan.seats.empty()) text += ", from " + minute_text(plan.seats.front().begins) + " on";
    return text + (plan.by_hand ? ", as you changed it." : ".");
}

json seat_json(const WeddingMorning& morning, const Seat& seat) {
    return {{"client", client_in(morning.needs, seat.client).name},
            {"client_id", seat.client.value},
            {"task", task_word(morning.needs, seat)},
            {"stylist", seat.stylist + 1},
            {"begins", minute_text(seat.begins)},
            {"ends", minute_text(seat.ends)}};
}

json client_json(const WeddingMorning& morning, const MorningPlan& plan, std::size_t place) {
    const MorningClient& client = morning.needs.clients[place];
    const auto ready = ready_at(client.client, plan.seats);
    return {{"client", client.name},
            {"client_id", client.client.value},
            {"look", morning.looks[place]},
            {"ready_by", minute_text(client.ready_by)},
            {"ready_at", ready ? json(minute_text(*ready)) : json()},
            {"minutes_late", plan.consequences.late[place]},
            {"before", client.work.before},
            {"cooling", client.work.cooling},
            {"may_be_left", client.work.may_be_left},
            {"after", client.work.after},
            {"first", client.first},
            {"last", client.last}};
}

json stylists_json(const MorningNeeds& needs) {
    json list = json::array();
    for (const StylistHours& hours : needs.stylists) {
        json breaks = json::array();
        for (const Break& pause : hours.breaks) {
            breaks.push_back(
                {{"begins", minute_text(pause.begins)}, {"ends", minute_text(pause.ends)}});
        }
        list.push_back({{"arrives", minute_text(hours.arrives)}, {"breaks", breaks}});
    }
    return list;
}

json reply_json(const WeddingMorning& morning, const MorningPlan& plan) {
    json clients = json::array();
    for (std::size_t i = 0; i < morning.needs.clients.size(); ++i) {
        clients.push_back(client_json(morning, plan, i));
    }
    json seats = json::array();
    for (const Seat& seat : plan.seats) seats.push_back(seat_json(morning, seat));
    return {{"wedding", morning.wedding.name},
            {"wedding_id", morning.wedding.id.value},
            {"stylists", stylists_json(morning.needs)},
            {"seats", seats},
            {"clients", clients},
            {"late_in_all", plan.consequences.late_in_all},
            {"broken", plan.consequences.broken},
            {"cannot", morning.cannot},
            {"assumed", morning.assumed},
            {"by_hand", plan.by_hand},
            {"proven", plan.proven}};
}

bool is_well(const WeddingMorning& morning, const MorningPlan& plan) {
    return morning.cannot.empty() && plan.consequences.broken.empty() &&
           plan.consequences.late_in_all == 0;
}

}  // namespace

Reply nobody_reply(const WeddingMorning& morning) {
    Reply reply{{heading(morning, {})}, reply_json(morning, {})};
    tell_empty_party(reply, morning.wedding);
    append(reply.lines, morning.cannot);
    reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply running_order_reply(const WeddingMorning& morning, const MorningPlan& plan) {
    Reply reply{{heading(morning, plan)}, reply_json(morning, plan)};
    append(reply.lines, rows_of(morning, plan));
    append(reply.lines, plan.consequences.lateness);
    append(reply.lines, plan.consequences.broken);
    append(reply.lines, morning.cannot);
    if (!morning.assumed.empty()) reply.lines.push_back(morning.assumed);
    if (const auto unproven = unproven_text(plan)) reply.lines.push_back(*unproven);
    if (is_well(morning, plan)) {
        reply.lines.emplace_back("All are ready in time.");
    } else {
        reply.outcome = Outcome::needs_attention;
    }
    return reply;
}

Reply possible_reply(const WeddingMorning& morning, const MorningPlan& best) {
    const bool possible = is_well(morning, best);
    Reply reply;
    reply.data = reply_json(morning, best);
    reply.data["possible"] = possible;
    if (morning.cannot.empty()) reply.lines.push_back(possible_text(best));
    append(reply.lines, best.consequences.lateness);
    append(reply.lines, morning.cannot);
    if (possible && !best.seats.empty()) {
        reply.lines.push_back("The first begins at " + minute_text(best.seats.front().begins) +
                              ".");
    }
    if (!possible) reply.outcome = Outcome::needs_attention;
    return reply;
}

}  // namespace quarterturn
