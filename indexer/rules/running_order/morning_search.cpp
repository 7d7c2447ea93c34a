#include "indexer/rules/running_order/morning_search.h"

#include <algorithm>
#include <array>

#include "indexer/rules/running_order/one_after_the_other.h"

namespace quarterturn {
namespace {

int late_of(const MorningClient& client, int ends) {
    return std::max(0, ends - client.ready_by);
}

}  // namespace

MorningSearch::MorningSearch(const MorningNeeds& needs, long steps)
    : needs_(needs), in_all_(steps), least_share_(steps / 100) {
    for (const StylistHours& hours : needs.stylists) calendars_.emplace_back(hours);
    for (const MorningClient& client : needs.clients) {
        if (client.first) first_ = client.client;
        if (client.last) last_ = client.client;
        if (!client.first) continue;
        whole_.from = no_limit;
        for (const Calendar& calendar : calendars_) {
            whole_.from = std::min(whole_.from, calendar.place(client.arrives, client.work.before));
        }
    }
}

std::vector<ChairJob> MorningSearch::jobs_in(const MorningWindow& window, int worst) const {
    std::vector<ChairJob> jobs;
    for (const MorningClient& client : needs_.clients) {
        ChairJob job{.work = client.work, .arrives = client.arrives, .ready_by = client.ready_by};
        job.first = client.first;
        job.last = client.last;
        if (worst < no_limit) job.latest_end = client.ready_by + worst;
        job.latest_end = std::min(job.latest_end, window.ends_by);
        if (job.first) job.latest_begin = window.first_latest;
        if (job.last) job.earliest_end = window.last_earliest;
        jobs.push_back(job);
    }
    return jobs;
}

// What is known of the last jobs is kept while only the beginning changes.
Crew& MorningSearch::crew_for(const MorningWindow& window, int worst) {
    std::vector<ChairJob> jobs = jobs_in(window, worst);
    if (!crew_ || jobs != jobs_of_crew_) {
        crew_ = std::make_unique<Crew>(jobs, calendars_, steps_);
        jobs_of_crew_ = std::move(jobs);
    }
    return *crew_;
}

std::vector<Seat> MorningSearch::seats_of(int stylist, const std::vector<PlacedPart>& parts) const {
    std::vector<Seat> seats;
    for (const PlacedPart& part : parts) {
        const ClientId client = needs_.clients[static_cast<std::size_t>(part.job)].client;
        seats.push_back({client, part.part, stylist, part.begins, part.ends});
    }
    return seats;
}

int MorningSearch::begin_of(ClientId client, const std::vector<Seat>& seats) const {
    return std::ranges::find(seats, client, &Seat::client)->begins;
}

int MorningSearch::end_of(ClientId client, const std::vector<Seat>& seats) const {
    int ends = 0;
    for (const Seat& seat : seats) {
        if (seat.client == client) ends = std::max(ends, seat.ends);
    }
    return ends;
}

void MorningSearch::sum_up(FoundMorning& found) const {
    std::ranges::sort(found.seats, [](const Seat& left, const Seat& right) {
        return std::pair{left.begins, left.stylist} < std::pair{right.begins, right.stylist};
    });
    found.late_in_all = 0;
    found.worst = 0;
    found.begins = found.seats.front().begins;
    for (const MorningClient& client : needs_.clients) {
        const int late = late_of(client, end_of(client.client, found.seats));
        found.late_in_all += late;
        found.worst = std::max(found.worst, late);
    }
}

FoundMorning MorningSearch::found(Crew& crew, const Division& division, int from) const {
    FoundMorning found;
    found.division = division;
    for (int stylist = 0; stylist < static_cast<int>(calendars_.size()); ++stylist) {
        const JobSet set = division.sets[static_cast<std::size_t>(stylist)];
        const auto seats =
            seats_of(stylist, crew.order(stylist, set, from, division.late_in_all + 1));
        found.seats.insert(found.seats.end(), seats.begin(), seats.end());
    }
    sum_up(found);
    return found;
}

void MorningSearch::branch(const MorningWindow& window, int worst,
                           std::optional<FoundMorning>& best, int below) {
    if (best) below = best->late_in_all;
    Crew& crew = crew_for(window, worst);
    const auto division = crew.divide(window.from, below, enough_);
    if (crew.cut_off()) proven_ = false;
    if (!division) return;
    FoundMorning candidate = found(crew, *division, window.from);
    const auto further = halves(window, candidate);
    if (further.empty()) {
        best = std::move(candidate);
        return;
    }
    if (auto kept = with_order_rules(candidate, window, worst); kept && kept->late_in_all < below) {
        best = std::move(kept);
        if (best->late_in_all == candidate.late_in_all) return;
    }
    for (const MorningWindow& half : further) branch(half, worst, best, below);
}

// Each probe has a share of the steps, so that a hard one leaves some to the others; one that
// runs out of them leaves the plan unproven.
std::optional<FoundMorning> MorningSearch::least(const MorningWindow& window, int worst,
                                                 int below) {
    std::optional<FoundMorning> best;
    give_steps();
    try {
        branch(window, std::min(worst, std::max(0, below - 1)), best, below);
    } catch (const OutOfSearchSteps&) {
        proven_ = false;
    }
    return best;
}

// Half of what is left, and never nothing.
void MorningSearch::give_steps() {
    if (given_ > 0) in_all_ -= given_ - std::max(0L, steps_.left);
    given_ = std::max(1L, std::max(0L, in_all_) / 2 + least_share_);
    steps_.left = given_;
}

// A plan that always is one.
FoundMorning MorningSearch::plain_plan() const {
    FoundMorning found;
    found.seats = one_after_the_other(needs_, calendars_, whole_.from);
    found.division.sets.resize(calendars_.size());
    for (const Seat& seat : found.seats) {
        const auto client = std::ranges::find(needs_.clients, seat.client, &MorningClient::client);
        found.division.sets[static_cast<std::size_t>(seat.stylist)] |=
            JobSet{1} << (client - needs_.clients.begin());
    }
    sum_up(found);
    return found;
}

void MorningSearch::find_least_lateness() {
    if (auto better = least(whole_, no_limit, best_.late_in_all)) best_ = std::move(*better);
}

void MorningSearch::lessen_the_worst() {
    const int count = static_cast<int>(needs_.clients.size());
    enough_ = best_.late_in_all;
    int least_worst = (best_.late_in_all + count - 1) / count;
    int worst = best_.worst - 1;  // mostly there is none
    while (least_worst < best_.worst) {
        if (auto better = least(whole_, worst, best_.late_in_all + 1)) {
            best_ = std::move(*better);
        } else {
            least_worst = worst + 1;
        }
        worst = (least_worst + best_.worst) / 2;
    }
}

void MorningSearch::begin_later() {
    const int worst = best_.worst;
    int latest = no_limit;
    for (const MorningClient& client : needs_.clients) {
        latest = std::min(latest,
                          client.ready_by + worst - client.work.hands_on() - client.work.cooling);
    }
    MorningWindow window = whole_;
    window.from = best_.begins + 1;  // where somebody is late, there is mostly none
    for (; best_.begins < latest; window.from = (best_.begins + latest + 1) / 2) {
        if (auto later = least(window, worst, best_.late_in_all + 1)) {
            best_ = std::move(*later);
        } else {
            latest = window.from - 1;
        }
    }
}

void MorningSearch::begin_later(int stylist, Crew& crew) {
    const JobSet set = best_.division.sets[static_cast<std::size_t>(stylist)];
    if (set == 0) return;
    std::vector<Seat> others;
    std::vector<Seat> own;
    for (const Seat& seat : best_.seats) {
        (seat.stylist == stylist ? own : others).push_back(seat);
    }
    if (first_ && std::ranges::count(own, *first_, &Seat::client) > 0) return;
    int late = 0;
    int latest = no_limit;
    for (const MorningClient& client : needs_.clients) {
        if (std::ranges::count(own, client.client, &Seat::client) == 0) continue;
        late += late_of(client, end_of(client.client, own));
        latest = std::min(
            latest, client.ready_by + best_.worst - client.work.hands_on() - client.work.cooling);
    }
    int from = own.front().begins;
    while (from < latest) {
        const int middle = (from + latest + 1) / 2;
        if (crew.least_lateness(stylist, set, middle, late + 1) <= late) {
            from = middle;
        } else {
            latest = middle - 1;
        }
    }
    own = seats_of(stylist, crew.order(stylist, set, from, late + 1));
    best_.seats = std::move(others);
    best_.seats.insert(best_.seats.end(), own.begin(), own.end());
    sum_up(best_);
}

void MorningSearch::let_each_begin_later() {
    if (calendars_.size() == 1) return;  // done
    MorningWindow window = whole_;
    if (last_) window.last_earliest = end_of(*last_, best_.seats);
    std::vector<ChairJob> jobs = jobs_in(window, best_.worst);
    for (ChairJob& job : jobs) {
        if (last_ && !job.last) job.latest_end = std::min(job.latest_end, window.last_earliest);
    }
    Crew crew(std::move(jobs), calendars_, steps_);
    for (int stylist = 0; stylist < static_cast<int>(calendars_.size()); ++stylist) {
        give_steps();
        try {
            begin_later(stylist, crew);
        } catch (const OutOfSearchSteps&) {
            proven_ = false;
        }
    }
}

RunningOrder MorningSearch::result() const {
    RunningOrder order;
    order.seats = best_.seats;
    order.late_in_all = best_.late_in_all;
    order.worst = best_.worst;
    order.begins = best_.begins;
    order.proven = proven_;
    order.lateness_proven = lateness_proven_;
    for (const MorningClient& client : needs_.clients) {
        order.late.push_back(late_of(client, end_of(client.client, best_.seats)));
    }
    return order;
}

RunningOrder MorningSearch::run() {
    best_ = plain_plan();
    find_least_lateness();
    lessen_the_worst();
    lateness_proven_ = proven_;
    begin_later();
    let_each_begin_later();
    return result();
}

}  // namespace quarterturn
