#pragma once
// The search behind plan_morning(): order rules bind the stylists together, so they are first left
// out between stylists, and where the answer breaks one, the time in question is halved and both
// halves are searched.

#include <functional>
#include <optional>

#include "indexer/rules/running_order.h"
#include "indexer/rules/running_order/crew.h"

namespace quarterturn {

struct MorningWindow {
    int from = 0;                 // nothing begins earlier
    int first_latest = no_limit;  // when she who is first must have begun
    int ends_by = no_limit;       // everything
    int last_earliest = 0;        // she who is last is not ready before

    bool operator==(const MorningWindow&) const = default;
};

struct FoundMorning {
    Division division;
    std::vector<Seat> seats;  // in the order of begins, then stylists
    int late_in_all = 0;
    int worst = 0;
    int begins = 0;
};

class MorningSearch {
  public:
    MorningSearch(const MorningNeeds& needs, long steps);

    RunningOrder run();

  private:
    std::vector<ChairJob> jobs_in(const MorningWindow& window, int worst) const;
    Crew& crew_for(const MorningWindow& window, int worst);
    FoundMorning found(Crew& crew, const Division& division, int from) const;
    // The same orders with the rules kept between stylists: the least late there is of them.
    std::optional<FoundMorning> with_order_rules(const FoundMorning& found,
                                                 const MorningWindow& window, int worst) const;
    std::vector<std::vector<OrderedPart>> orders_of(const FoundMorning& found) const;
    void sum_up(FoundMorning& found) const;
    std::vector<Seat> seats_of(int stylist, const std::vector<PlacedPart>& parts) const;

    void branch(const MorningWindow& window, int worst, std::optional<FoundMorning>& best,
                int below);
    std::optional<FoundMorning> least(const MorningWindow& window, int worst, int below);
    void give_steps();
    // The two halves when the plan breaks an order rule.
    std::vector<MorningWindow> halves(const MorningWindow& window, const FoundMorning& found) const;
    int begin_of(ClientId client, const std::vector<Seat>& seats) const;
    int end_of(ClientId client, const std::vector<Seat>& seats) const;

    FoundMorning plain_plan() const;
    void find_least_lateness();
    void lessen_the_worst();
    void begin_later();
    void let_each_begin_later();
    void begin_later(int stylist, Crew& crew);
    RunningOrder result() const;

    const MorningNeeds& needs_;
    std::vector<Calendar> calendars_;
    std::optional<ClientId> first_;
    std::optional<ClientId> last_;
    long in_all_;
    long least_share_;
    long given_ = 0;
    int enough_ = 0;  // late in all: no less can be
    SearchSteps steps_;
    MorningWindow whole_;
    FoundMorning best_;
    bool proven_ = true;
    bool lateness_proven_ = true;
    std::vector<ChairJob> jobs_of_crew_;
    std::unique_ptr<Crew> crew_;
};

}  // namespace quarterturn
