#include "ui/wedding_morning/bell.h"

#include <gtest/gtest.h>

#include <memory>

#include "indexer/parts/part.h"

namespace quarterturn {
namespace {

// Where it is not, a timer that has ended beeps, or makes no sound at all.
TEST(BellOfATimer, IsInThePartThatIsLoadedForIt) {
    const std::unique_ptr<Bell> bell(part_function<Bell*()>("bell", "quarterturn_make_bell")());
    EXPECT_NE(bell, nullptr);
}

}  // namespace
}  // namespace quarterturn
