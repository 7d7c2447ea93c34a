#include <gtest/gtest.h>

#include "indexer/store/done_table.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class BoardRecords : public testing::Test, public ExampleLibrary {};

TEST_F(BoardRecords, TicksAreKeptByStepAndTakenBack) {
    library.boards().tick(wedding, look, {2, "Twist and pin."});
    library.boards().tick(wedding, look, {0, "Section."});
    library.boards().tick(wedding, look, {2, "Twist, cross the pins."});
    reopen();
    EXPECT_EQ(library.boards().ticks(wedding, look),
              (std::vector<StepTick>{{0, "Section."}, {2, "Twist, cross the pins."}}));

    library.boards().untick(wedding, look, 0);
    library.boards().untick(wedding, look, 7);
    EXPECT_EQ(library.boards().ticks(wedding, look),
              (std::vector<StepTick>{{2, "Twist, cross the pins."}}));
}

TEST_F(BoardRecords, TimersRunOnWhenTheProgramIsClosedAndUntilTheyAreStopped) {
    Timer slow{{}, wedding, "Aud: cooling", 1'795'000'000, 1'795'001'200};
    Timer quick{{}, wedding, "Mira: cooling", 1'795'000'300, 1'795'000'900};
    slow.id = library.boards().start(slow);
    quick.id = library.boards().start(quick);
    reopen();
    EXPECT_EQ(library.boards().timers(wedding), (std::vector{quick, slow}));

    library.boards().stop(quick.id);
    EXPECT_EQ(library.boards().timers(wedding), std::vector{slow});
    EXPECT_THROW(library.boards().stop(quick.id), StoreError);
}

TEST_F(BoardRecords, AClientIsDoneUntilThatIsTakenBack) {
    DoneTable done(library.database());
    const ClientId other = library.clients().add(client_called("Tilda Vale"));
    done.set(wedding, mira);
    done.set(wedding, mira);
    done.set(wedding, other);
    EXPECT_EQ(done.of_wedding(wedding), (std::vector{mira, other}));
    done.clear(wedding, mira);
    EXPECT_EQ(done.of_wedding(wedding), std::vector{other});
    EXPECT_THROW(done.set(WeddingId{99}, mira), StoreError);
}

TEST_F(BoardRecords, RefuseAWeddingThatIsNotThere) {
    EXPECT_THROW(library.boards().tick(WeddingId{99}, look, {0, "Section."}), StoreError);
    EXPECT_THROW(library.boards().start({{}, WeddingId{99}, "Cooling", 0, 60}), StoreError);
    EXPECT_TRUE(library.boards().timers(WeddingId{99}).empty());
}

TEST_F(BoardRecords, HeadPointsStayWithTheirPhoto) {
    const PhotoId photo = library.photos().add(example_photo("QTA_0001.jpg"));
    EXPECT_EQ(library.head_points().of(photo), std::nullopt);
    library.head_points().set(photo, {{0.5, 0.1}, {0.48, 0.8}});
    const HeadPoints better{{0.52, 0.12}, {0.48, 0.79}};
    library.head_points().set(photo, better);
    reopen();
    EXPECT_EQ(library.head_points().of(photo), better);
    library.head_points().clear(photo);
    EXPECT_EQ(library.head_points().of(photo), std::nullopt);
    EXPECT_THROW(library.head_points().set(PhotoId{99}, better), StoreError);
}

}  // namespace
}  // namespace quarterturn
