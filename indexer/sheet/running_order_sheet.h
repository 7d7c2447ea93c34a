#pragma once
// The running order on paper.

#include "indexer/looks/running_order.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

// The paper lies across. A time chart: a row for each stylist, time from left to right; a set is a
// white bar, a finish a tinted one, a thin line below is hair that cools, a hatched bar a break, so
// that nothing hangs on colour. Below, all parts in the order of work, then who is late and what is
// not kept.
Document running_order_sheet(const WeddingMorning& morning, const MorningPlan& plan,
                             const std::string& business_line, TextRuler& ruler, Paper paper);

}  // namespace quarterturn
