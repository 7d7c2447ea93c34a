#include "indexer/looks/running_order.h"

#include <algorithm>
#include <array>
#include <map>

#include "indexer/looks/known_plans.h"
#include "indexer/store/many_looks.h"

namespace quarterturn {
namespace {

struct PlannedLook {
    Look look;
    std::optional<ChairWork> work;
    bool says_may_be_left = false;
};

// The look of each client that is made in the morning.
std::map<ClientId, PlannedLook> morning_looks(Library& library, WeddingId wedding) {
    std::vector<Look> looks = library.looks().all();
    std::erase_if(looks, [&](const Look& look) { return look.wedding != wedding; });
    std::vector<LookId> ids;
    for (const Look& look : looks) ids.push_back(look.id);
    const auto recipes = ManyLooks(library.database(), ids).recipes();
    std::map<ClientId, PlannedLook> planned;
    for (const Worn worn : {Worn::ceremony, Worn::other, Worn::evening}) {
        for (const Look& look : looks) {
            if (look.worn != worn || planned.contains(look.client)) continue;
            const auto recipe = recipes.find(look.id);
            PlannedLook& here = planned[look.client];
            here.look = look;
            if (recipe == recipes.end()) continue;
            here.work = chair_work(recipe->second);
            here.says_may_be_left = may_be_left_in(recipe->second).has_value();
        }
    }
    return planned;
}

std::string without_minutes(const std::string& name, const PlannedLook* planned) {
    if (planned == nullptr) {
        return name +
               " has no look for this wedding yet: name the wedding of one that she has, or add "
               "one with a recipe, or name her minutes for the morning.";
    }
    return "The recipe of " + planned->look.name + " (" + name +
           ") says no minutes yet: write them into its steps, or name her minutes for the "
           "morning.";
}

class MorningGatherer {
  public:
    MorningGatherer(Library& library, WeddingMorning& result)
        : library_(library),
          result_(result),
          looks_(morning_looks(library, result.wedding.id)),
          ready_by_(parse_minute(result.wedding.ready_by)) {}

    void add(const PartyMember& member) {
        const auto found = looks_.find(member.client);
        const PlannedLook* planned = found == looks_.end() ? nullptr : &found->second;
        const MorningWish& wish = wish_of(result_.morning, member.client);
        const std::string name = library_.clients().find(member.client).value_or(Client{}).name;
        const auto work = wish.work || planned == nullptr ? wish.work : planned->work;
        const auto ready_by = wish.ready_by ? wish.ready_by : ready_by_;
        if (!work) {
            const auto look = planned ? std::optional(planned->look.id) : std::nullopt;
            cannot(without_minutes(name, planned), {member.client, true, look});
        }
        if (!ready_by) {
            cannot("Nothing says when " + name +
                       " must be ready: set the wedding's ready-by time, or hers.",
                   {member.client, false, std::nullopt});
        }
        if (!work || !ready_by) return;
        if (!wish.work && work->in_two_parts() && !planned->says_may_be_left) assume_for(name);
        result_.needs.clients.push_back({member.client, name, *work, *ready_by,
                                         wish.arrives.value_or(0), wish.first, wish.last});
        result_.looks.push_back(planned == nullptr ? "" : planned->look.name);
    }

  private:
    void cannot(std::string sentence, const MorningGap& gap) {
        result_.cannot.push_back(std::move(sentence));
        result_.gaps.push_back(gap);
    }

    void assume_for(const std::string& name) {
        left_open_ += (left_open_.empty() ? "" : ", ") + name;
        result_.assumed = "Nothing says how long a set may be left (" + left_open_ +
                          "): " + std::to_string(usual_may_be_left) + " minutes count.";
    }

    Library& library_;
    WeddingMorning& result_;
    std::string left_open_;  // names
    std::map<ClientId, PlannedLook> looks_;
    std::optional<int> ready_by_;
};

const MorningClient* client_of(const MorningNeeds& needs, ClientId id) {
    const auto found = std::ranges::find(needs.clients, id, &MorningClient::client);
    return found == needs.clients.end() ? nullptr : &*found;
}

// The minutes of today's recipes at the times she keeps.
std::vector<Seat> kept_seats(const WeddingMorning& morning) {
    std::vector<Seat> seats;
    for (const KeptSeat& kept : morning.morning.kept) {
        const MorningClient* client = client_of(morning.needs, kept.client);
        if (client == nullptr) continue;
        const bool finish = kept.part == SeatPart::finish;
        if (finish && !client->work.in_two_parts()) continue;
        const int minutes = finish ? client->work.after : client->work.before;
        seats.push_back({kept.client, kept.part, kept.stylist, kept.begins, kept.begins + minutes});
    }
    std::ranges::stable_sort(seats, {}, [](const Seat& seat) {
        return std::pair{seat.begins, seat.stylist};
    });
    return seats;
}

}  // namespace

MorningWish& wish_of(Morning& morning, ClientId client) {
    const auto found = std::ranges::find(morning.wishes, client, &MorningWish::client);
    if (found != morning.wishes.end()) return *found;
    MorningWish wish;
    wish.client = client;
    return morning.wishes.emplace_back(wish);
}

WeddingMorning wedding_morning(Library& library, WeddingId id) {
    const auto wedding = library.weddings().find(id);
    if (!wedding) {
        throw StoreError("There is no wedding number " + std::to_string(id.value) +
                         ": look it up in the list of weddings.");
    }
    WeddingMorning result;
    result.wedding = *wedding;
    result.morning = library.mornings().of(id);
    result.needs.stylists = result.morning.stylists;
    MorningGatherer gatherer(library, result);
    for (const PartyMember& member : wedding->party) gatherer.add(member);
    return result;
}

MorningPlan best_plan(const WeddingMorning& morning) {
    RunningOrder order = known_plan(morning.needs);
    MorningPlan plan;
    plan.seats = std::move(order.seats);
    plan.proven = order.proven;
    plan.lateness_proven = order.lateness_proven;
    plan.consequences = check_morning(morning.needs, plan.seats);
    return plan;
}

MorningPlan plan_of(const WeddingMorning& morning) {
    if (morning.morning.kept.empty()) return best_plan(morning);
    MorningPlan plan;
    plan.by_hand = true;
    plan.seats = kept_seats(morning);
    plan.consequences = check_morning(morning.needs, plan.seats);
    return plan;
}

Morning keeping(Morning morning, const std::vector<Seat>& seats) {
    morning.kept.clear();
    for (const Seat& seat : seats) {
        morning.kept.push_back({seat.client, seat.part, seat.stylist, seat.begins});
    }
    return morning;
}

void keep_move(Library& library, const WeddingMorning& morning, ClientId client, int at,
               std::optional<int> stylist, SeatPart part) {
    const auto seats = plan_of(morning).seats;
    if (std::ranges::count(seats, client, &Seat::client) == 0) {
        throw StoreError("She has no place in the plan yet, so she cannot be moved in it.");
    }
    if (stylist && (*stylist < 0 || *stylist >= static_cast<int>(morning.needs.stylists.size()))) {
        throw StoreError("There is no stylist " + std::to_string(*stylist + 1) +
                         " on this morning: name the number of stylists first.");
    }
    library.mornings().save(morning.wedding.id,
                            keeping(morning.morning, moved_part(seats, client, part, at, stylist)));
}

std::string task_word(const MorningNeeds& needs, const Seat& seat) {
    if (seat.part == SeatPart::finish) return "finish";
    const MorningClient* client = client_of(needs, seat.client);
    return client != nullptr && client->work.in_two_parts() ? "set" : "hair";
}

std::string possible_text(const MorningPlan& best) {
    const int late = best.consequences.late_in_all;
    if (late == 0) return "All can be ready in time.";
    const std::string minutes = std::to_string(late) + (late == 1 ? " minute" : " minutes");
    if (best.lateness_proven) {
        return "Not all can be ready in time: the least there is is " + minutes + " late in all.";
    }
    return "No plan was found in which all are ready in time: the best found is " + minutes +
           " late in all. There may be a better one.";
}

std::optional<std::string> unproven_text(const MorningPlan& plan) {
    if (plan.proven) return std::nullopt;
    if (plan.lateness_proven) {
        return "This is the best plan found: perhaps another one begins a little later.";
    }
    return "This is the best plan found in a limited search: there may be one that is less late.";
}

}  // namespace quarterturn
