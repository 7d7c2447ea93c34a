#pragma once
// How late every set of clients must be at least with one stylist, all sets in one go: parts are
// put one after the other, and of two beginnings that did the same parts only one that is nowhere
// worse goes on (Held and Karp 1962, with several labels to a set).
//
// It leaves one thing open: a set that was begun too early to be left so long could have been begun
// later. So only the work between a set and its finish is held against the longest it may be left.
// at_least() is therefore a bound; where the order that reaches it, begun in time (in_order()), is
// no later, it is exact.

#include <optional>
#include <unordered_map>

#include "indexer/rules/running_order/outlook.h"

namespace quarterturn {

struct OrderedPart {
    int job = 0;
    SeatPart part = SeatPart::set;
};

// `jobs` and `steps` must outlive it. Searches throw OutOfSearchSteps.
class EverySet {
  public:
    EverySet(const std::vector<ChairJob>& jobs, const Calendar& calendar, SearchSteps& steps);

    // All sets of `within`, when nothing begins before `from`. What of `within` she leaves is done
    // by the others; with none she must do all of it.
    // Only what can be less than `below` late in all is looked at.
    void search(JobSet within, int from, int below, OtherStylists others);

    // not_at_all where the search found none.
    int at_least(JobSet set) const;
    // The order that reaches it, which must be less than not_at_all.
    std::vector<OrderedPart> order(JobSet set) const;

  private:
    using Minutes = std::array<std::int16_t, most_in_the_chair>;
    struct Label {
        std::uint16_t done = 0;
        std::uint16_t waiting = 0;
        std::int16_t free = 0;
        bool ended = false;  // she who is last is ready
        int late = 0;
        int trace = -1;
        int next = -1;    // of the same group
        Minutes ready{};  // of each who waits: when her finish may begin, 0 where that is past
        Minutes since{};  // of each who waits: work since her set
    };
    struct Trace {
        int before = -1;
        std::int8_t job = 0;
        SeatPart part = SeatPart::set;
    };
    struct Reached {
        int late = not_at_all;
        int trace = -1;
    };

    void go_on(const Label& label);
    void place(const Label& label, int job, SeatPart part);
    int begin_of(const Label& label, int job, SeatPart part) const;
    bool may_set(const Label& label, int job) const;
    bool passes(Label& label, int job, int minutes) const;
    bool is_too_late(const Label& label);
    void number_groups();
    int& group_of(const Label& label);
    bool is_beaten(const Label& label, int first);
    bool is_no_worse(const Label& one, const Label& other) const;
    void keep(Label label, int before, int job, SeatPart part);
    int minutes_of(int job, SeatPart part) const;
    bool ends_client(int job, SeatPart part) const;

    const std::vector<ChairJob>& jobs_;
    Calendar calendar_;
    SearchSteps& steps_;
    std::vector<JobSet> not_after_;  // of each job: those after whom she is not begun
    JobSet within_ = 0;
    int below_ = 0;
    std::optional<Outlook> outlook_;
    std::vector<Label> labels_;  // with one number of parts
    std::vector<Label> next_;    // with one more
    std::vector<int> groups_;    // in next_ the first of those that did the same parts, or -1
    std::vector<int>
        ternary_;  // of each set: its bits as digits of base three, those of within_ only
    std::vector<Trace> traces_;
    std::unordered_map<JobSet, Reached> reached_;
};

// The parts in this order, each as early as can be, with sets begun later where they would be left
// too long: nobody can be ready earlier in this order. Empty when a limit of the jobs is broken,
// and when sets would have to be put off again and again.
std::vector<PlacedPart> in_order(const std::vector<ChairJob>& jobs, const Calendar& calendar,
                                 const std::vector<OrderedPart>& order, int from);
// Added up.
int lateness_of(const std::vector<ChairJob>& jobs, const std::vector<PlacedPart>& parts);

}  // namespace quarterturn
