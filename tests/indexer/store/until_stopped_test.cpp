#include "indexer/store/until_stopped.h"

#include <gtest/gtest.h>

#include <limits>
#include <thread>

#include "indexer/store/statement.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

std::int64_t count_to(Database& database, std::int64_t number) {
    return Statement(database,
                     "WITH RECURSIVE number (n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM number "
                     "LIMIT ?) SELECT count(*) FROM number")
        .with(number)
        .value<std::int64_t>()
        .value();
}

TEST(UntilStoppedTest, WhatWouldTakeForYearsEndsWhenItIsStopped) {
    ExampleLibrary example;
    std::stop_source source;
    const UntilStopped until_stopped(example.library.database(), source.get_token());
    std::jthread stopper([&] { source.request_stop(); });
    EXPECT_THROW(count_to(example.library.database(), std::numeric_limits<std::int64_t>::max()),
                 StoreError);
}

TEST(UntilStoppedTest, AfterwardsTheRecordsAreAskedAsBefore) {
    ExampleLibrary example;
    {
        std::stop_source source;
        const UntilStopped until_stopped(example.library.database(), source.get_token());
        source.request_stop();
        EXPECT_THROW(count_to(example.library.database(), 100'000), StoreError);
    }
    EXPECT_EQ(count_to(example.library.database(), 100'000), 100'000);
}

}  // namespace
}  // namespace quarterturn
